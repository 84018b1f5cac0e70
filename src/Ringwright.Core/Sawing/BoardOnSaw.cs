using Ringwright.Core.Geometry;

namespace Ringwright.Core.Sawing;

/// <summary>The board while it is being sawn: what is left of it, and where its four long edges start.</summary>
internal sealed class BoardOnSaw(BoardBlank blank)
{
    private static readonly Vector3D IntoBoard = new(1, 0, 0);
    private double _farthestStart;

    /// <summary>What is left, in the board frame.</summary>
    public ConvexSolid Rest { get; private set; } = blank.Solid();

    /// <summary>Length left on the shortest of the four long edges, mm.</summary>
    public double ShortestEdge => blank.Length - _farthestStart;

    /// <summary>
    /// Sets a cut up: <paramref name="edge"/> at the fence, the board's foremost point against the stop at
    /// <paramref name="length"/> mm from the blade, turned by <paramref name="angle"/> and leaning by <paramref name="lean"/> rad.
    /// </summary>
    public Cut SetUp(int number, BoardEdge edge, BoardSide down, double angle, double lean, double length, double kerf)
    {
        var pose = ToolPose.On(blank.Plane(down), blank.Plane(edge), IntoBoard);
        double foremost = Rest.Extent(pose.Along).Least;
        return new(number, edge, down, angle, length, kerf, pose.Tool(foremost + length, angle, lean));
    }

    /// <summary>Length left on the shortest long edge once <paramref name="cut"/> is made, mm.</summary>
    public double ShortestEdgeAfter(Cut cut) => blank.Length - FarthestStart(cut.Rest);

    /// <summary>Whether <paramref name="cut"/> saws anything off.</summary>
    public bool IsMissedBy(Cut cut) => Rest.Extent(cut.Piece.Normal).Least >= cut.Piece.Offset - ConvexSolid.OnPlane;

    /// <summary>Makes the cut: the piece falls, the kerf turns to dust, the rest stays.</summary>
    public (ConvexSolid Piece, ConvexSolid Kerf) Make(Cut cut)
    {
        int tag = FaceTag.Cut(cut.Number);
        HalfSpace rest = cut.Rest;
        ConvexSolid piece = Rest.Clip(cut.Piece, tag);
        ConvexSolid beyond = Rest.Clip(cut.Piece.Complement, tag);
        _farthestStart = FarthestStart(rest);
        Rest = beyond.Clip(rest, tag);
        return (piece, beyond.Clip(rest.Complement, tag));
    }

    private double FarthestStart(HalfSpace rest) => Math.Max(_farthestStart, blank.FarthestStart(rest));
}
