using Ringwright.Core;
using Ringwright.Core.Measures;
using Ringwright.Core.Planning;
using Ringwright.Paper.Sheets;

namespace Ringwright.Paper.JobSheets;

/// <summary>Which sheets of a packet are printed.</summary>
[Flags]
public enum PacketSheets
{
    /// <summary>None.</summary>
    None = 0,

    /// <summary>The whole piece: picture, numbers, rings and where they are found.</summary>
    Cover = 1,

    /// <summary>The cautions for all its work.</summary>
    Cautions = 2,

    /// <summary>Timber to buy and to mill.</summary>
    Timber = 4,

    /// <summary>The job sheets: one for every ring and, once, what holds for all; of a piece of one ring, all its sheets.</summary>
    Rings = 8,

    /// <summary>What is glued to what, in which order.</summary>
    Glue = 16,

    /// <summary>How the rings are stacked and turned against each other.</summary>
    Stack = 32,

    /// <summary>The work at the lathe.</summary>
    Lathe = 64,

    /// <summary>Blanks for what is measured.</summary>
    Record = 128,

    /// <summary>How long it takes and what it costs.</summary>
    Cost = 256,

    /// <summary>All sheets of every ring by itself, as a piece of one ring has them, instead of one for each.</summary>
    Detailed = 512,

    /// <summary>All of them, the rings in short.</summary>
    All = Cover | Cautions | Timber | Rings | Glue | Stack | Lathe | Record | Cost,
}

/// <summary>How a packet is printed.</summary>
/// <param name="Style">How lengths are printed.</param>
/// <param name="Paper">The paper, upright.</param>
/// <param name="Date">Date printed on every sheet.</param>
public sealed record PacketOptions(MeasureStyle Style, PaperSize Paper, DateOnly Date)
{
    /// <summary>Correction of true-scale outlines for one printer; none when absent.</summary>
    public PrintCorrection Correction { get; init; } = PrintCorrection.None;

    /// <summary>Printed on both sides: margins change sides, and every ring begins on a front page.</summary>
    public bool Duplex { get; init; }

    /// <summary>
    /// Which sheets; null for those that the piece needs: a single ring without a shape needs no cover and nothing about the lathe,
    /// and has its cautions and its record on its own sheets.
    /// </summary>
    public PacketSheets? Sheets { get; init; }

    /// <summary>Only the job sheets of the ring of this name; everything when null.</summary>
    public string? Ring { get; init; }

    /// <summary>The sheets of a single ring without a shape: it has its cautions and its record on its own sheets.</summary>
    internal const PacketSheets ForOneRing = PacketSheets.Timber | PacketSheets.Rings | PacketSheets.Glue | PacketSheets.Stack;

    /// <summary>When to glue what, of the same plan; a quick order when absent.</summary>
    public GlueSchedule? Schedule { get; init; }

    /// <summary>Reads names of sheets separated by commas, such as <c>cover,rings</c>.</summary>
    /// <exception cref="BadInputException">A name is not known.</exception>
    public static PacketSheets ReadSheets(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return text.Split(',', StringSplitOptions.TrimEntries).Aggregate(PacketSheets.None, (all, name) => all | One(name));
    }

    private static PacketSheets One(string name) => Enum.TryParse(name, ignoreCase: true, out PacketSheets one) && name.All(char.IsAsciiLetter) && one != PacketSheets.None
        ? one
        : throw new BadInputException("sheets", $"there are no sheets called “{name}”", $"some of these are needed, separated by commas: {string.Join(", ", Names)}");

    /// <summary>The names that can be read.</summary>
    public static IEnumerable<string> Names => Enum.GetNames<PacketSheets>().Where(name => name != nameof(PacketSheets.None)).Select(name => name.ToLowerInvariant());
}
