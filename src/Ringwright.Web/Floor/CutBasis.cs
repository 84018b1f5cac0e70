using Ringwright.Core.Measures;
using Ringwright.Core.Rings;

namespace Ringwright.Web.Floor;

/// <summary>The wedge that a count is of, so that a count of another wedge is not taken for it. Lengths in mm, rounded to 0.01 mm.</summary>
/// <param name="Cut">Which wedges: <see cref="SawCut.Key"/>.</param>
/// <param name="Degrees">Angle of the wedge, degrees.</param>
/// <param name="Rim">Its rim edge as glued.</param>
/// <param name="Depth">From rim to tip.</param>
/// <param name="Height">Height of the ring.</param>
public sealed record CutBasis(string Cut, double Degrees, double Rim, double Depth, double Height)
{
    /// <summary>The wedge of a cut.</summary>
    public static CutBasis Of(SawCut cut)
    {
        ArgumentNullException.ThrowIfNull(cut);
        WedgeGeometry wedge = cut.Ring.Glued;
        return new(cut.Key, Math.Round(wedge.WedgeAngle * 180 / Math.PI, 3), Math.Round(wedge.RimEdge, 2), Math.Round(wedge.Depth, 2), Math.Round(cut.Ring.Ring.Thickness.Millimetres, 2));
    }

    /// <summary>The wedge in a few words, in the user's units.</summary>
    public string Words(MeasureStyle style)
    {
        ArgumentNullException.ThrowIfNull(style);
        return $"{style.Print(Degrees * Math.PI / 180, Quantity.Angle)} with a rim of {style.Length(Rim)}, {style.Length(Depth)} deep and {style.Length(Height)} high";
    }
}
