using System.Collections.Immutable;
using System.Globalization;
using Ringwright.Core.Measures;
using Ringwright.Core.Planning;

namespace Ringwright.Core.Documents;

/// <summary>A cell: words, or a number that a spreadsheet can reckon with, or nothing.</summary>
/// <param name="Text">The words; null for a number.</param>
/// <param name="Number">The number, in the unit that the table tells beside it (mm, rad, pieces); null for words.</param>
public readonly record struct PlanCell(string? Text, double? Number)
{
    /// <summary>An empty cell.</summary>
    public static PlanCell Empty => default;

    /// <summary>Words.</summary>
    public static implicit operator PlanCell(string text) => new(text, null);

    /// <summary>A number.</summary>
    public static implicit operator PlanCell(double number) => new(null, number);

    /// <summary>Words.</summary>
    public static PlanCell FromString(string text) => text;

    /// <summary>A number.</summary>
    public static PlanCell FromDouble(double number) => number;
}

/// <summary>A table of a plan for other programs; the unit of each column of numbers stands in its heading.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Headings">Its columns.</param>
/// <param name="Rows">Its rows, a cell for each column.</param>
public sealed record PlanTable(string Name, ImmutableArray<string> Headings, ImmutableArray<ImmutableArray<PlanCell>> Rows)
{
    /// <summary>The rings from the bottom up.</summary>
    public static PlanTable Rings(Plan plan, MeasureStyle style)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(style);
        string u = Unit(style);
        return new("rings", ["ring", "name", "pieces", $"height [{u}]", $"outside diameter [{u}]", "turned by [segments]", "chance to close [%]"],
            [.. plan.Rings.Select((ring, i) => ImmutableArray.Create<PlanCell>(
                i + 1, ring.Ring.Name, ring.Layout.Length, Length(ring.Ring.Thickness.Millimetres, style), Length(ring.Ring.Outside.Millimetres, style), ring.Ring.Shift,
                ring.Find("chance-to-close") is Figure chance ? Math.Round(100 * chance.Value, 2) : PlanCell.Empty))]);
    }

    /// <summary>Every figure of the piece and its rings with its formula, source and reason.</summary>
    public static PlanTable Figures(Plan plan, MeasureStyle style)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(style);
        IEnumerable<(string Of, Figure Figure)> all = plan.Figures.Select(f => ("", f)).Concat(plan.Rings.SelectMany(r => r.Figures.Select(f => (r.Ring.Name, f))));
        return new("figures", ["ring", "figure", "what it is", "value", "unit", "as printed", "formula", "source", "reason"],
            [.. all.Select(f =>
            {
                (double value, string unit) = style.Value(f.Figure.Value, f.Figure.Quantity);
                return ImmutableArray.Create<PlanCell>(f.Of, f.Figure.Name, f.Figure.Label, value, unit, style.Print(f.Figure.Value, f.Figure.Quantity), f.Figure.Why.Formula, f.Figure.Why.Source, f.Figure.Why.Reason);
            })]);
    }

    /// <summary>The cut list: a row for each ring, batch of wedges and wood, for each kind of spacer, and for each kind of strip in a laminated board.</summary>
    public static PlanTable CutList(Plan plan, MeasureStyle style)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(style);
        string u = Unit(style);
        return new("cut list",
            ["ring", "wood", "wedges needed", "wedges to saw", "boards", $"strip length [{u}]", $"width [{u}]", $"thickness [{u}]", $"rim edge as sawn [{u}]", $"tip as sawn [{u}]", "mitre [deg]", $"stop [{u}]", "part"],
            [.. plan.Rings.SelectMany(ring => Cuts(ring, style))]);
    }

    private static IEnumerable<ImmutableArray<PlanCell>> Cuts(RingPlan ring, MeasureStyle style)
    {
        for (int b = 0; b < Math.Max(1, ring.Batches.Length); b++)
        {
            RingPlan batch = ring.Batches.IsEmpty ? ring : ring.Alone(b);
            PlanCell Size(string figure) => batch.Find(figure) is Figure size ? Length(size.Value, style) : PlanCell.Empty;
            PlanCell mitre = batch.Find("mitre") is Figure angle ? Math.Round(double.RadiansToDegrees(angle.Value), 4) : PlanCell.Empty;
            string part = ring.Batches.IsEmpty ? "layer" : ring.Stave is not null ? "stave" : ring.Batches.Length == 1 ? "wedge" : string.Create(CultureInfo.InvariantCulture, $"wedge {b + 1}");
            foreach (WoodNeed wood in batch.Woods)
                yield return [ring.Ring.Name, wood.Wood, wood.Needed, wood.ToSaw, wood.Boards, Length(wood.Length, style), Size("board-width"), Size("board-thickness"), Size("sawn-rim-edge"), Size("sawn-tip"), mitre, Size("stop"), part];
        }

        // A spacer is cut square: its thickness is that of its strip, the stop its length.
        foreach (SpacerBatch s in ring.Spacers)
            yield return [ring.Ring.Name, s.Wood, s.Need.Needed, s.Need.ToSaw, s.Need.Boards, Length(s.Need.Length, style), Length(s.Height, style), Length(s.Thickness, style), PlanCell.Empty, PlanCell.Empty, 0, Length(s.Length, style), "spacer"];

        // So is a strip of a laminated board.
        foreach (StripNeed strip in ring.Lamination?.Kinds ?? [])
            yield return [ring.Ring.Name, strip.Wood, strip.Count, strip.Count, strip.Sticks, Length(strip.Length, style), ring.Find("strip-width") is Figure width ? Length(width.Value, style) : PlanCell.Empty, Length(strip.Thickness, style), PlanCell.Empty, PlanCell.Empty, 0, Length(strip.Height, style), "strip"];
    }

    private static string Unit(MeasureStyle style) => style.Unit == LengthUnit.Inch ? "in" : "mm";

    private static double Length(double millimetres, MeasureStyle style) => style.Unit == LengthUnit.Inch
        ? Math.Round(millimetres / MeasureStyle.MillimetresPerInch, 4)
        : Math.Round(millimetres, 3);
}
