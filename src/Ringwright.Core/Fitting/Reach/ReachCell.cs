namespace Ringwright.Core.Fitting;

/// <summary>The first thing that stops a size, in the order the work meets it.</summary>
public enum ReachStop
{
    /// <summary>Nothing: it can be made.</summary>
    None,

    /// <summary>Sanding alone would eat the wedge: its tip-to-rim depth or rim edge is not more than what is sanded off.</summary>
    SandedAway,

    /// <summary>Not one wedge comes out of a board.</summary>
    BoardTooShort,

    /// <summary>The rim edge is shorter than what these hands can hold and sand.</summary>
    TooSmallToHold,

    /// <summary>More of the board becomes sawdust than wedges.</summary>
    MostlySawdust,

    /// <summary>The angle cannot be held well enough: two tries in three gape.</summary>
    ProbablyGapes,
}

/// <summary>One size of disc, sawn to a point: what it asks of the shop. Lengths in mm, angles in radians.</summary>
/// <param name="Segments">Wedges in the disc.</param>
/// <param name="Diameter">Across flats as glued.</param>
/// <param name="RimEdge">Rim edge of the finished wedge.</param>
/// <param name="SawnTip">Flat left at the tip by the saw, that sanding turns into a point.</param>
/// <param name="HoldingSize">Length of a joint face, rim to tip: what there is to hold while it is sanded.</param>
/// <param name="Required">Largest standard deviation of one face's angle with which the disc closes with the wanted chance.</param>
/// <param name="Achieved">Standard deviation of one face's angle in this shop, all causes that scatter together.</param>
/// <param name="Chance">Chance that the disc closes, the fences corrected by a test half.</param>
/// <param name="Dust">Share of the strip turned to sawdust.</param>
/// <param name="Stop">The first thing that stops it.</param>
public readonly record struct ReachCell(
    int Segments, double Diameter, double RimEdge, double SawnTip, double HoldingSize, double Required, double Achieved, double Chance, double Dust, ReachStop Stop);
