using System.Globalization;
using System.IO.Compression;
using System.Text;
using System.Xml;
using Ringwright.Core;
using Ringwright.Core.Timber;
using Ringwright.Core.Turning;

namespace Ringwright.Paper.Solids;

/// <summary>
/// The turned solid as 3MF (3D Manufacturing Format Core Specification 1.x, 3MF Consortium): millimetres, one object for each
/// wood with its colour, every segment a closed shell, moved as a whole to where all coordinates are positive.
/// </summary>
public static class ThreeMfWriter
{
    private const string Core = "http://schemas.microsoft.com/3dmanufacturing/core/2015/02";
    private const string ContentTypes = "http://schemas.openxmlformats.org/package/2006/content-types";
    private const string Relationships = "http://schemas.openxmlformats.org/package/2006/relationships";
    private const string ModelType = "http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel";
    private const string ModelPath = "3D/3dmodel.model";
    private const int MaterialsId = 1;

    // The earliest date a zip can hold: the file depends on nothing but the mesh.
    private static readonly DateTimeOffset Undated = new(1980, 1, 1, 0, 0, 0, TimeSpan.Zero);

    private static readonly UTF8Encoding Utf8 = new(encoderShouldEmitUTF8Identifier: false);

    /// <summary>The bytes of the file, the same for the same mesh.</summary>
    /// <param name="mesh">The mesh; it must share its corners, or its shells would not be closed.</param>
    /// <param name="woods">The woods by their numbers.</param>
    /// <exception cref="BadInputException">A segment's wood is not among the woods, or faces have their own corners.</exception>
    public static byte[] Write(TurnedMesh mesh, IReadOnlyList<Wood> woods)
    {
        WoodList.Check(mesh, woods);
        if (!mesh.Normals.IsEmpty) throw new BadInputException("3MF", "each face of the mesh has its own corners", "mesh it with shared corners");
        return Package(xml => WriteModel(xml, mesh, woods));
    }

    /// <summary>The bytes of a file of one solid without a wood, such as a gauge, where it lies.</summary>
    /// <param name="name">What it is called.</param>
    /// <param name="positions">x, y, z of every corner, mm; corners are shared.</param>
    /// <param name="indices">Three corners for each triangle, counter-clockwise seen from outside.</param>
    public static byte[] Write(string name, float[] positions, IReadOnlyList<int> indices)
    {
        ArgumentNullException.ThrowIfNull(indices);
        return Package(xml =>
        {
            StartModel(xml);
            xml.WriteStartElement("object");
            Attributes(xml, ("id", "1"), ("name", Lettering.Typesetter.Clean(name)), ("type", "model"));
            xml.WriteStartElement("mesh");
            WriteVertices(xml, positions);
            WriteTriangles(xml, [.. indices], 0);
            xml.WriteEndElement();
            xml.WriteEndElement();
            xml.WriteEndElement();
            xml.WriteStartElement("build");
            Element(xml, "item", ("objectid", "1"), ("transform", Transform(positions)));
            xml.WriteEndElement();
            xml.WriteEndElement();
        });
    }

    private static byte[] Package(Action<XmlWriter> model)
    {
        using MemoryStream stream = new();
        using (ZipArchive zip = new(stream, ZipArchiveMode.Create, leaveOpen: true))
        {
            Add(zip, "[Content_Types].xml", WriteContentTypes);
            Add(zip, "_rels/.rels", WriteRelationships);
            Add(zip, ModelPath, model);
        }

        return stream.ToArray();
    }

    private static void StartModel(XmlWriter xml)
    {
        xml.WriteStartElement("model", Core);
        xml.WriteAttributeString("unit", "millimeter");
        xml.WriteStartElement("resources");
    }

    private static void Add(ZipArchive zip, string path, Action<XmlWriter> write)
    {
        ZipArchiveEntry entry = zip.CreateEntry(path, CompressionLevel.Optimal);
        entry.LastWriteTime = Undated;
        using Stream stream = entry.Open();
        using XmlWriter xml = XmlWriter.Create(stream, new() { Encoding = Utf8 });
        write(xml);
    }

    private static void WriteContentTypes(XmlWriter xml)
    {
        xml.WriteStartElement("Types", ContentTypes);
        Element(xml, "Default", ("Extension", "rels"), ("ContentType", "application/vnd.openxmlformats-package.relationships+xml"));
        Element(xml, "Default", ("Extension", "model"), ("ContentType", "application/vnd.ms-package.3dmanufacturing-3dmodel+xml"));
        xml.WriteEndElement();
    }

