using System.Globalization;
using Ringwright.Core.Measures;
using Ringwright.Core.Planning;
using Ringwright.Paper.Pictures;

namespace Ringwright.Paper.Labels;

/// <summary>One sticker.</summary>
/// <param name="Title">What it is stuck on, large.</param>
/// <param name="Lines">What else it says, weightiest first; what has no room is left out.</param>
/// <param name="Code">What its code says when it is read.</param>
public sealed record Label(string Title, IReadOnlyList<string> Lines, string Code)
{
    /// <summary>Path of a ring's job sheet in the app: behind the address of the machine that shares it.</summary>
    public static string PathOf(string ring) => $"/rings/{Uri.EscapeDataString(ring)}/job-sheet.pdf";

    /// <summary>A sticker for each ring, and one for each wood of each batch of its wedges.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="style">How lengths are printed.</param>
    /// <param name="link">Address of the app on the network, such as http://192.168.1.20:5080; null for codes that just name ring and piece.</param>
    /// <param name="pathOf">Path of a ring's page there; its job sheet by the ring's name when absent.</param>
    public static IEnumerable<Label> Of(Plan plan, MeasureStyle style, Uri? link = null, Func<RingPlan, string>? pathOf = null)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(style);
        foreach (RingPlan ring in plan.Rings)
        {
            string code = link is null ? $"{ring.Ring.Name}, {plan.Piece.Name}" : link.GetLeftPart(UriPartial.Path).TrimEnd('/') + (pathOf is null ? PathOf(ring.Ring.Name) : pathOf(ring));
            yield return new(ring.Ring.Name, [plan.Piece.Name, .. Ring(ring, style)], code);
            for (int b = 0; b < ring.Batches.Length; b++)
            {
                RingPlan batch = ring.Alone(b);
                string title = ring.Batches.Length == 1 ? ring.Ring.Name : $"{ring.Ring.Name}, wedge {b + 1}";
                foreach (WoodNeed wood in batch.Woods)
                    yield return new(title, [Wood(ring, wood), .. Settings(batch, style), plan.Piece.Name], code);
            }
        }
    }

    private static IEnumerable<string> Ring(RingPlan ring, MeasureStyle style)
    {
        string pieces = ring.Ring.Around == 1 ? "one piece" : string.Create(CultureInfo.InvariantCulture, $"{ring.Ring.Around} segments");
        yield return $"{pieces}, {style.Length(ring.Ring.Thickness.Millimetres)} high";
        yield return $"turned to Ø {Caliper.Short(style, ring.Ring.Outside.Millimetres)}";
        if (ring.Ring.Shift != 0) yield return string.Create(CultureInfo.InvariantCulture, $"shift {ring.Ring.Shift:0.##} segment");
    }

    private static string Wood(RingPlan ring, WoodNeed wood) => string.Create(CultureInfo.InvariantCulture, $"{WoodKey.Of(ring.Ring)[wood.Wood].Letter} {wood.Wood}: {wood.ToSaw} ({wood.Spares} spare)").Trim();

    private static IEnumerable<string> Settings(RingPlan batch, MeasureStyle style)
    {
        foreach ((string name, string figure) in new[] { ("mitre", "mitre"), ("tilt", "blade-tilt"), ("stop", "stop") })
            if (batch.Find(figure) is Figure known) yield return $"{name} {(known.Quantity == Quantity.Length ? Caliper.Short(style, known.Value) : style.Print(known.Value, known.Quantity))}";
    }
}
