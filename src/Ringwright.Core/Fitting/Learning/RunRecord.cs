namespace Ringwright.Core.Fitting;

/// <summary>
/// What was measured in one real run at the saw or sander, with the fences set once. Everything is optional: what is
/// not measured teaches nothing.
/// </summary>
/// <remarks>
/// Give wedge angles or the closing error of the same ring, not both: they are one and the same evidence.
/// </remarks>
public sealed record RunRecord
{
    /// <summary>
    /// Errors of wedge angles, measured minus wanted, radians. Each list is one run of wedges in the order they were
    /// sawn, neighbours sharing a cut; a wedge missing from the row (lost, not measured) ends the list and starts a
    /// new one. Wedges trued face by face are lists of one.
    /// </summary>
    public IReadOnlyList<IReadOnlyList<double>> WedgeErrors { get; init; } = [];

    /// <summary>Closing errors of whole rings.</summary>
    public IReadOnlyList<RingClosure> Closures { get; init; } = [];

    /// <summary>Wedges sawn, lost ones included.</summary>
    public int PiecesSawn { get; init; }

    /// <summary>Wedges of these that were lost.</summary>
    public int PiecesLost { get; init; }

    /// <summary>Cuts that were timed.</summary>
    public int Cuts { get; init; }

    /// <summary>Minutes for the timed <see cref="Cuts"/>.</summary>
    public double CuttingMinutes { get; init; }

    /// <summary>Sanded faces that were timed.</summary>
    public int FacesSanded { get; init; }

    /// <summary>Minutes for the timed <see cref="FacesSanded"/>.</summary>
    public double SandingMinutes { get; init; }
}

/// <summary>A ring was laid together and its closing error read.</summary>
/// <param name="Runs">Its wedges and how they shared cuts.</param>
/// <param name="ClosingError">E = 2 pi - sum of wedge angles, radians: gap over radius, negative when open at the centre.</param>
public sealed record RingClosure(CutRuns Runs, double ClosingError);
