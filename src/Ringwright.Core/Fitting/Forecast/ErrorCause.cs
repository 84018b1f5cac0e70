namespace Ringwright.Core.Fitting;

/// <summary>What makes a ring differ from the ideal one.</summary>
[Flags]
public enum ErrorCause
{
    /// <summary>Nothing.</summary>
    None = 0,

    /// <summary>Setting the fences to their angle, once for a ring.</summary>
    Setting = 1,

    /// <summary>Seating the board or wedge, anew for each cut or face.</summary>
    CutToCut = 2,

    /// <summary>The constant error of every cut.</summary>
    Bias = 4,

    /// <summary>Uneven hand sanding, anew for each face.</summary>
    Sanding = 8,

    /// <summary>The length at the stop, anew for each wedge.</summary>
    Stop = 16,

    /// <summary>The kerf's width, anew for each cut.</summary>
    Kerf = 32,

    /// <summary>The blade's lean.</summary>
    Lean = 64,

    /// <summary>All of them.</summary>
    All = 127,
}
