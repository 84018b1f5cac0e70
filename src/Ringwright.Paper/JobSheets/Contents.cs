using System.Globalization;
using Ringwright.Paper.Blocks;

namespace Ringwright.Paper.JobSheets;

/// <summary>Where the parts of a packet are found.</summary>
/// <param name="Parts">The parts in their order, each with the number of its first page, 0 where it is not known yet.</param>
internal sealed record Contents(IReadOnlyList<(PacketPart Part, int Page)> Parts)
{
    /// <summary>No contents: nothing is printed with it.</summary>
    public static Contents None { get; } = new([]);

    /// <summary>The first page of a ring's sheets, or a dash.</summary>
    public string PageOf(int ring)
    {
        int page = Parts.FirstOrDefault(p => p.Part.Ring == ring).Page;
        return page == 0 ? "–" : page.ToString(CultureInfo.InvariantCulture);
    }

    /// <summary>The parts that are not about one ring, in a line or two; null when there are none.</summary>
    public Section? Others()
    {
        string[] others = [.. Parts.Where(p => p.Part.Ring is null).Select(p => string.Create(CultureInfo.InvariantCulture, $"{p.Part.Name}, page {p.Page}"))];
        return others.Length == 0 ? null : new("Also in this packet", new Paragraph(string.Join("; ", others) + "."));
    }
}
