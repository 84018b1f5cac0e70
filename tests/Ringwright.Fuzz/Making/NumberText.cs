namespace Ringwright.Fuzz.Making;

/// <summary>Numbers and measures as people write them, rightly and nearly rightly.</summary>
public static class NumberText
{
    private static readonly string[] LengthUnits = ["mm", " mm", "cm", " cm", "m", " m", "in", " in", " inch", " inches", "\"", "″", "”", "''", "MM", " In", "", "", "ft", " km"];
    private static readonly string[] Space = ["", "", "", " ", "  ", "\t"];

    /// <summary>A number: whole, decimal, fraction or mixed.</summary>
    public static string Number(Dice dice)
    {
        string sign = dice.Below(12) switch { 0 => "-", 1 => "−", 2 => "+", _ => "" };
        return sign + dice.Below(7) switch
        {
            0 => Whole(dice),
            1 => $"{Whole(dice)}.{Decimals(dice)}",
            2 => $"{Whole(dice)},{Decimals(dice)}",
            3 => $"{dice.Below(65)}/{dice.From(dice.Chance(0.02) ? 0 : 1, 64)}",
            4 => $"{Whole(dice)} {dice.Below(65)}/{dice.From(1, 64)}",
            5 => $"{Whole(dice)}-{dice.Below(65)}/{dice.From(1, 64)}",
            _ => Whole(dice) + dice.One("½¼¾⅛⅜⅝⅞⅓⅔".ToCharArray()),
        };
    }

    /// <summary>A length, mostly with its unit.</summary>
    public static string Length(Dice dice) => dice.One(Space) + Number(dice) + dice.One(LengthUnits) + dice.One(Space);

    /// <summary>An angle in degrees, minutes and seconds.</summary>
    public static string Angle(Dice dice) => dice.One(Space) + dice.Below(5) switch
    {
        0 => Number(dice),
        1 => $"{Number(dice)}°",
        2 => $"{Number(dice)} deg",
        3 => $"{dice.Below(370)}° {dice.Below(62)}'",
        _ => $"{dice.Below(370)}°{dice.One(Space)}{dice.Below(61)}'{dice.One(Space)}{dice.Below(61)}.{Decimals(dice)}\"",
    } + dice.One(Space);

    /// <summary>A time.</summary>
    public static string Time(Dice dice) => dice.One(Space) + dice.Below(4) switch
    {
        0 => $"{Number(dice)} min",
        1 => $"{Number(dice)} h {Number(dice)} min",
        2 => $"{Number(dice)} days",
        _ => $"{Number(dice)}{dice.One(["h", "d", "min", "s", "hours", "day", ""])}",
    } + dice.One(Space);

    /// <summary>A temperature.</summary>
    public static string Temperature(Dice dice) => dice.One(Space) + Number(dice) + dice.One(["°C", " °C", "°F", " F", "C", " K", ""]) + dice.One(Space);

    private static string Whole(Dice dice) => dice.Below(10) switch
    {
        0 => "0",
        1 => dice.Digits(dice.From(1, 14)),
        2 => "0" + dice.Digits(2),
        _ => dice.Below(400).ToString(System.Globalization.CultureInfo.InvariantCulture),
    };

    private static string Decimals(Dice dice) => dice.Below(8) switch
    {
        0 => new string('0', dice.From(1, 30)) + "1",
        1 => dice.Digits(dice.From(1, 30)),
        _ => dice.Digits(dice.From(1, 3)),
    };
}
