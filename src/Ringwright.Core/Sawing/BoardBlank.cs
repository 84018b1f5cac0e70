using System.Globalization;
using Ringwright.Core.Geometry;

namespace Ringwright.Core.Sawing;

/// <summary>
/// A milled board before the first cut. Board frame: x along the board from the end that will be sawn (x = 0) into the
/// body; y across the width from edge 1 (y = 0) to edge 2; z through the thickness from the bottom (z = 0) to the top.
/// As wedges fall, the sawn end moves towards +x. The frame stays with the wood, so it is the frame of the grain too.
/// </summary>
/// <param name="Length">Along x, mm.</param>
/// <param name="Width">Along y at the sawn end, mm.</param>
/// <param name="Thickness">Along z at the sawn end, mm.</param>
public sealed record BoardBlank(double Length, double Width, double Thickness)
{
    private const double Degree = Math.PI / 180;

    /// <summary>Width at the far end minus width at the sawn end, mm: edge 2 is not parallel to edge 1.</summary>
    public double WidthChange { get; init; }

    /// <summary>Thickness at the far end minus thickness at the sawn end, mm: the top is not parallel to the bottom.</summary>
    public double ThicknessChange { get; init; }

    /// <summary>
    /// Slant of both edges, parallel, from square to the bottom, rad: above 0 edge 1 reaches out at the top by thickness · tan(slant),
    /// and edge 2 reaches in. So are the ends of a panel for leaning staves sawn, whose edges they are here.
    /// </summary>
    public double EdgeSlant { get; init; }

    /// <summary>Volume, mm³ (product of two linear functions, integrated along x).</summary>
    public double Volume => Length * (
        (Width * Thickness) + (((Width * ThicknessChange) + (Thickness * WidthChange)) / 2) + (WidthChange * ThicknessChange / 3));

    /// <summary>The outward plane of edge 1 (y = 0), edge 2, in the board frame.</summary>
    public HalfSpace Plane(BoardEdge edge) => edge == BoardEdge.Edge1
        ? HalfSpace.Through(default, new(0, -1, -Math.Tan(EdgeSlant)))
        : HalfSpace.Through(new(0, Width, 0), new(-WidthChange / Length, 1, Math.Tan(EdgeSlant)));

    /// <summary>The outward plane of the bottom (z = 0) or the top, in the board frame.</summary>
    public HalfSpace Plane(BoardSide side) => side == BoardSide.Bottom
        ? new(new(0, 0, -1), 0)
        : HalfSpace.Through(new(0, 0, Thickness), new(-ThicknessChange / Length, 0, 1));

    /// <summary>The whole board as a solid in the board frame, its faces tagged by <see cref="FaceTag"/>.</summary>
    public ConvexSolid Solid()
    {
        double farWidth = Width + WidthChange;
        double farThickness = Thickness + ThicknessChange;
        double slope = Math.Tan(EdgeSlant), shift = Thickness * slope, farShift = farThickness * slope;
        return new(
            [
                new(0, 0, 0), new(0, Width, 0), new(0, Width - shift, Thickness), new(0, -shift, Thickness),
                new(Length, 0, 0), new(Length, farWidth, 0), new(Length, farWidth - farShift, farThickness), new(Length, -farShift, farThickness),
            ],
            [0, 3, 2, 1, 4, 5, 6, 7, 0, 4, 7, 3, 1, 2, 6, 5, 0, 1, 5, 4, 3, 7, 6, 2],
            [0, 4, 8, 12, 16, 20, 24],
            [
                new(new(-1, 0, 0), 0), new(new(1, 0, 0), Length), Plane(BoardEdge.Edge1), Plane(BoardEdge.Edge2),
                Plane(BoardSide.Bottom), Plane(BoardSide.Top),
            ],
            [FaceTag.SawnEnd, FaceTag.FarEnd, FaceTag.Edge1, FaceTag.Edge2, FaceTag.Bottom, FaceTag.Top]);
    }

    /// <summary>Where, along x, the last of the four long edges starts in <paramref name="rest"/>, mm.</summary>
    internal double FarthestStart(HalfSpace rest) => Math.Max(
        Math.Max(Start(rest, BoardEdge.Edge1, BoardSide.Bottom), Start(rest, BoardEdge.Edge1, BoardSide.Top)),
        Math.Max(Start(rest, BoardEdge.Edge2, BoardSide.Bottom), Start(rest, BoardEdge.Edge2, BoardSide.Top)));

    private double Start(HalfSpace rest, BoardEdge edge, BoardSide side)
    {
        (Vector3D start, Vector3D run) = LongEdge(edge, side);
        return -rest.Distance(start) / rest.Normal.Dot(run);
    }

    /// <summary>Where the long edge between <paramref name="edge"/> and <paramref name="side"/> starts, and its run for 1 mm of x.</summary>
    private (Vector3D Start, Vector3D Run) LongEdge(BoardEdge edge, BoardSide side)
    {
        bool far = edge == BoardEdge.Edge2;
        bool top = side == BoardSide.Top;
        double slope = top ? Math.Tan(EdgeSlant) : 0;
        return (
            new(0, (far ? Width : 0) - (Thickness * slope), top ? Thickness : 0),
            new(1, ((far ? WidthChange : 0) - (ThicknessChange * slope)) / Length, top ? ThicknessChange / Length : 0));
    }

    internal void Check()
    {
        Require.Between("board length", Length, 1, 100_000, "mm");
        Require.Between("board width", Width, 0.5, 10_000, "mm");
        Require.Between("board thickness", Thickness, 0.2, 10_000, "mm");
        Require.Angle("slant of the board's edges", EdgeSlant, -80 * Degree, 80 * Degree);
        CheckFarEnd("board width", Width, WidthChange, 0.5);
        CheckFarEnd("board thickness", Thickness, ThicknessChange, 0.2);
    }

    private void CheckFarEnd(string where, double size, double change, double least)
    {
        string place = $"{where} at the far end";
        Require.Between(place, size + change, least, 10_000, "mm");
        if (Math.Abs(change) <= Length / 10) return;
        string told = change.ToString("0.###", CultureInfo.InvariantCulture);
        throw new BadInputException(place, $"a change of {told} mm over the length is more than 1 in 10", "mill the board straighter or give the change in mm");
    }
}
