namespace Ringwright.Paper.Drawings;

/// <summary>A line: its thickness, its dashes, its ink.</summary>
/// <param name="Width">Thickness, mm.</param>
/// <param name="Colour">The ink.</param>
/// <param name="Dashes">Lengths of line and gap in turn, mm; empty or absent for a continuous line.</param>
public sealed record Pen(double Width, Colour Colour = default, IReadOnlyList<double>? Dashes = null);

/// <summary>The lines of a drawing: three thicknesses, each twice the one below (steps of ISO 128).</summary>
public static class Pens
{
    /// <summary>Frame, and the outline of the thing the sheet is about: 0.7 mm.</summary>
    public static Pen Heavy { get; } = new(0.7);

    /// <summary>Visible edges and the lines of tables: 0.35 mm.</summary>
    public static Pen Medium { get; } = new(0.35);

    /// <summary>Dimensions, leaders, hatching, ruler ticks: 0.18 mm.</summary>
    public static Pen Fine { get; } = new(0.18);

    /// <summary>Centre lines: fine long-dash dot.</summary>
    public static Pen Centre { get; } = Fine with { Dashes = [8, 1.5, 0.5, 1.5] };

    /// <summary>Hidden edges and what the saw takes away: fine dashes.</summary>
    public static Pen Hidden { get; } = Fine with { Dashes = [2.5, 1.2] };
}
