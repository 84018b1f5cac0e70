namespace Ringwright.Core.Fitting;

/// <summary>Measured wedges and the ring to be made of them.</summary>
public sealed record WedgeChoiceInput
{
    /// <summary>The most places a ring may have here.</summary>
    public const int MostPlaces = 120;

    /// <summary>The most wedges to choose from.</summary>
    public const int MostWedges = 240;

    /// <summary>Standard deviation of one caliper reading where none is given, mm (common practice, no source).</summary>
    public const double UsualCaliperSd = 0.01;

    /// <summary>Step in which gaps are compared where none is given, mm.</summary>
    public const double UsualGapStep = 0.001;

    /// <summary>The wedges, in the order in which they would be taken if nobody chose.</summary>
    public required IReadOnlyList<CaliperReading> Wedges { get; init; }

    /// <summary>Wedges in the ring, N.</summary>
    public required int Places { get; init; }

    /// <summary>Radius at which gaps are told, mm.</summary>
    public required double Radius { get; init; }

    /// <summary>Radial distance between the two reading places of a wedge, mm.</summary>
    public required double Depth { get; init; }

    /// <summary>
    /// Woods around the ring from the first place on, repeated until it is full; N is a multiple of its length. Empty: any wood anywhere.
    /// </summary>
    public IReadOnlyList<string> Pattern { get; init; } = [];

    /// <summary>How the ring is closed. With <see cref="Closing.Halves"/> the first half is the places 1 to N/2.</summary>
    public Closing Closing { get; init; } = Closing.Whole;

    /// <summary>Standard deviation of one caliper reading, mm.</summary>
    public double CaliperSd { get; init; } = UsualCaliperSd;

    /// <summary>
    /// Gaps and joint lines are compared in whole steps of this size at the rim, mm, rounded up and at least one: a smaller difference
    /// decides nothing, and leaves the choice to what comes next. 0 compares them by single nanoradians.
    /// </summary>
    public double GapStep { get; init; } = UsualGapStep;

    /// <summary>Wood of the place, counted from 0; null when any will do.</summary>
    public string? WoodAt(int place) => Pattern.Count == 0 ? null : Pattern[place % Pattern.Count];

    /// <summary>Whether the wedge may take the place, counted from 0.</summary>
    public bool Suits(CaliperReading wedge, int place) =>
        WoodAt(place) is not { } wood || string.Equals(wood, wedge.Wood, StringComparison.OrdinalIgnoreCase);
}
