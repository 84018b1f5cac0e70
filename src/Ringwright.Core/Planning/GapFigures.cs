using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Rings;

namespace Ringwright.Core.Planning;

/// <summary>The gaps of open segments, the spacers that hold them and the plate they are laid on.</summary>
internal static class GapFigures
{
    // Own judgement, no source: a gap that differs by less than this share from its neighbours looks like them.
    private const double Alike = 0.1;

    public static void Add(WedgeGeometry glued, OpenRing ring, FigureBook book)
    {
        double half = ring.Gap.Radians / 2;
        double outer = book.Know("R", "distance from the centre to the outer corners", glued.OuterCorner, Quantity.Length);
        double inner = book.Know("Ci", "distance from the centre to the inner corners", glued.InnerCorner, Quantity.Length);
        double rim = book.Add("gap-at-rim", "Gap, and spacer, at the rim", 2 * outer * Math.Sin(half), Quantity.Length, "2·R·sin(γ/2)", "R γ",
            "Between the outer corners of two neighbours; the spacer is this wide there.", Sources.Chord);
        book.Add("gap-at-tip", "Gap, and spacer, at the inner end", 2 * inner * Math.Sin(half), Quantity.Length, "2·Ci·sin(γ/2)", "Ci γ",
            "Between the inner corners; a spacer of even thickness would touch at one end only.", Sources.Chord);
        book.Add("spacer-length", "Spacer, from rim to inner end", glued.FaceLength, Quantity.Length, "(Ao − Ai)/cos(a)", "Ao Ai a",
            "As long as a face of the segment; a spacer is a wedge of the gap's angle.");
        book.Add("plate-circle", "Circle on the plate for the outer corners", 2 * outer, Quantity.Length, "2·Ao/cos(a)", "Ao a",
            "Draw it on the gluing plate; every outer corner lies on it.");
        book.Add("plate-inner-circle", "Circle on the plate for the inner corners", 2 * inner, Quantity.Length, "2·Ai/cos(a)", "Ai a",
            "Every inner corner lies on it.");
        book.Add("plate-step", "Dividers, from a corner to the same one of the next", 2 * outer * Math.Sin(Math.PI / glued.Segments), Quantity.Length, "2·R·sin(π/N)", "R N",
            "Stepped off around the outer circle it comes back to its start after N steps.", Sources.Chord);
        book.Add("open-share", "Share of the ring that is open", glued.Segments * ring.Gap.Radians / (2 * Math.PI), Quantity.Share, "N·γ/(2·π)", "N γ",
            "All gaps together, of the full turn.");
        book.Know("G", "gap at the rim", rim, Quantity.Length);
        double alike = book.Add("gap-difference", "A gap may differ at the rim by", Alike * rim, Quantity.FineLength, "0.1·G", "G",
            "A gap a tenth wider than its neighbours is hard to see.", Sources.OwnRule);
        book.Know("g", "what a gap may differ by at the rim", alike, Quantity.FineLength);
        double each = alike / glued.Segments;
        book.Add("gap-per-wedge-error", "Change of each gap when every wedge is off by its limit", each, Quantity.FineLength, "g/N", "g N",
            "A wedge too wide by an angle narrows the gap beside it by the radius times that angle.", Sources.SmallAngle);
    }
}
