using CsCheck;
using Ringwright.Core.Geometry;
using Ringwright.Core.Sawing;

namespace Ringwright.Core.Tests.Geometry;

public class ConvexSolidTests
{
    private static readonly Gen<Vector3D> AnyPoint = Gen.Select(
        Gen.Double[-0.2, 1.2], Gen.Double[-0.2, 1.2], Gen.Double[-0.2, 1.2], (x, y, z) => new Vector3D(x, y, z));

    // Points and directions on a lattice hit corners, edges and whole faces of the cube.
    private static readonly Gen<Vector3D> LatticePoint = Gen.Select(
        Gen.Int[0, 2], Gen.Int[0, 2], Gen.Int[0, 2], (x, y, z) => new Vector3D(x / 2.0, y / 2.0, z / 2.0));

    private static readonly Gen<Vector3D> LatticeDirection = Gen.Select(
        Gen.Int[-2, 2], Gen.Int[-2, 2], Gen.Int[-2, 2], (x, y, z) => new Vector3D(x, y, z)).Where(d => d.Length > 0);

    private static readonly Gen<HalfSpace> AnyHalf = Gen.Select(AnyPoint, AnyPoint, (p, q) => (p, q))
        .Where(pair => (pair.q - pair.p).Length > 0.01).Select(pair => HalfSpace.Through(pair.p, pair.q - pair.p));

    private static readonly Gen<HalfSpace> Half = Gen.OneOf(
        AnyHalf, Gen.Select(LatticePoint, LatticeDirection, HalfSpace.Through));

    private static ConvexSolid UnitCube => Box(1, 1, 1);

    [Fact]
    public void A_box_has_its_volume_and_its_section()
    {
        ConvexSolid box = Box(7, 5, 3);
        SolidChecks.AssertSound(box);
        Assert.Equal(105, box.Volume, 12);
        Assert.Equal(35, box.Section(1.2).Area, 12);
        Assert.Equal(35, box.Section(0).Area, 12);
        Assert.Equal(35, box.Section(3).Area, 12);
        Assert.True(box.Section(3.1).IsEmpty);
        Assert.True(box.Section(-0.1).IsEmpty);
    }

    // Volume of {a·p <= d} in the unit cube, weights positive: sum over subsets S of (-1)^|S| (d - sum a_S)+^3 / (3! a1 a2 a3),
    // the Irwin-Hall distribution with weights (from memory; exact for d outside the cube too).
    [Fact]
    public void Clipping_a_cube_agrees_with_the_closed_form() => Gen.Select(
        Gen.Double[0.1, 1], Gen.Double[0.1, 1], Gen.Double[0.1, 1], Gen.Double[-0.1, 3.1]).Sample((a, b, c, d) =>
    {
        ConvexSolid part = UnitCube.Clip(HalfSpace.Through((d / new Vector3D(a, b, c).Dot(new(a, b, c))) * new Vector3D(a, b, c), new(a, b, c)), 9);
        double sum = 0;
        for (int subset = 0; subset < 8; subset++)
        {
            double rest = d - ((subset & 1) * a) - (((subset >> 1) & 1) * b) - ((subset >> 2) * c);
            int sign = int.PopCount(subset) % 2 == 0 ? 1 : -1;
            sum += sign * Math.Pow(Math.Max(0, rest), 3);
        }

        Assert.Equal(sum / (6 * a * b * c), part.Volume, 1e-8);
    });

    [Fact]
    public void However_a_solid_is_cut_its_parts_are_sound_and_add_up() => Half.Array[1, 12].Sample(halves =>
    {
        ConvexSolid rest = UnitCube;
        double off = 0;
        foreach (HalfSpace half in halves)
        {
            ConvexSolid piece = rest.Clip(half.Complement, 10);
            SolidChecks.AssertSound(piece);
            off += piece.Volume;
            rest = rest.Clip(half, 11);
            SolidChecks.AssertSound(rest);
        }

        Assert.Equal(1, off + rest.Volume, 1e-7);
    });

