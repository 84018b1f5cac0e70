using System.ComponentModel;
using System.Globalization;
using Ringwright.Cli.Output;
using Ringwright.Cli.Reference;
using Ringwright.Core;
using Ringwright.Core.Gauges;
using Ringwright.Core.Measures;
using Ringwright.Core.Planning;
using Ringwright.Core.Turning;
using Ringwright.Paper.Solids;
using Ringwright.Paper.Templates;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Ringwright.Cli.Commands;

/// <summary><c>ringwright gauges FILE --out FOLDER</c>: gauges of the exact angles for a 3D printer.</summary>
internal sealed class GaugesCommand(IAnsiConsole console) : Command<GaugesCommand.Settings>, IHelped
{
    public static CommandHelp Help { get; } = new(
        "gauges",
        "Gauges of the exact angles for a 3D printer: a wedge for both fences, a block for one.",
        "gauges examples/walnut-ring.json --out out --bed \"200 mm\"");

    internal sealed class Settings : PieceSettings
    {
        [CommandOption("-o|--out <FOLDER>")]
        [Description("Folder for the files; without it the gauges are only listed.")]
        public string? Out { get; init; }

        [CommandOption("--format <FORMAT>")]
        [Description("stl or 3mf.")]
        public string Format { get; init; } = "stl";

        [CommandOption("--bed <LENGTH>")]
        [Description("The greatest length and width that your printer takes; 180 mm otherwise.")]
        public string? Bed { get; init; }

        [CommandOption("--ring <NAME>")]
        [Description("Only those of this ring.")]
        public string? Ring { get; init; }

        [CommandOption("--json")]
        [Description("The list as JSON: lengths in mm, angles in radians.")]
        public bool Json { get; init; }
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        string format = settings.Format.ToLowerInvariant();
        if (format is not ("stl" or "3mf")) throw new BadInputException("--format", $"“{settings.Format}” is no format here", "stl or 3mf is needed");
        Plan plan = settings.Plan();
        MeasureStyle style = settings.Style(plan.Piece.Units);
        double bed = settings.Bed is null ? 180 : TypedText.Length("--bed", settings.Bed, style.Unit, "a length such as 180 mm is needed").Millimetres;
        IReadOnlyList<GaugeShape> gauges = GaugeSet.Of(plan, bed, settings.Ring is null ? null : RingSettings.Pick(plan, settings.Ring));
        if (gauges.Count == 0) throw new BadInputException("gauges", "nothing in this piece is sawn at an angle", "a ring of segments or staves has some");
        GaugeSolid[] solids = [.. gauges.Select(GaugeSolid.Of)];
        string[] paths = settings.Out is null ? [] : [.. gauges.Zip(solids, (g, s) => Written(settings, format, g, s))];
        if (settings.Json) JsonOut.Write(console, json => Write(json, gauges, solids, paths));
        else Print(gauges, solids, paths, style);
        return ExitCode.Done;
    }

    private static string Written(Settings settings, string format, GaugeShape gauge, GaugeSolid solid)
    {
        string path = $"{Path.Combine(settings.Out!, Path.GetFileNameWithoutExtension(settings.File))}.{TemplateNames.Part(gauge.Name)}.{format}";
        SafeFile.Write(path, format == "stl" ? StlWriter.Write(solid.Positions(), solid.Triangles.AsSpan()) : ThreeMfWriter.Write(gauge.Name, solid.Positions(), solid.Triangles));
        return path;
    }

    private void Print(IReadOnlyList<GaugeShape> gauges, GaugeSolid[] solids, string[] paths, MeasureStyle style)
    {
        AlignedText.Write(console, gauges.Zip(solids, (g, s) => new[] { g.Name, style.Print(g.Angle, Quantity.FineAngle), Size(g, style), $"“{s.Written}”" }), 1);
        double off = gauges.Max(g => Math.Abs(g.InSinglePrecision - g.Angle));
        console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"In the single precision of printers' files their angles are right to {double.RadiansToDegrees(off):0.0000000}°; what your printer makes of it, a sliding bevel or a dry half ring must tell."));
        if (paths.Length == 0) return;
        AlignedText.Heading(console, "Written");
        foreach (string path in paths) console.WriteLine("  " + path);
    }

    private static string Size(GaugeShape gauge, MeasureStyle style)
    {
        double Span(Func<Core.Geometry.Vector2D, double> axis) => gauge.Outline.Vertices.Max(axis) - gauge.Outline.Vertices.Min(axis);
        return $"{style.Length(Span(p => p.X))} x {style.Length(Span(p => p.Y))} x {style.Length(gauge.Thickness)}";
    }

    private static void Write(System.Text.Json.Utf8JsonWriter json, IReadOnlyList<GaugeShape> gauges, GaugeSolid[] solids, string[] paths)
    {
        json.WriteStartArray("gauges");
        for (int i = 0; i < gauges.Count; i++)
        {
            json.WriteStartObject();
            json.WriteString("name", gauges[i].Name);
            json.WriteNumber("angle", gauges[i].Angle);
            json.WriteNumber("angleInSinglePrecision", gauges[i].InSinglePrecision);
            json.WriteNumber("volume", solids[i].Volume);
            json.WriteString("engraved", solids[i].Written);
            if (paths.Length > 0) json.WriteString("file", paths[i]);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
