using System.Globalization;
using Ringwright.Core;

namespace Ringwright.Paper.Sheets;

/// <summary>A size of paper as it lies before the reader.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Width">Width, mm.</param>
/// <param name="Height">Height, mm.</param>
public sealed record PaperSize(string Name, double Width, double Height)
{
    /// <summary>ISO 216 A4, upright.</summary>
    public static PaperSize A4 { get; } = new("A4", 210, 297);

    /// <summary>US Letter (ANSI A), 8 1/2 x 11 in, upright.</summary>
    public static PaperSize Letter { get; } = new("Letter", 215.9, 279.4);

    /// <summary>The same paper with its long side level.</summary>
    public PaperSize Landscape() => Width >= Height ? this : this with { Width = Height, Height = Width };
}

/// <summary>The free edge around the frame, mm. The left edge is wider, for filing (ISO 5457).</summary>
/// <param name="Left">Left edge.</param>
/// <param name="Right">Right edge.</param>
/// <param name="Top">Upper edge.</param>
/// <param name="Bottom">Lower edge.</param>
public sealed record Margins(double Left = 20, double Right = 10, double Top = 10, double Bottom = 10)
{
    /// <summary>The margins of the back of a sheet.</summary>
    public Margins Mirrored() => this with { Left = Right, Right = Left };
}

/// <summary>
/// What a printer gets wrong, put right: true-scale content is stretched by these factors. Found by measuring the check
/// rulers of a sheet printed without correction.
/// </summary>
public sealed record PrintCorrection
{
    private const double Most = 0.05;

    /// <summary>A correction.</summary>
    /// <param name="across">Wanted over printed length across the sheet.</param>
    /// <param name="down">Wanted over printed length down the sheet.</param>
    /// <exception cref="BadInputException">A factor is off by more than 5 %: that is a print setting, not a printer's error.</exception>
    public PrintCorrection(double across, double down)
    {
        Across = Checked(across, "print correction across");
        Down = Checked(down, "print correction down");
    }

    /// <summary>No correction.</summary>
    public static PrintCorrection None { get; } = new(1, 1);

    /// <summary>Factor across the sheet.</summary>
    public double Across { get; }

    /// <summary>Factor down the sheet.</summary>
    public double Down { get; }

    /// <summary>The correction from what the 100 mm rulers measured on paper, mm.</summary>
    public static PrintCorrection FromMeasured(double across, double down) =>
        new(CheckRuler.Millimetres / across, CheckRuler.Millimetres / down);

    private static double Checked(double factor, string where) => Math.Abs(factor - 1) <= Most
        ? factor
        : throw new BadInputException(
            where,
            string.Create(CultureInfo.InvariantCulture, $"{factor:0.####} is more than 5 % from 1"),
            "print at actual size (100 %), measure the check ruler again, and give a factor from 0.95 to 1.05");
}