    [Fact]
    public void Cutting_by_many_planes_at_once_is_cutting_by_one_after_another() => Half.Array[0, 40].Sample(halves =>
    {
        ConvexSolid one = UnitCube;
        foreach (HalfSpace half in halves) one = one.Clip(half, 10);
        ConvexSolid all = UnitCube.ClipAll(halves, 10, new());
        SolidChecks.AssertSound(all);
        Assert.Equal(one.Corners.ToArray(), all.Corners.ToArray());
        Assert.Equal(one.Planes.ToArray(), all.Planes.ToArray());
        Assert.Equal(one.Tags.ToArray(), all.Tags.ToArray());
        for (int face = 0; face < one.FaceCount; face++) Assert.Equal(one.FaceCorners(face).ToArray(), all.FaceCorners(face).ToArray());
    });

    [Fact]
    public void A_plane_on_a_face_or_beside_the_solid_changes_nothing()
    {
        ConvexSolid cube = UnitCube;
        Assert.Same(cube, cube.Clip(new(new(1, 0, 0), 1), 9));
        Assert.Same(cube, cube.Clip(new(new(1, 0, 0), 1 - 1e-12), 9));
        Assert.Same(cube, cube.Clip(HalfSpace.Through(new(1, 1, 0), new(1, 1, 0)), 9));
        Assert.Same(ConvexSolid.Empty, cube.Clip(new(new(-1, 0, 0), -1), 9));
    }

    // Simpson's rule is exact for solids with corners on two levels only: the prismatoid formula.
    [Fact]
    public void Sections_and_volume_agree_by_the_prismatoid_formula() => Gen.Select(
        Gen.Double[-0.3, 0.3], Gen.Double[-0.3, 0.3], Gen.Double[0.8, 1.8]).Sample((lean, turn, at) =>
    {
        ConvexSolid part = Box(2, 1, 1).Clip(HalfSpace.Through(new(at, 0.5, 0.5), new(1, turn, lean)), 9);
        if (part.HasFace(FaceTag.FarEnd)) return;
        double simpson = (part.Section(0).Area + (4 * part.Section(0.5).Area) + part.Section(1).Area) / 6;
        Assert.Equal(part.Volume, simpson, 1e-9);
    });

    [Fact]
    public void A_chord_is_what_is_left_of_a_face()
    {
        ConvexSolid part = Box(10, 4, 2).Clip(HalfSpace.Through(new(6, 0, 0), new(1, 1, 0)), 9);
        Assert.Equal(6, part.Chord(new(new(0, -1, 0), 0), 1, FaceTag.Edge1), 12);
        Assert.Equal(2, part.Chord(new(new(0, 1, 0), 4), 1, FaceTag.Edge2), 12);
        Assert.Equal(0, part.Chord(new(new(0, 1, 0), 4), 3, FaceTag.Edge2));
    }

    [Fact]
    public void A_frame_leads_there_and_back() => Gen.Select(AnyPoint, AnyPoint, AnyHalf, AnyPoint).Sample((a, b, half, p) =>
    {
        Vector3D z = half.Normal;
        Vector3D x = new Vector3D(z.Y, z.Z, z.X).Cross(z);
        if (x.Length < 0.01) return;
        x = x.Normalized();
        var frame = new Frame3D(x, z.Cross(x), z, a);
        Assert.Equal(0, (frame.ToOuter(frame.ToLocal(p)) - p).Length, 1e-12);
        Assert.Equal(half.Distance(p), frame.ToLocal(half).Distance(frame.ToLocal(p)), 1e-12);
        Assert.Equal(half.Distance(p), frame.ToOuter(frame.ToLocal(half)).Distance(p), 1e-12);
        ConvexSolid cut = UnitCube.Clip(half, 9);
        Assert.Equal(cut.Volume, cut.ToLocal(frame).Volume, 1e-12);
        Assert.Equal(cut.Volume, cut.ToOuter(frame).Volume, 1e-12);
    });

    [Fact]
    public void Planes_and_frames_can_be_told_as_text()
    {
        Assert.Contains("<= 2.5", new HalfSpace(new(1, 0, 0), 2.5).ToString(), StringComparison.Ordinal);
        Assert.Contains("<= 2.5", new HalfPlane(new(1, 0), 2.5).ToString(), StringComparison.Ordinal);
        Assert.Contains("origin", Frame3D.Identity.ToString(), StringComparison.Ordinal);
    }

    private static ConvexSolid Box(double x, double y, double z) => new BoardBlank(x, y, z).Solid();
}
