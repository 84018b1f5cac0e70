using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Ringwright.Core.Rings;

namespace Ringwright.Paper.Pictures;

/// <summary>The diameters of a ring of wedges as its picture tells them.</summary>
internal sealed record RingSizes(RingPlan Plan, MeasureStyle Style)
{
    /// <summary>One of them.</summary>
    /// <param name="Millimetres">The diameter.</param>
    /// <param name="Words">What it is, with its size.</param>
    /// <param name="IsTurned">Whether the lathe makes it; else the wedges do.</param>
    public readonly record struct Size(double Millimetres, string Words, bool IsTurned);

    /// <summary>What is inside: a bore, what is turned, or what the wedges leave open.</summary>
    public Size? Inside => Plan.Ring switch
    {
        WedgeDisc { Bore: Length bore } => Of("bore Ø", bore.Millimetres, turned: true),
        IHollowRing { InnerDiameter: Length inside } => Of("turned inside Ø", inside.Millimetres, turned: true),
        WedgeDisc when Plan.Glued.InnerApothem > 0 => Opening(2 * (Plan.Glued.ApexRadius + Plan.Glued.InnerApothem)),
        _ => null,
    };

    /// <summary>What is turned, if anything comes off, then what is glued.</summary>
    public IEnumerable<Size> Outside
    {
        get
        {
            WedgeGeometry glued = Plan.Glued;
            double turned = Plan.Ring.Outside.Millimetres, flats = 2 * (glued.ApexRadius + glued.OuterApothem);
            if (turned < flats - 1e-6) yield return Of("turned Ø", turned, turned: true);
            yield return Of("across flats", flats, turned: false);
        }
    }

    /// <summary>All in a sentence, for under a picture without dimensions.</summary>
    public string InWords
    {
        get
        {
            string all = string.Join(", ", (Inside is { } inside ? Outside.Append(inside) : Outside).Select(s => s.Words));
            return string.Concat(char.ToUpperInvariant(all[0]).ToString(), all.AsSpan(1), ".");
        }
    }

    private Size Of(string what, double diameter, bool turned) => new(diameter, $"{what} {Caliper.Short(Style, diameter)}", turned);

    private Size Opening(double flats) => new(flats, $"opening {Caliper.Short(Style, flats)} across flats", false);
}
