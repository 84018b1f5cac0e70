using Ringwright.Core.Geometry;

namespace Ringwright.Core.Sawing;

/// <summary>
/// A wedge as it really came out. Wedge frame: z up from the face it lies on (z = 0), x radial along the bisector of its
/// joint faces with the rim towards +x, y tangential; the origin is midway between the rim and the board's far edge, on
/// the bisector taken at half the board's thickness. In a ring, counter-clockwise seen from above, the +y face of one
/// wedge meets the -y face of the next.
/// </summary>
public sealed class SawnWedge
{
    private readonly WedgeShape _shape;
    private readonly double _level;
    private readonly HalfSpace _rim;
    private readonly HalfSpace _far;

    internal SawnWedge(PieceMarks marks, ConvexSolid asSawn, WedgeShape shape, double level)
    {
        Marks = marks;
        AsSawn = asSawn;
        _shape = shape;
        _level = level;
        InBoard = shape.Frame(level);
        Solid = shape.Solid.ToLocal(InBoard);
        MinusFace = InBoard.ToLocal(shape.Minus);
        PlusFace = InBoard.ToLocal(shape.Plus);
        _rim = InBoard.ToLocal(shape.Rim);
        _far = InBoard.ToLocal(shape.Far);
    }

    /// <summary>Number, side up, rim edge and cuts.</summary>
    public PieceMarks Marks { get; }

    /// <summary>The wedge frame laid into the board frame: where in the board this wood was.</summary>
    public Frame3D InBoard { get; }

    /// <summary>What fell off the saw, in the board frame, before truing and sanding.</summary>
    public ConvexSolid AsSawn { get; }

    /// <summary>The finished wedge in the wedge frame. Empty when sanding left nothing.</summary>
    public ConvexSolid Solid { get; }

    /// <summary>Plane of the -y joint face, outward, in the wedge frame.</summary>
    public HalfSpace MinusFace { get; }

    /// <summary>Plane of the +y joint face, outward, in the wedge frame.</summary>
    public HalfSpace PlusFace { get; }

    /// <summary>
    /// The wedge angle, rad, between the traces of the joint faces in a level plane. Flat faces have the same trace at
    /// every height, so this holds exactly at all of them, with any lean; what lean can change with height is the size.
    /// </summary>
    public double Angle => AwayFromRadial(MinusFace, -1) + AwayFromRadial(PlusFace, 1);

    /// <summary>
    /// The angle between the joint faces themselves, rad, square to the line where they would meet: what a bevel gauge finds, and
    /// what all staves of a ring share the full turn by. For upright faces it is <see cref="Angle"/>.
    /// </summary>
    public double FaceAngle => Math.Atan2(MinusFace.Normal.Cross(PlusFace.Normal).Length, -MinusFace.Normal.Dot(PlusFace.Normal));

    /// <summary>
    /// By how much the wedge narrows per mm of height between its joint faces, without unit: sum of the slopes of both.
    /// Zero for a sheared wedge, whose section is the same at every height but for its place.
    /// </summary>
    public double Taper => Slope(MinusFace) + Slope(PlusFace);

    /// <summary>
    /// Whether both joint faces are free of rough-sawn wood; false when the sander's plane missed part of a face.
    /// Without a sander or sanding always false.
    /// </summary>
    public bool IsCleanedUp => !Solid.HasFace(FaceTag.Cut(Marks.MinusCut)) && !Solid.HasFace(FaceTag.Cut(Marks.PlusCut));

    /// <summary>Whether wood is left at the board's far edge: false for a wedge whose cuts cross inside the board.</summary>
    public bool ReachesFarEdge => Solid.HasFace(FarTag);

    private int RimTag => FaceTag.Of(Marks.RimEdge);

    private int FarTag => FaceTag.Of(Marks.RimEdge.Opposite());

    /// <summary>The cross-section at height <paramref name="z"/> mm, in the wedge frame; empty outside the wedge.</summary>
    public ConvexPolygon Section(double z) => Solid.Section(z);

    /// <summary>Length of the rim edge at height <paramref name="z"/>, mm: what a caliper finds. Zero when none is left.</summary>
    public double RimLength(double z) => Solid.Chord(_rim, z, RimTag);

    /// <summary>Length of the tip's flat on the board's far edge at height <paramref name="z"/>, mm. Zero when the wedge ends before it.</summary>
    public double TipLength(double z) => Solid.Chord(_far, z, FarTag);

    /// <summary>
    /// Length the rim edge lacks at height <paramref name="z"/>, mm, because an earlier cut took its corner (or its edges
    /// are rounded): what the joint faces would give without it, less <see cref="RimLength"/>.
    /// </summary>
    public double RimLoss(double z)
    {
        HalfPlane rim = _rim.Trace(z);
        return (Crossing(rim, PlusFace.Trace(z)) - Crossing(rim, MinusFace.Trace(z))).Length - RimLength(z);
    }

    /// <summary>
    /// The same wedge turned over about its radial axis: the other side up, its joint faces swapped. This mirrors a taper
    /// in height and keeps a shear.
    /// </summary>
    public SawnWedge TurnedOver()
    {
        var marks = new PieceMarks(Marks.Number, Marks.Up.Opposite(), Marks.RimEdge, Marks.PlusCut, Marks.MinusCut);
        var shape = _shape with { Minus = _shape.Plus, Plus = _shape.Minus, Down = _shape.Upper, Upper = _shape.Down };
        return new(marks, AsSawn, shape, _level);
    }

    private static double AwayFromRadial(HalfSpace face, double side) => Math.Atan2(-face.Normal.X, side * face.Normal.Y);

    private static double Slope(HalfSpace face) =>
        face.Normal.Z / Math.Sqrt((face.Normal.X * face.Normal.X) + (face.Normal.Y * face.Normal.Y));

    private static Vector2D Crossing(HalfPlane a, HalfPlane b)
    {
        double share = 1 / a.Normal.Cross(b.Normal);
        return share * new Vector2D(
            (a.Offset * b.Normal.Y) - (b.Offset * a.Normal.Y),
            (b.Offset * a.Normal.X) - (a.Offset * b.Normal.X));
    }
}
