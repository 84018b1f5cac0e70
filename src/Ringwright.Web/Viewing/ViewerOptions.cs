namespace Ringwright.Web.Viewing;

/// <summary>What of the piece is shown first; the person at the screen changes it there.</summary>
/// <param name="View">How the piece stands.</param>
/// <param name="Finish">What is on the wood.</param>
/// <param name="Age">Colour of the wood: 0 fresh from the tool, 1 aged in light.</param>
/// <param name="TellApart">Whether woods are told apart by lines, as on paper, instead of by their grain.</param>
public sealed record ViewerOptions(ViewerView View = ViewerView.Whole, WoodFinish Finish = WoodFinish.Oiled, double Age = 0.15, bool TellApart = false);

/// <summary>How the piece stands in the picture.</summary>
public enum ViewerView
{
    /// <summary>As it leaves the lathe.</summary>
    Whole,

    /// <summary>Cut through by an upright plane.</summary>
    CutOpen,

    /// <summary>Its rings apart from each other.</summary>
    PulledApart,

    /// <summary>One ring by itself.</summary>
    OneRing,

    /// <summary>Wood like glass, glue joints bold.</summary>
    GlueJoints,
}

/// <summary>What is on the wood.</summary>
public enum WoodFinish
{
    /// <summary>Nothing.</summary>
    Raw,

    /// <summary>Oil.</summary>
    Oiled,

    /// <summary>A polished film.</summary>
    Gloss,
}
