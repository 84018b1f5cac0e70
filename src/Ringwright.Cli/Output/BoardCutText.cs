using Ringwright.Core.Measures;
using Ringwright.Core.Planning;
using Spectre.Console;

namespace Ringwright.Cli.Output;

/// <summary>How rings sawn out of a flat board come out.</summary>
internal static class BoardCutText
{
    public static void Write(IAnsiConsole console, BoardGroupPlan board, BoardCutForecast forecast, MeasureStyle style)
    {
        console.WriteLine($"{board.Name}, {forecast.Boards} boards with the errors of the shop: every ring holds its turned size in {style.Print(forecast.Chance, Quantity.Share)} of them.");
        AlignedText.Heading(console, "Wood left beyond the turned size, at the leaner face");
        AlignedText.Write(console, [
            ["", "tilt", "outside, usually", "1 in 20 below", "inside, usually", "1 in 20 below", "holds its size"],
            .. forecast.Rings.Select(r => Row(r, style))], 1, 2, 3, 4, 5, 6);
        AlignedText.Mind(console, [.. Cautions.ForTiltedRings]);
    }

    private static string[] Row(BoardRingOutcome r, MeasureStyle style) =>
    [
        r.Ring.Ring.Name, style.Print(r.Ring.Inside.Tilt, Quantity.Angle), style.Length(r.OuterReserve.Middle), style.Length(r.OuterReserve.Low),
        style.Length(r.InnerReserve.Middle), style.Length(r.InnerReserve.Low), style.Print(r.Chance, Quantity.Share),
    ];
}
