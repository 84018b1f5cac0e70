using System.Globalization;
using System.Runtime.InteropServices;
using Ringwright.Core;
using Ringwright.Core.Timber;
using Ringwright.Core.Turning;
using SharpGLTF.Memory;
using SharpGLTF.Schema2;

namespace Ringwright.Paper.Solids;

/// <summary>
/// The turned solid as glTF 2.0 in one binary file: metres, y up, one primitive and one material for each wood. The attribute
/// <c>_BOARD</c> holds for every vertex where in its board it was, metres: x along the board, y across, z through it.
/// </summary>
public static class GlbWriter
{
    private const float MetresPerMm = 0.001f;

    // Oiled wood: no metal, a dull shine. For looks only.
    private const float Roughness = 0.6f;

    /// <summary>The bytes of the file, the same for the same mesh.</summary>
    /// <param name="mesh">The mesh; with corners for each face it is shaded smoothly.</param>
    /// <param name="woods">The woods by their numbers.</param>
    /// <exception cref="BadInputException">A segment's wood is not among the woods.</exception>
    public static byte[] Write(TurnedMesh mesh, IReadOnlyList<Wood> woods)
    {
        WoodList.Check(mesh, woods);
        var model = ModelRoot.CreateModel();
        model.Asset.Generator = "Ringwright";
        if (mesh.TriangleCount > 0)
        {
            Mesh solid = model.CreateMesh("turned solid");
            float[] board = mesh.BoardCoordinates();
            foreach (WoodRange range in mesh.Woods) AddPrimitive(model, solid, mesh, board, range, woods[range.Wood]);
            model.UseScene(0).CreateNode("turned solid").Mesh = solid;
        }

        ArraySegment<byte> glb = model.WriteGLB(new() { MergeBuffers = true });
        return glb.ToArray();
    }

    private static void AddPrimitive(ModelRoot model, Mesh solid, TurnedMesh mesh, float[] board, WoodRange range, Wood wood)
    {
        if (range.IndexCount == 0) return;
        int first = mesh.Parts[range.FirstPart].FirstVertex;
        TurnedPart last = mesh.Parts[range.FirstPart + range.PartCount - 1];
        int count = last.FirstVertex + last.VertexCount - first;
        MeshPrimitive primitive = solid.CreatePrimitive();
        primitive.DrawPrimitiveType = PrimitiveType.TRIANGLES;
        primitive.Material = Material(model, wood);
        primitive.SetVertexAccessor("POSITION", Vectors(model, YUp(mesh.Positions.Slice(3 * first, 3 * count), MetresPerMm)));
        if (!mesh.Normals.IsEmpty) primitive.SetVertexAccessor("NORMAL", Vectors(model, YUp(mesh.Normals.Slice(3 * first, 3 * count), 1)));
        primitive.SetVertexAccessor("_BOARD", Vectors(model, Scaled(board.AsSpan(3 * first, 3 * count))));
        primitive.SetIndexAccessor(Indices(model, mesh.Indices.Slice(range.FirstIndex, range.IndexCount), first));
    }

    private static Material Material(ModelRoot model, Wood wood)
    {
        Material material = model.CreateMaterial(wood.Name);
        material.InitializePBRMetallicRoughness();
        MaterialChannel colour = material.FindChannel("BaseColor")!.Value;
        colour.Color = new(Linear(wood.Hex, 1), Linear(wood.Hex, 3), Linear(wood.Hex, 5), 1);
        MaterialChannel shine = material.FindChannel("MetallicRoughness")!.Value;
        shine.SetFactor("MetallicFactor", 0);
        shine.SetFactor("RoughnessFactor", Roughness);
        return material;
    }

    // IEC 61966-2-1: sRGB to linear light.
    private static float Linear(string hex, int at)
    {
        double value = int.Parse(hex.AsSpan(at, 2), NumberStyles.HexNumber, CultureInfo.InvariantCulture) / 255.0;
        return (float)(value <= 0.04045 ? value / 12.92 : Math.Pow((value + 0.055) / 1.055, 2.4));
    }

    private static float[] YUp(ReadOnlySpan<float> vectors, float scale)
    {
        float[] turned = new float[vectors.Length];
        for (int i = 0; i < turned.Length; i += 3)
            (turned[i], turned[i + 1], turned[i + 2]) = (scale * vectors[i], scale * vectors[i + 2], -scale * vectors[i + 1]);
        return turned;
    }

    private static float[] Scaled(ReadOnlySpan<float> vectors)
    {
        float[] scaled = new float[vectors.Length];
        for (int i = 0; i < scaled.Length; i++) scaled[i] = MetresPerMm * vectors[i];
        return scaled;
    }

    private static Accessor Vectors(ModelRoot model, float[] values)
    {
        byte[] bytes = MemoryMarshal.AsBytes(values.AsSpan()).ToArray();
        Accessor accessor = model.CreateAccessor();
        accessor.SetVertexData(model.UseBufferView(bytes, 0, null, 0, BufferMode.ARRAY_BUFFER), 0, values.Length / 3, AttributeFormat.Float3);
        return accessor;
    }

    private static Accessor Indices(ModelRoot model, ReadOnlySpan<int> indices, int firstVertex)
    {
        int[] own = new int[indices.Length];
        for (int i = 0; i < own.Length; i++) own[i] = indices[i] - firstVertex;
        byte[] bytes = MemoryMarshal.AsBytes(own.AsSpan()).ToArray();
        Accessor accessor = model.CreateAccessor();
        accessor.SetIndexData(model.UseBufferView(bytes, 0, null, 0, BufferMode.ELEMENT_ARRAY_BUFFER), 0, own.Length, IndexEncodingType.UNSIGNED_INT);
        return accessor;
    }
}
