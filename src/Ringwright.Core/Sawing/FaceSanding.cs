namespace Ringwright.Core.Sawing;

/// <summary>What hand sanding takes off one joint face.</summary>
/// <param name="AtRim">Removed at the rim end of the face, normal to it, mm.</param>
/// <param name="AtTip">Removed at the tip end, mm; between both ends the removal changes evenly. Equal values keep the angle.</param>
public readonly record struct FaceSanding(double AtRim, double AtTip)
{
    /// <summary>Removed more at the upper side of the face than at the lower one, mm: half of it more above, half less below.</summary>
    public double MoreAbove { get; init; }

    /// <summary>Radius to which the upright edge between this face and the rim is rounded, mm.</summary>
    public double RimRadius { get; init; }

    /// <summary>
    /// Radius to which the upright edge between this face and the tip is rounded, mm. Where both joint faces meet in a
    /// sharp tip, the greater radius of both counts.
    /// </summary>
    public double TipRadius { get; init; }

    internal void Check(string where)
    {
        Require.Between($"{where}: removal at the rim", AtRim, 0, 20, "mm");
        Require.Between($"{where}: removal at the tip", AtTip, 0, 20, "mm");
        Require.Between($"{where}: more removed above", MoreAbove, -2 * Math.Min(AtRim, AtTip), 2 * Math.Min(AtRim, AtTip), "mm");
        Require.Between($"{where}: rounding at the rim", RimRadius, 0, 20, "mm");
        Require.Between($"{where}: rounding at the tip", TipRadius, 0, 20, "mm");
    }
}
