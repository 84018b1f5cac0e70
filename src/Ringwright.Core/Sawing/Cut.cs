using Ringwright.Core.Geometry;

namespace Ringwright.Core.Sawing;

/// <summary>One cut as it was really made: a slab of wood, a kerf thick, in the board frame.</summary>
/// <param name="Number">0 squares the end, 1 saws the angled offcut, cut n + 1 saws wedge n off.</param>
/// <param name="Edge">The board's edge at the fence.</param>
/// <param name="Down">The board's side on the table.</param>
/// <param name="Angle">The true angle of the cut against the edge, rad, with the fence's and the seating's error.</param>
/// <param name="Length">From the stop to the blade along the fence, at the table, mm, with its error.</param>
/// <param name="Kerf">Width of this kerf, normal to the blade, mm.</param>
/// <param name="Piece">The piece's side of the slab: the piece is what of the board lies in it.</param>
public sealed record Cut(int Number, BoardEdge Edge, BoardSide Down, double Angle, double Length, double Kerf, HalfSpace Piece)
{
    /// <summary>The board's side of the slab: the rest of the board is what lies in it.</summary>
    public HalfSpace Rest => Piece.Moved(Kerf).Complement;

    /// <summary>The side that was up.</summary>
    public BoardSide Up => Down.Opposite();
}
