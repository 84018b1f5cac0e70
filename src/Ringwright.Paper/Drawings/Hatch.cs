namespace Ringwright.Paper.Drawings;

/// <summary>Parallel lines of a hatch.</summary>
/// <param name="Angle">Direction, radians from +x, clockwise as seen.</param>
/// <param name="Spacing">Distance between lines, mm.</param>
/// <param name="Dash">Length of each dash, mm; 0 for lines that run through.</param>
/// <param name="Gap">Length of each gap, mm. Every second line is shifted by half a dash and gap.</param>
public sealed record HatchLines(double Angle, double Spacing, double Dash = 0, double Gap = 0);

/// <summary>
/// A pattern that tells one wood from another in black and white. The patterns differ in direction, density and dash, so
/// that any two are told apart on a poor print.
/// </summary>
/// <param name="Name">What it is called in a legend.</param>
/// <param name="Lines">Its families of lines.</param>
public sealed record Hatch(string Name, IReadOnlyList<HatchLines> Lines)
{
    private const double Slope = Math.PI / 4;

    /// <summary>No lines.</summary>
    public static Hatch Plain { get; } = new("plain", []);

    /// <summary>The patterns in the order in which woods take them.</summary>
    public static IReadOnlyList<Hatch> All { get; } =
    [
        Plain,
        new("slanted", [new(-Slope, 1.4)]),
        new("dashed", [new(0, 1.3, 2.6, 1.2)]),
        new("crossed", [new(-Slope, 1.9), new(Slope, 1.9)]),
        new("upright", [new(Math.PI / 2, 1.1)]),
        new("dotted", [new(0, 1.5, 0.35, 1.65)]),
        new("close", [new(Slope, 0.7)]),
        new("squared", [new(0, 1.7), new(Math.PI / 2, 1.7)]),
    ];

    /// <summary>The pattern of the wood with this number, from 0; they come round again after the last.</summary>
    public static Hatch Of(int index) => All[((index % All.Count) + All.Count) % All.Count];

    /// <summary>The pattern turned, so that it lies the same way in every segment of a ring.</summary>
    /// <param name="angle">Radians, clockwise as seen.</param>
    public Hatch Turned(double angle) => this with { Lines = [.. Lines.Select(l => l with { Angle = l.Angle + angle })] };
}