    private static void WriteRelationships(XmlWriter xml)
    {
        xml.WriteStartElement("Relationships", Relationships);
        Element(xml, "Relationship", ("Target", $"/{ModelPath}"), ("Id", "model"), ("Type", ModelType));
        xml.WriteEndElement();
    }

    private static void WriteModel(XmlWriter xml, TurnedMesh mesh, IReadOnlyList<Wood> woods)
    {
        WoodRange[] ranges = [.. mesh.Woods.Where(range => range.IndexCount > 0)];
        StartModel(xml);
        if (ranges.Length > 0) WriteMaterials(xml, ranges, woods);
        for (int i = 0; i < ranges.Length; i++) WriteObject(xml, mesh, ranges[i], i, woods[ranges[i].Wood].Name);
        xml.WriteEndElement();
        xml.WriteStartElement("build");
        string transform = Transform(mesh.Positions);
        for (int i = 0; i < ranges.Length; i++) Element(xml, "item", ("objectid", ObjectId(i)), ("transform", transform));
        xml.WriteEndElement();
        xml.WriteEndElement();
    }

    private static string ObjectId(int range) => (MaterialsId + 1 + range).ToString(CultureInfo.InvariantCulture);

    private static void WriteMaterials(XmlWriter xml, WoodRange[] ranges, IReadOnlyList<Wood> woods)
    {
        xml.WriteStartElement("basematerials");
        xml.WriteAttributeString("id", $"{MaterialsId}");
        foreach (WoodRange range in ranges) Element(xml, "base", ("name", woods[range.Wood].Name), ("displaycolor", woods[range.Wood].Hex.ToUpperInvariant()));
        xml.WriteEndElement();
    }

    private static void WriteObject(XmlWriter xml, TurnedMesh mesh, WoodRange range, int index, string name)
    {
        xml.WriteStartElement("object");
        Attributes(xml, ("id", ObjectId(index)), ("name", name), ("type", "model"), ("pid", $"{MaterialsId}"), ("pindex", $"{index}"));
        xml.WriteStartElement("mesh");
        int first = mesh.Parts[range.FirstPart].FirstVertex;
        TurnedPart last = mesh.Parts[range.FirstPart + range.PartCount - 1];
        WriteVertices(xml, mesh.Positions[(3 * first)..(3 * (last.FirstVertex + last.VertexCount))]);
        WriteTriangles(xml, mesh.Indices.Slice(range.FirstIndex, range.IndexCount), first);
        xml.WriteEndElement();
        xml.WriteEndElement();
    }

    private static void WriteVertices(XmlWriter xml, ReadOnlySpan<float> positions)
    {
        xml.WriteStartElement("vertices");
        for (int i = 0; i < positions.Length; i += 3)
            Element(xml, "vertex", ("x", Number(positions[i])), ("y", Number(positions[i + 1])), ("z", Number(positions[i + 2])));
        xml.WriteEndElement();
    }

    private static void WriteTriangles(XmlWriter xml, ReadOnlySpan<int> indices, int first)
    {
        xml.WriteStartElement("triangles");
        for (int i = 0; i < indices.Length; i += 3)
            Element(xml, "triangle", ("v1", $"{indices[i] - first}"), ("v2", $"{indices[i + 1] - first}"), ("v3", $"{indices[i + 2] - first}"));
        xml.WriteEndElement();
    }

    // Printers place what they get in the positive octant.
    private static string Transform(ReadOnlySpan<float> positions)
    {
        Span<float> least = [float.PositiveInfinity, float.PositiveInfinity, float.PositiveInfinity];
        for (int i = 0; i < positions.Length; i++) least[i % 3] = Math.Min(least[i % 3], positions[i]);
        return $"1 0 0 0 1 0 0 0 1 {Number(0 - least[0])} {Number(0 - least[1])} {Number(0 - least[2])}";
    }

    private static string Number(float value) => value.ToString(CultureInfo.InvariantCulture);

    private static void Element(XmlWriter xml, string name, params ReadOnlySpan<(string Name, string Value)> attributes)
    {
        xml.WriteStartElement(name);
        Attributes(xml, attributes);
        xml.WriteEndElement();
    }

    private static void Attributes(XmlWriter xml, params ReadOnlySpan<(string Name, string Value)> attributes)
    {
        foreach ((string name, string value) in attributes) xml.WriteAttributeString(name, value);
    }
}
