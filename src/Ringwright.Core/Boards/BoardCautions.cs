using System.Collections.Immutable;
using Ringwright.Core.Planning;

namespace Ringwright.Core.Boards;

/// <summary>The usual cautions for ripping, planing and crosscutting boards. Common practice; the machine's manual and local rules come first.</summary>
public static class BoardCautions
{
    /// <summary>The cautions.</summary>
    public static ImmutableArray<string> All { get; } =
    [
        "Ripping: a straight edge on the fence and a flat face on the table, riving knife and guard in place, push sticks for what is narrower than your hand. Stand beside the cut, not behind it.",
        "A board that closes on the blade or lifts is let go of nowhere: stop the saw, wedge the cut open, go on.",
        "Cut defects out first: a loose knot or a split flies out of saw and planer.",
        "No piece shorter than its manual asks for goes into a planer or thicknesser; plane the long strip, then crosscut it.",
        "Leave the rest that the plan leaves: it keeps the hand away from the blade.",
        "Wear eye, ear and breathing protection; some woods irritate skin and lungs.",
        Cautions.Manual,
    ];
}
