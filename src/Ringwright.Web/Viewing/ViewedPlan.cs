using System.IO.Compression;
using Ringwright.Core.Planning;

namespace Ringwright.Web.Viewing;

/// <summary>One version of a plan, and its meshes, made when first asked for.</summary>
internal sealed class ViewedPlan
{
    // Segments; below this a fine mesh is there before the eye has moved.
    private const int Big = 1000;

    private readonly Lazy<byte[]> _coarse, _fine;

    public ViewedPlan(Plan plan, string version)
    {
        (Plan, Version) = (plan, version);
        _coarse = new(() => Pack(ViewerDetail.Coarse));
        _fine = new(() => Pack(ViewerDetail.Fine));
    }

    /// <summary>The plan.</summary>
    public Plan Plan { get; }

    /// <summary>What it is asked for by.</summary>
    public string Version { get; }

    /// <summary>Whether a coarse mesh should come first.</summary>
    public bool IsBig => Plan.Rings.Sum(r => r.Layout.Length) > Big;

    /// <summary>The bytes of <see cref="ViewerPacket"/>, compressed (Brotli).</summary>
    /// <exception cref="Core.BadInputException">The rings do not fill the shape.</exception>
    public byte[] Packet(ViewerDetail detail) => (detail == ViewerDetail.Fine ? _fine : _coarse).Value;

    private byte[] Pack(ViewerDetail detail)
    {
        using var packed = new MemoryStream();
        using (var brotli = new BrotliStream(packed, CompressionLevel.Fastest)) brotli.Write(ViewerPacket.Of(Plan, detail));
        return packed.ToArray();
    }
}
