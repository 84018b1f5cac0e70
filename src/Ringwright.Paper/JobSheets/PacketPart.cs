using Ringwright.Paper.Sheets;

namespace Ringwright.Paper.JobSheets;

/// <summary>Sheets of a packet that belong together.</summary>
/// <param name="Kind">Which of the sheets one can choose from.</param>
/// <param name="Name">What the contents call it.</param>
/// <param name="Add">Adds them.</param>
internal sealed record PacketPart(PacketSheets Kind, string Name, Action<Packet> Add)
{
    /// <summary>Number of the ring it is about, from 0; null for the others.</summary>
    public int? Ring { get; init; }
}
