using Ringwright.Core.Geometry;
using Ringwright.Core.Turning;

namespace Ringwright.Core.Planning;

/// <summary>One piece of wood where it stands in its glued ring, whose bottom face is z = 0.</summary>
/// <param name="From">The side it starts at, counter-clockwise.</param>
/// <param name="To">The side it ends at.</param>
/// <param name="Wood">Its wood.</param>
/// <param name="Board">Which of the ring's boards of this wood it was sawn from, 0-based.</param>
/// <param name="Cut">Which wedge of that board it was, 0-based.</param>
/// <param name="Frame">
/// Its board laid into the ring: from board coordinates (x along the board and its grain, y across its width, z through its
/// thickness, mm) to the ring's.
/// </param>
public sealed record LaidSegment(JointPlane From, JointPlane To, string Wood, int Board, int Cut, Frame3D Frame);
