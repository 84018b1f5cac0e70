using Ringwright.Core.Documents;
using Ringwright.Core.Planning;
using Ringwright.Core.Turning;
using Spectre.Console;

namespace Ringwright.Cli.Output;

/// <summary>The turned solid's numbers as JSON: mm, mm², mm³.</summary>
internal static class SolidJson
{
    public static void Write(IAnsiConsole console, Plan plan, TurnedPiece turned, TurnedMesh mesh, TurnedMass mass) => JsonOut.Write(console, json =>
    {
        json.WriteString("piece", plan.Piece.Name);
        json.WriteNumber("volume", mass.Whole.Volume);
        json.WriteNumber("blankVolume", plan.Rings.Sum(r => r.BlankVolume));
        json.WriteNumber("outerArea", mass.Whole.OuterArea);
        json.WriteNumber("innerArea", mass.Whole.InnerArea);
        json.WriteNumber("triangles", mesh.TriangleCount);
        json.WriteStartObject("figures");
        foreach (Figure figure in plan.Figures) json.WriteNumber(figure.Name, figure.Value);
        json.WriteEndObject();
        json.WriteObjects("woods", SolidFigures.ByWood(turned, mass), w =>
        {
            (string wood, int pieces, double volume) = w;
            json.WriteString("wood", wood);
            json.WriteNumber("pieces", pieces);
            json.WriteNumber("volume", volume);
        });
    });
}
