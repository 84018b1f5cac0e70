using Ringwright.Core.Documents;
using Ringwright.Core.Measures;
using Ringwright.Core.Planning;
using Spectre.Console;

namespace Ringwright.Cli.Output;

/// <summary>The work at the lathe as JSON: mm, turns a minute, N.</summary>
internal static class LatheJson
{
    private static readonly string[] Passes = ["asGlued", "outsideRoughed", "insideRoughed", "finished"];

    public static void Write(IAnsiConsole console, Plan plan, LathePlan lathe, MeasureStyle style) => JsonOut.Write(console, json =>
    {
        json.WriteString("piece", plan.Piece.Name);
        PlanJson.WriteFigures(json, lathe.Figures, style);
        json.WriteObjects("rings", lathe.Rings, ring =>
        {
            json.WriteString("name", ring.Ring.Plan.Ring.Name);
            json.WriteNumber("centreWithin", ring.CentreWithin);
            json.WriteNumber("outsideStock", ring.OutsideStock);
            json.WriteNumber("insideStock", ring.InsideStock);
            foreach ((WallReading wall, string pass) in Enum.GetValues<LathePass>().Select(p => ring[p]).Zip(Passes))
            {
                json.WriteStartObject(pass);
                json.WriteNumber("height", wall.Height);
                json.WriteNumber("outerRadius", wall.Outer);
                json.WriteNumber("innerRadius", wall.Inner);
                json.WriteEndObject();
            }

        });
        json.WriteTexts("steps", lathe.Steps.Select(s => s.In(style)));
        json.WriteTexts("doubts", lathe.Doubts.Select(d => d.Sentence.In(style)));
    });
}
