using System.Globalization;

namespace Ringwright.Core.Measures;

/// <summary>How lengths are printed for a person: millimetres, inch fractions to 1/64, or inch decimals.</summary>
public sealed record MeasureStyle
{
    /// <summary>Millimetres in an international inch, exactly.</summary>
    public const double MillimetresPerInch = 25.4;

    private const double PsiPerMegapascal = 145.037738;
    private const double GramsPerOunce = 28.349523125;
    private const double PoundsPerCubicFoot = 0.0624279606; // of 1 kg/m³
    private const double NewtonsPerPound = 4.4482216152605;

    private const int Finest = 64;

    // Closer to a fraction than this (0.02 mm, a fine pencil line is 0.3) the fraction alone is true enough.
    private const double FractionTolerance = 0.02 / MillimetresPerInch;

    private MeasureStyle(LengthUnit unit, bool fractions)
    {
        Unit = unit;
        Fractions = fractions;
    }

    /// <summary>Millimetres with decimals.</summary>
    public static MeasureStyle Millimetres { get; } = new(LengthUnit.Millimetre, false);

    /// <summary>Inches as fractions to 1/64; a length that is none shows its decimals too.</summary>
    public static MeasureStyle InchFractions { get; } = new(LengthUnit.Inch, true);

    /// <summary>Inches with decimals.</summary>
    public static MeasureStyle InchDecimals { get; } = new(LengthUnit.Inch, false);

    /// <summary>The unit of printed lengths, and of typed lengths without a unit.</summary>
    public LengthUnit Unit { get; }

    /// <summary>Whether inches print as fractions.</summary>
    public bool Fractions { get; }

    /// <summary>The style that goes with a document's unit.</summary>
    public static MeasureStyle For(LengthUnit unit) => unit == LengthUnit.Inch ? InchFractions : Millimetres;

    /// <summary>Prints <paramref name="value"/>, given in the unit that <paramref name="quantity"/> says with its unit.</summary>
    public string Print(double value, Quantity quantity) => quantity switch
    {
        Quantity.Length => Unit == LengthUnit.Millimetre ? Number(value, 2) + " mm" : Inches(value),
        Quantity.FineLength => Unit == LengthUnit.Millimetre ? Number(value, 3) + " mm" : Number(value / MillimetresPerInch, 4) + " in",
        Quantity.Angle => Number(double.RadiansToDegrees(value), 3) + "°",
        Quantity.FineAngle => Number(double.RadiansToDegrees(value), 4) + "°",
        Quantity.Count => Number(value, 0),
        Quantity.Share => Share(value),
        Quantity.Area => Unit == LengthUnit.Millimetre ? Number(value, 1) + " mm²" : Number(value / (MillimetresPerInch * MillimetresPerInch), 3) + " in²",
        Quantity.Volume => Unit == LengthUnit.Millimetre ? Number(value / 1000, 1) + " cm³" : Number(value / (MillimetresPerInch * MillimetresPerInch * MillimetresPerInch), 2) + " in³",
        Quantity.Stress => Unit == LengthUnit.Millimetre ? Number(value, 2) + " MPa" : Number(value * PsiPerMegapascal, 0) + " psi",
        Quantity.Turns => Number(value, 0) + " rpm",
        Quantity.Mass => Unit == LengthUnit.Millimetre ? Number(value, 1) + " g" : Number(value / GramsPerOunce, 2) + " oz",
        Quantity.Density => Unit == LengthUnit.Millimetre ? Number(value, 0) + " kg/m³" : Number(value * PoundsPerCubicFoot, 1) + " lb/ft³",
        Quantity.Unbalance => Unit == LengthUnit.Millimetre ? Number(value, 1) + " g·mm" : Number(value / (GramsPerOunce * MillimetresPerInch), 3) + " oz·in",
        Quantity.Force => Unit == LengthUnit.Millimetre ? Number(value, 2) + " N" : Number(value / NewtonsPerPound, 2) + " lbf",
        Quantity.Time => Duration.Print(value),
        _ => Number(value, 4),
    };

    /// <summary>Prints a length given in mm.</summary>
    public string Length(double millimetres) => Print(millimetres, Quantity.Length);

    /// <summary>The number that is printed, before it is rounded, and its unit: for a table that other programs reckon with.</summary>
    public (double Number, string Unit) Value(double value, Quantity quantity)
    {
        bool inch = Unit == LengthUnit.Inch;
        return quantity switch
        {
            Quantity.Length or Quantity.FineLength => inch ? (value / MillimetresPerInch, "in") : (value, "mm"),
            Quantity.Angle or Quantity.FineAngle => (double.RadiansToDegrees(value), "deg"),
            Quantity.Share => (100 * value, "%"),
            Quantity.Area => inch ? (value / (MillimetresPerInch * MillimetresPerInch), "in2") : (value, "mm2"),
            Quantity.Volume => inch ? (value / (MillimetresPerInch * MillimetresPerInch * MillimetresPerInch), "in3") : (value / 1000, "cm3"),
            Quantity.Stress => inch ? (value * PsiPerMegapascal, "psi") : (value, "MPa"),
            Quantity.Turns => (value, "rpm"),
            Quantity.Mass => inch ? (value / GramsPerOunce, "oz") : (value, "g"),
            Quantity.Density => inch ? (value * PoundsPerCubicFoot, "lb/ft3") : (value, "kg/m3"),
            Quantity.Unbalance => inch ? (value / (GramsPerOunce * MillimetresPerInch), "oz in") : (value, "g mm"),
            Quantity.Force => inch ? (value / NewtonsPerPound, "lbf") : (value, "N"),
            _ => (value, ""),
        };
    }

    private string Inches(double millimetres)
    {
        double inches = millimetres / MillimetresPerInch;
        string decimals = inches.ToString("0.000", CultureInfo.InvariantCulture).Replace('-', '−');
        if (!Fractions) return decimals + " in";
        double nearest = Math.Round(inches * Finest) / Finest;
        string fraction = Fraction(nearest);
        return Math.Abs(inches - nearest) <= FractionTolerance ? fraction + " in" : $"≈ {fraction} in ({decimals})";
    }

    // "100 %" and "0 %" are kept for what is certain.
    private static string Share(double value) => Math.Round(value, 3) switch
    {
        1 when value < 1 => "> 99.9 %",
        0 when value > 0 => "< 0.1 %",
        _ => Number(value * 100, 1) + " %",
    };

    private static string Fraction(double inches)
    {
        long parts = (long)Math.Round(Math.Abs(inches) * Finest);
        long under = Finest;
        (long whole, long over) = Math.DivRem(parts, Finest);
        while (over != 0 && over % 2 == 0)
        {
            over /= 2;
            under /= 2;
        }

        string sign = inches < 0 && parts != 0 ? "−" : "";
        if (over == 0) return sign + whole.ToString(CultureInfo.InvariantCulture);
        string fraction = string.Create(CultureInfo.InvariantCulture, $"{over}/{under}");
        return whole == 0 ? sign + fraction : string.Create(CultureInfo.InvariantCulture, $"{sign}{whole} {fraction}");
    }

    // At most that many decimals, trailing noughts dropped, no negative nought, a true minus sign.
    private static string Number(double value, int decimals)
    {
        string text = Math.Round(value, decimals, MidpointRounding.AwayFromZero)
            .ToString(decimals == 0 ? "0" : "0." + new string('#', decimals), CultureInfo.InvariantCulture);
        return text switch
        {
            "-0" => "0",
            ['-', .. string rest] => "−" + rest,
            _ => text,
        };
    }
}
