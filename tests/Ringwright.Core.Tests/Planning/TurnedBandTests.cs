using CsCheck;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Ringwright.Core.Turning;

namespace Ringwright.Core.Tests.Planning;

/// <summary>The turned solid of laminated rings: strips end at the joints of their segments, and fill the ring.</summary>
public class TurnedBandTests
{
    private static readonly Gen<LaminatedRing> Any =
        from n in Gen.Int[3, 40]
        from recut in Gen.OneOf(Gen.Const(0.0), Gen.Double[-60, 60])
        from mirrored in Gen.Bool
        from strips in Gen.Double[2, 20].Array[1, 4]
        from height in Gen.Double[5, 40]
        from wall in Gen.Double[4, 30]
        from shift in Gen.Double[0, 1]
        select new LaminatedRing
        {
            Name = "Band",
            Segments = n,
            Diameter = AnyPiece.Mm(160),
            InnerDiameter = AnyPiece.Mm(160 - (2 * wall)),
            Thickness = AnyPiece.Mm(height),
            Shift = shift,
            Recut = Angle.FromDegrees(recut),
            Mirrored = mirrored,
            Strips = [.. strips.Select((t, i) => new Strip($"wood {i}", AnyPiece.Mm(t)))],
        };

    private static Plan PlanOf(LaminatedRing ring) =>
        Planner.Plan(new() { Name = "Band", Rings = [new SegmentRing { Name = "Foot", Segments = 8, Diameter = AnyPiece.Mm(150), InnerDiameter = AnyPiece.Mm(110), Thickness = AnyPiece.Mm(13), Woods = ["oak"] }, ring] },
            Shop.Starting with { Boards = new() { Length = AnyPiece.Mm(2500) } });

    private static double[] Densities(TurnedPiece piece) => [.. piece.Woods.Select(_ => 700.0)];

    [Fact]
    public void Strips_fill_the_ring_and_each_segment_evenly() =>
        Any.Sample(ring =>
        {
            Plan plan = PlanOf(ring);
            TurnedPiece piece = plan.Turned();
            TurnedMass mass = TurnedMass.Of(piece.Rings, Densities(piece));
            double volume = TurnedVolumes.Of(piece.Rings[1].Section);
            Assert.Equal(volume, mass.Rings[1].Volume, 1e-6 * volume);
            double[] segments = [.. plan.Rings[1].Layout.Zip(mass.Segments[1]).GroupBy(p => p.First.Within).Select(g => g.Sum(p => p.Second.Volume))];
            Assert.Equal(ring.Segments, segments.Length);
            Assert.All(segments, s => Assert.Equal(volume / ring.Segments, s, 1e-6 * volume));
        }, iter: 60);

    // Nothing but the wall is turned: 2π r h outside.
    [Fact]
    public void Only_the_wall_counts_as_turned() =>
        Any.Sample(ring =>
        {
            TurnedPiece piece = PlanOf(ring).Turned();
            MassProperties band = TurnedMass.Of(piece.Rings, Densities(piece)).Rings[1];
            double height = ring.Thickness.Millimetres;
            Assert.Equal(Math.PI * ring.Outside.Millimetres * height, band.OuterArea, 1e-5 * band.OuterArea);
            Assert.Equal(Math.PI * ring.InnerDiameter!.Value.Millimetres * height, band.InnerArea, 1e-5 * band.InnerArea);
        }, iter: 60);

    // Strip by strip the mesh, whose facets are chords, against the exact weight.
    [Fact]
    public void The_mesh_holds_what_the_exact_integral_does() =>
        Any.Sample(ring =>
        {
            TurnedPiece piece = PlanOf(ring).Turned();
            TurnedMass mass = TurnedMass.Of(piece.Rings, Densities(piece));
            var mesh = TurnedMesh.Of(piece.Rings, Facets.Within(0.02));
            foreach (TurnedPart part in mesh.Parts.Where(p => p.Ring == 1))
                Assert.Equal(mass.Segments[1][part.Segment].Volume, mesh.Volume(part), 2 + (5e-3 * mass.Segments[1][part.Segment].Volume));
            Assert.Equal(mass.Rings[1].Volume, mesh.Parts.Where(p => p.Ring == 1).Sum(p => mesh.Volume(p)), 2e-3 * mass.Rings[1].Volume);
        }, iter: 10);

    // Seen from above the segments close around the ring as those of plain wood do.
    [Fact]
    public void Outlines_are_those_of_whole_segments() =>
        Any.Sample(ring =>
        {
            RingPlan plan = PlanOf(ring).Rings[1];
            LaidOutline[] outlines = [.. LaidOutline.Of(plan)];
            Assert.Equal(ring.Segments, outlines.Length);
            Assert.All(outlines, (piece, i) =>
            {
                Assert.Equal(plan.Glued.RimEdge, piece.Width, 1e-9);
                Assert.Equal(0, (outlines[(i + 1) % outlines.Length].Corners[0] - piece.Corners[1]).Length, 1e-9);
            });
        });
}
