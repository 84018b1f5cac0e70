using System.Globalization;
using Ringwright.Core;
using Ringwright.Core.Measures;

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

    /// <summary>The paper of a name; without one, Letter for a piece in inches and A4 for others.</summary>
    /// <exception cref="BadInputException">With <paramref name="where"/>: there is no such paper.</exception>
    public static PaperSize Read(string? name, LengthUnit unit, string where) => name?.ToLowerInvariant() switch
    {
        null or "" => unit == LengthUnit.Inch ? Letter : A4,
        "a4" => A4,
        "letter" => Letter,
        _ => throw new BadInputException(where, $"“{name}” is no paper here", "a4 or letter is needed"),
    };

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

    /// <summary>
    /// Reads two factors (<c>1.003,0.998</c>) or what the 100 mm rulers measured on paper (<c>99.7 mm,100.2 mm</c>), across first;
    /// no correction from an empty text.
    /// </summary>
    /// <exception cref="BadInputException">With <paramref name="where"/>: it is neither.</exception>
    public static PrintCorrection Read(string? text, string where)
    {
        const string Right = "two factors such as 1.003,0.998 or two lengths such as 99.7 mm,100.2 mm are needed, across the sheet first";
        if (string.IsNullOrEmpty(text)) return None;
        string[] both = text.Split(',', StringSplitOptions.TrimEntries);
        if (both.Length != 2) throw new BadInputException(where, $"“{text}” is not two values", Right);
        if (both.All(one => double.TryParse(one, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out _)))
            return new(double.Parse(both[0], CultureInfo.InvariantCulture), double.Parse(both[1], CultureInfo.InvariantCulture));
        double[] measured = [.. both.Select(one => Length.TryParse(one, LengthUnit.Millimetre, out Length length, out ParseError? error) ? length.Millimetres : throw new BadInputException(where, error.Sentence, Right))];
        return measured.All(length => length > 0) ? FromMeasured(measured[0], measured[1]) : throw new BadInputException(where, "a ruler cannot measure nothing", Right);
    }

    private static double Checked(double factor, string where) => Math.Abs(factor - 1) <= Most
        ? factor
        : throw new BadInputException(
            where,
            string.Create(CultureInfo.InvariantCulture, $"{factor:0.####} is more than 5 % from 1"),
            "print at actual size (100 %), measure the check ruler again, and give a factor from 0.95 to 1.05");
}
