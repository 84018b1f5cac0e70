using CsCheck;
using Ringwright.Core.Geometry;
using Ringwright.Core.Turning;

namespace Ringwright.Core.Tests.Turning;

public class TurnedMassTests
{
    private const double Rho = 700;

    // Volumes, centroids and moments of inertia of cylinder, cone and half disc are those of the usual textbook tables (from memory).
    [Fact]
    public void A_tube_weighs_what_the_textbook_says()
    {
        MassProperties tube = TurnedMass.Of([Rings.Closed(Rings.Cylinder(30, 20), 7, turn: 0.3)], Rho).Whole;
        double volume = Math.PI * (900 - 400) * 10;
        Assert.Equal(volume, tube.Volume, 1e-9 * volume);
        Assert.Equal(volume * Rho * 1e-6, tube.Mass, 1e-12 * volume);
        Assert.Equal(tube.Mass / 2 * (900 + 400), tube.AxisInertia, 1e-9 * tube.AxisInertia);
        Assert.Equal(5, tube.CentreOfMass.Z, 1e-9);
        Assert.Equal(0, tube.Unbalance, 1e-9);
        Assert.Equal(2 * Math.PI * 30 * 10, tube.OuterArea, 1e-8);
        Assert.Equal(2 * Math.PI * 20 * 10, tube.InnerArea, 1e-8);
    }

    [Fact]
    public void A_cone_weighs_what_the_textbook_says()
    {
        MassProperties cone = TurnedMass.Of([Rings.Disc(Rings.Section((0, 30, 0), (40, 0, 0)))], Rho).Whole;
        double volume = Math.PI * 900 * 40 / 3;
        Assert.Equal(volume, cone.Volume, 1e-9 * volume);
        Assert.Equal(10, cone.CentreOfMass.Z, 1e-9);
        Assert.Equal(0.3 * cone.Mass * 900, cone.AxisInertia, 1e-9 * cone.AxisInertia);
        Assert.Equal(Math.PI * 30 * 50, cone.OuterArea, 1e-8);
        Assert.Equal(0, cone.Unbalance);
    }

    [Fact]
    public void A_half_disc_has_its_centroid_at_four_thirds_of_r_over_pi()
    {
        MassProperties half = TurnedMass.Of([Rings.One(Rings.Cylinder(30), new(0), new(Math.PI))], Rho).Whole;
        Assert.Equal(4 * 30 / (3 * Math.PI), half.CentreOfMass.Y, 1e-9);
        Assert.Equal(0, half.CentreOfMass.X, 1e-9);
        Assert.Equal(Math.PI / 2, half.HeavySide, 1e-9);
    }

    // Pappus: area of the wall's cut times the way of its centroid.
    [Fact]
    public void The_vase_weighs_what_Pappus_says()
    {
        double volume = 0;
        for (int slice = 0; slice < 160; slice++)
        {
            double middle = ((Rings.VaseRadius(1.5 * slice) + Rings.VaseRadius(1.5 * (slice + 1))) / 2) - 3;
            volume += 6 * 1.5 * 2 * Math.PI * middle; // a parallelogram, its centroid in the middle
        }

        var mass = TurnedMass.Of(Rings.Vase, Rho, Rho, Rho);
        Assert.Equal(1, mass.Whole.Volume / volume, 1e-12);
        Assert.Equal(0, mass.Whole.Unbalance, 1e-6);
        Assert.Equal(120, mass.Whole.CentreOfMass.Z, 1e-9);
        Assert.Equal(mass.Whole.Volume, mass.Segments.Sum(ring => ring.Sum(s => s.Volume)), 1e-6);
    }

    // Force of unbalance m e ω²: ISO 21940-11 gives U = m e in g·mm; 1 g at 100 mm and 1000/min is 1.0966 N (worked by hand).
    [Fact]
    public void Unequal_woods_pull_to_the_heavy_side()
    {
        TurnedRing halves = Rings.Closed(Rings.Cylinder(30), 2, 2);
        MassProperties whole = TurnedMass.Of([halves], 900, 500).Whole;
        double half = Math.PI * 450 * 10;
        Assert.Equal((900 - 500) * 1e-6 * half * 40 / Math.PI, whole.Unbalance, 1e-9);
        Assert.Equal(Math.PI / 2, whole.HeavySide, 1e-9);
        Assert.Equal(1.0966, new MassProperties(0, 1, new(100, 0, 0), 0, 0, 0, 0, 0).Force(1000), 1e-4);
    }

    [Fact]
    public void Two_rings_heavy_on_opposite_sides_are_balanced_at_rest_and_wobble_when_they_turn()
    {
        TurnedRing low = Rings.Closed(Rings.Cylinder(30), 2, 2);
        TurnedRing high = Rings.Closed(Rings.Section((10, 30, 0), (20, 30, 0)), 2, 2, Math.PI);
        var mass = TurnedMass.Of([low, high], 900, 500);
        Assert.Equal(0, mass.Whole.Unbalance, 1e-9);
        Assert.Equal(10 * mass.Rings[0].Unbalance, mass.Whole.CoupleAbout(3), 1e-6);
    }

