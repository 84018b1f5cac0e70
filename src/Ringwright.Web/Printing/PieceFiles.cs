using System.IO.Compression;
using System.Text;
using Ringwright.Core;
using Ringwright.Core.Gauges;
using Ringwright.Core.Timber;
using Ringwright.Core.Turning;
using Ringwright.Paper.Data;
using Ringwright.Paper.Output;
using Ringwright.Paper.Solids;
using Ringwright.Paper.Templates;
using Ringwright.Web.Bench;

namespace Ringwright.Web.Printing;

/// <summary>The files of the piece on the bench that are no paper: for a laser, a printer of solids, a spreadsheet.</summary>
internal static class PieceFiles
{
    private const double Chord = 0.05; // mm; how far a flat facet may leave the round

    /// <summary>The templates that are asked for.</summary>
    /// <exception cref="BadInputException">There are none.</exception>
    public static Template[] TemplatesOf(Sheet sheet, PrintQuery query)
    {
        Template[] templates = [.. TemplateSet.Of(sheet.Good, sheet.Style, string.IsNullOrEmpty(query.Kinds) ? null : Template.Read(query.Kinds), query.OnlyRing(sheet.Good))];
        return templates.Length > 0 ? templates : throw new BadInputException("templates", "this piece has none of the kind", "leave the kinds away for all that it has");
    }

    /// <summary>The templates as SVG or DXF files in one archive.</summary>
    public static byte[] Templates(Sheet sheet, PrintQuery query, string ending) => Archive(TemplateNames.Of(TemplatesOf(sheet, query)).Select(t =>
        (t.Name + ending, Encoding.UTF8.GetBytes(ending == ".svg" ? SvgWriter.Write(t.Template.Drawing, $"{sheet.Good.Piece.Name}: {t.Template.Name}") : DxfWriter.Write(t.Template.Drawing)))));

    /// <summary>The gauges as STL or 3MF files in one archive.</summary>
    public static byte[] Gauges(Sheet sheet, PrintQuery query, string ending)
    {
        IReadOnlyList<GaugeShape> gauges = GaugeSet.Of(sheet.Good, ring: query.OnlyRing(sheet.Good));
        if (gauges.Count == 0) throw new BadInputException("gauges", "nothing in this piece is sawn at an angle", "a ring of segments or staves has some");
        return Archive(gauges.Select(shape =>
        {
            var solid = GaugeSolid.Of(shape);
            return (TemplateNames.Part(shape.Name) + ending, ending == ".stl" ? StlWriter.Write(solid.Positions(), solid.Triangles.AsSpan()) : ThreeMfWriter.Write(shape.Name, solid.Positions(), solid.Triangles));
        }));
    }

    /// <summary>The turned piece as a solid: <c>.glb</c>, <c>.stl</c> or <c>.3mf</c>.</summary>
    public static byte[] Solid(Sheet sheet, string ending)
    {
        TurnedPiece turned = sheet.Good.Turned(Chord / 2);
        var facets = Facets.Within(Chord / 2);
        Wood[] woods = [.. turned.Woods.Select(Wood.Named)];
        return ending switch
        {
            ".stl" => StlWriter.Write(TurnedMesh.Of(turned.Rings, facets, MeshCorners.PerFace)),
            // A printer needs each shell closed by its indices.
            ".3mf" => ThreeMfWriter.Write(TurnedMesh.Of(turned.Rings, facets), woods),
            ".glb" => GlbWriter.Write(TurnedMesh.Of(turned.Rings, facets, MeshCorners.PerFace), woods),
            _ => throw new BadInputException("solid", $"“{ending}” is none that can be written", ".glb, .stl or .3mf is needed"),
        };
    }

    /// <summary>All figures as a spreadsheet.</summary>
    public static async Task<byte[]> Figures(Sheet sheet)
    {
        using var stream = new MemoryStream();
        await PlanWorkbook.WriteAsync(sheet.Good, sheet.Style, stream);
        return stream.ToArray();
    }

    private static byte[] Archive(IEnumerable<(string Name, byte[] Bytes)> files)
    {
        using var stream = new MemoryStream();
        using (var archive = new ZipArchive(stream, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach ((string name, byte[] bytes) in files)
            {
                using Stream entry = archive.CreateEntry(name).Open();
                entry.Write(bytes);
            }
        }

        return stream.ToArray();
    }
}
