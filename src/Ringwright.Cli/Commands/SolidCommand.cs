using System.ComponentModel;
using System.Globalization;
using Ringwright.Cli.Output;
using Ringwright.Cli.Reference;
using Ringwright.Core;
using Ringwright.Core.Measures;
using Ringwright.Core.Planning;
using Ringwright.Core.Turning;
using Ringwright.Paper.Solids;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Ringwright.Cli.Commands;

/// <summary><c>ringwright solid FILE</c>: the turned piece as a solid: volumes, walls, files for a viewer or printer.</summary>
internal sealed class SolidCommand(IAnsiConsole console) : Command<SolidCommand.Settings>, IHelped
{
    public static CommandHelp Help { get; } = new(
        "solid",
        "The turned piece as a solid: volumes, walls, and files for a viewer or printer.",
        "solid examples/feature-bowl.json --out bowl.glb");

    internal sealed class Settings : PieceSettings
    {
        [CommandOption("-o|--out <FILE>")]
        [Description("Write it into this file: .glb (glTF), .stl or .3mf. May be given more than once.")]
        public string[] Out { get; init; } = [];

        [CommandOption("--chord <LENGTH>")]
        [Description("How far a flat facet may leave the round; 0.05 mm otherwise.")]
        public string? Chord { get; init; }

        [CommandOption("--json")]
        [Description("Print the answer as JSON.")]
        public bool Json { get; init; }
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        foreach (string path in settings.Out) Kind(path);
        Plan plan = settings.Plan();
        MeasureStyle style = settings.Style(plan.Piece.Units);
        double chord = settings.Chord is null ? 0.05 : TypedText.Length("--chord", settings.Chord, style.Unit, "a length such as 0.05 mm is needed").Millimetres;
        if (!(chord is >= 0.001 and <= 5)) throw new BadInputException("--chord", $"{style.Length(chord)} cannot be", "0.001 mm to 5 mm can");
        TurnedPiece turned = plan.Turned(chord / 2);
        var facets = Facets.Within(chord / 2);
        TurnedMesh mesh = TurnedMesh.Of(turned.Rings, facets, MeshCorners.PerFace);
        TurnedMass mass = SolidFigures.Weigh(turned);
        if (settings.Json) SolidJson.Write(console, plan, turned, mesh, mass);
        else Print(plan, turned, mesh, mass, style);
        foreach (string path in settings.Out) SafeFile.Write(path, Bytes(path, turned, mesh, () => TurnedMesh.Of(turned.Rings, facets)));
        if (settings.Out.Length == 0 || settings.Json) return ExitCode.Done;
        AlignedText.Heading(console, "Written");
        foreach (string path in settings.Out) console.WriteLine("  " + path);
        return ExitCode.Done;
    }

    private void Print(Plan plan, TurnedPiece turned, TurnedMesh mesh, TurnedMass mass, MeasureStyle style)
    {
        string Volume(double v) => style.Print(v, Quantity.Volume);
        string Count(int n) => n.ToString(CultureInfo.InvariantCulture);
        double blank = plan.Rings.Sum(r => r.BlankVolume);
        console.WriteLine($"{plan.Piece.Name}: {Volume(mass.Whole.Volume)} of wood in {Count(mesh.Parts.Length)} pieces; {style.Print(1 - (mass.Whole.Volume / blank), Quantity.Share)} of the glued blank is turned away.");
        AlignedText.Write(console, [.. plan.Figures.Select(f => new[] { f.Label, style.Print(f.Value, f.Quantity) }),
            ["Turned surface outside", style.Print(mass.Whole.OuterArea, Quantity.Area)], ["Turned surface inside", style.Print(mass.Whole.InnerArea, Quantity.Area)], ["Triangles in the mesh", Count(mesh.TriangleCount)]], 1);
        AlignedText.Heading(console, "By wood");
        AlignedText.Write(console, SolidFigures.ByWood(turned, mass).Select(w => new[] { w.Wood, $"{Count(w.Pieces)} pieces", Volume(w.Volume) }), 1, 2);
        AlignedText.Heading(console, "By ring, from the top down");
        AlignedText.Write(console, turned.Rings.Select((r, i) => new[] { Count(i + 1), $"{Count(r.Segments.Length)} pieces", Volume(mass.Rings[i].Volume) }).Reverse(), 0, 1, 2);
    }

    private static string Kind(string path) => Path.GetExtension(path).ToLowerInvariant() is ".glb" or ".stl" or ".3mf"
        ? Path.GetExtension(path).ToLowerInvariant()
        : throw new BadInputException("--out", $"“{path}” is no solid that can be written", "a name that ends with .glb, .stl or .3mf is needed");

    // A printer needs each shell closed by its indices.
    private static byte[] Bytes(string path, TurnedPiece turned, TurnedMesh mesh, Func<TurnedMesh> closed) => Kind(path) switch
    {
        ".stl" => StlWriter.Write(mesh),
        ".3mf" => ThreeMfWriter.Write(closed(), SolidFigures.Woods(turned)),
        _ => GlbWriter.Write(mesh, SolidFigures.Woods(turned)),
    };
}