    // A mesh is short of the round by the square of its facet; what two of them come to, one twice as fine, is short by far less.
    [Fact]
    public void Moved_and_leaning_sides_agree_with_what_ever_finer_meshes_come_to() => RandomRings.AnySides.Sample(ring =>
    {
        var mass = TurnedMass.Of([ring], 1e6, 1e6, 1e6);
        (TurnedMesh coarse, TurnedMesh fine) = (Mesh(4, 20), Mesh(8, 40));
        Assert.Equal(coarse.Parts.Length, fine.Parts.Length);
        foreach ((TurnedPart part, TurnedPart finer) in coarse.Parts.Zip(fine.Parts))
        {
            Assert.Equal(part.Segment, finer.Segment);
            MassProperties exact = mass.Segments[0][part.Segment];
            (double volume, Vector3D moment) = Sums(coarse, part);
            (double better, Vector3D betterMoment) = Sums(fine, finer);
            volume = better + ((better - volume) / 3);
            moment = betterMoment + (1.0 / 3 * (betterMoment - moment));
            double size = 1 + (Math.Abs(volume) * 60);
            Assert.Equal(volume, exact.Volume, 1e-4 * (volume + 1));
            Assert.Equal(0, (moment - exact.Moment).Length / size, 1e-4);
        }

        TurnedMesh Mesh(int slices, int facets) => TurnedMesh.Of([ring with { Section = Sliced(ring.Section, slices) }], Facets.Fixed(facets));
    }, iter: 15);

    [Fact]
    public void Sides_moved_by_next_to_nothing_change_next_to_nothing() => RandomRings.Radial.Sample(ring =>
    {
        TurnedRing moved = ring with { Segments = [.. ring.Segments.Select(s => s with { From = s.From with { Offset = 1e-9 } })] };
        MassProperties a = TurnedMass.Of([ring], 700, 600, 900).Whole;
        MassProperties b = TurnedMass.Of([moved], 700, 600, 900).Whole;
        Assert.Equal(1, b.Volume / a.Volume, 1e-7);
        Assert.Equal(1, b.AxisInertia / a.AxisInertia, 1e-7);
        Assert.Equal(0, (b.Moment - a.Moment).Length / (60 * a.Mass), 1e-7);
        Assert.Equal(0, Math.Abs(b.CrossX - a.CrossX) / (3600 * a.Mass), 1e-7);
        Assert.Equal(1, b.OuterArea / a.OuterArea, 1e-7);
    });

    [Fact]
    public void What_is_turned_away_is_the_rest_of_the_blank()
    {
        var mass = TurnedMass.Of([Rings.Disc(Rings.Cylinder(30, 20))], Rho);
        double turned = mass.Whole.Volume;
        Assert.Equal(1000, mass.TurnedAway([turned + 1000])[0], 1e-6);
        Assert.Equal(
            "ring 1: its blank has 1000 mm³ and the turned ring 15708 mm³; the blank must hold what is turned from it.",
            Assert.Throws<BadInputException>(() => mass.TurnedAway([1000])).Message);
        Assert.Throws<BadInputException>(() => mass.TurnedAway([]));
    }

    [Fact]
    public void A_wood_without_density_is_named()
    {
        TurnedRing[] rings = [Rings.Closed(Rings.Cylinder(30), 4, 2)];
        Assert.Contains("ring 1, segment 2: its wood 1 has no density", Assert.Throws<BadInputException>(() => TurnedMass.Of(rings, 700)).Message);
        Assert.Contains("its wood 1 has the density 0", Assert.Throws<BadInputException>(() => TurnedMass.Of(rings, 700, 0)).Message);
    }

    // Between two levels a leaning side runs along a curve of the wall, which the mesh takes as straight: many levels.
    private static WallSection Sliced(WallSection section, int slices) => new([.. section.Levels.SelectMany((level, i) =>
        i == 0 || section.Levels[i - 1].Z == level.Z
            ? [level]
            : Enumerable.Range(1, slices).Select(k => Between(section.Levels[i - 1], level, (double)k / slices)))]);

    private static WallLevel Between(WallLevel a, WallLevel b, double share) => new(
        a.Z + (share * (b.Z - a.Z)), a.Outer + (share * (b.Outer - a.Outer)), a.Inner + (share * (b.Inner - a.Inner)));

    // Tetrahedra about the origin: not the way of the code under test.
    private static (double Volume, Vector3D Moment) Sums(TurnedMesh mesh, TurnedPart part)
    {
        double volume = 0;
        Vector3D moment = default;
        for (int i = part.FirstIndex; i < part.FirstIndex + part.IndexCount; i += 3)
        {
            (Vector3D a, Vector3D b, Vector3D c) = (At(mesh, i), At(mesh, i + 1), At(mesh, i + 2));
            double tetrahedron = a.Dot(b.Cross(c)) / 6;
            volume += tetrahedron;
            moment += tetrahedron / 4 * (a + b + c);
        }

        return (volume, moment);
    }

    private static Vector3D At(TurnedMesh mesh, int index)
    {
        System.Numerics.Vector3 p = MeshChecks.At(mesh.Positions, mesh.Indices[index]);
        return new(p.X, p.Y, p.Z);
    }
}
