using System.Collections.Immutable;
using Ringwright.Core.Pieces;

namespace Ringwright.Core.Planning;

/// <summary>
/// A board laminated of strips that stand face to face, their glue lines at an angle from upright. Board coordinates: x along
/// it, z up from its lower face; a glue line is x · cos(angle) − z · sin(angle) = the strips' thickness so far. Lengths in mm.
/// </summary>
/// <param name="Strips">The strips in order; they repeat.</param>
/// <param name="Angle">Angle of the glue lines from upright, radians.</param>
/// <param name="Thickness">The board's, before the ring is flattened.</param>
/// <param name="Matched">Whether every segment starts at the same place of the pattern.</param>
/// <param name="Pitch">From one used segment's middle to the next one's, along the board.</param>
/// <param name="Kinds">What to cut of each kind of strip.</param>
public sealed record Lamination(ImmutableArray<Strip> Strips, double Angle, double Thickness, bool Matched, double Pitch, ImmutableArray<StripNeed> Kinds)
{
    /// <summary>What the laminated board is called among the woods to saw.</summary>
    public const string BoardName = "laminated board";

    /// <summary>Thickness of all strips once through.</summary>
    public double Repeat => Strips.Sum(s => s.Thickness.Millimetres);

    /// <summary>Length along the board after which the pattern comes again.</summary>
    public double Period => Repeat / Math.Cos(Angle);

    /// <summary>The strip whose number, counted on without end, is <paramref name="index"/>.</summary>
    public Strip StripAt(int index) => Strips[Wrapped(index)];

    /// <summary>Where strip <paramref name="index"/> starts, square to the glue lines, from the start of strip 0.</summary>
    public double StartOf(int index) => (Math.Floor((double)index / Strips.Length) * Repeat) + Strips.Take(Wrapped(index)).Sum(s => s.Thickness.Millimetres);

    /// <summary>The strip that <paramref name="across"/> lies in, square to the glue lines.</summary>
    public int IndexAt(double across)
    {
        int index = (int)Math.Floor(across / Repeat) * Strips.Length;
        while (StartOf(index + 1) <= across) index++;
        return index;
    }

    private int Wrapped(int index) => ((index % Strips.Length) + Strips.Length) % Strips.Length;
}

/// <summary>What to cut of one kind of strip. Lengths in mm.</summary>
/// <param name="Wood">Its wood.</param>
/// <param name="Thickness">Its thickness between the glue lines.</param>
/// <param name="Height">Its length along the glue line, and along its grain.</param>
/// <param name="Stagger">By how much it stands higher than the one before it.</param>
/// <param name="Count">How many.</param>
/// <param name="Sticks">Boards of the shop's length they are cut from.</param>
/// <param name="Length">Length of those boards that is used.</param>
public sealed record StripNeed(string Wood, double Thickness, double Height, double Stagger, int Count, int Sticks, double Length);
