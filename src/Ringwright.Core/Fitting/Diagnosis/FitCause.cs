using Ringwright.Core.Planning;

namespace Ringwright.Core.Fitting;

/// <summary>What can keep a ring from closing.</summary>
public enum FitCauseKind
{
    /// <summary>All wedge angles off by the same: the fences.</summary>
    WedgeAngle,

    /// <summary>Faces that lean: open at the top or at the bottom.</summary>
    Lean,

    /// <summary>Faces bellied or hollow, or edges rounded: open at both ends, or tight ends about an open middle.</summary>
    FaceShape,

    /// <summary>One joint unlike the others: a wedge that was badly seated, chipped or picked from another batch.</summary>
    UnevenWedge,
}

/// <summary>One possible cause and what the readings say about it.</summary>
/// <param name="Kind">The cause.</param>
/// <param name="Mean">
/// Its size: closing error in radians (above 0: wedges too narrow in angle) for the wedge angle; mm for the others (lean:
/// opening at the top, below 0 at the bottom; shape: height of the belly, below 0 a hollow; uneven wedge: what its joint opens more).
/// </param>
/// <param name="Sd">Its standard deviation, in the same unit.</param>
/// <param name="Chance">Chance that this cause alone opens a joint by more than a feeler gauge tells (0.05 mm), the closing error gathered in one joint.</param>
/// <param name="Joint">The joint, for an uneven wedge.</param>
/// <param name="Sentence">The cause in words.</param>
public sealed record FitCause(FitCauseKind Kind, double Mean, double Sd, double Chance, int? Joint, Sentence Sentence);
