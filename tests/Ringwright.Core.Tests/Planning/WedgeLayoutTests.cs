using System.Collections.Immutable;
using CsCheck;
using Ringwright.Core.Geometry;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Ringwright.Core.Sawing;

namespace Ringwright.Core.Tests.Planning;

public class WedgeLayoutTests
{
    // Takes the wedge out of the strip where it was sawn, and lays it into the ring: both must be the same wood.
    [Fact]
    public void A_wedges_board_laid_into_the_ring_brings_the_sawn_wedge_to_its_place() =>
        Gen.Select(Gen.OneOf(AnyPiece.Disc, AnyPiece.Open), Gen.Int[0, 1]).Sample((ring, half) =>
        {
            Shop shop = Shop.Starting with { Boards = new() { Length = AnyPiece.Mm(2500) }, Sanding = new() { PerFace = AnyPiece.Mm(0) } };
            RingPlan plan = Planner.Plan(new Piece { Name = "Random", Rings = [ring with { Shift = half / 2.0 }] }, shop).Rings[0];
            int perBoard = plan.Strip.WedgesIn(2500);
            StripPlan strip = plan.Strip.Saw(2500, perBoard);
            for (int i = 0; i < plan.Layout.Length; i++)
            {
                LaidSegment laid = plan.Layout[i];
                ImmutableArray<Vector2D> place = plan.Glued.PlanAt((i + (half / 2.0)) * 2 * Math.PI / ring.Around).Vertices;
                foreach (Vector2D corner in strip.Wedges[laid.Cut].Vertices)
                {
                    Vector3D at = laid.Frame.ToOuter(new Vector3D(corner.X, corner.Y, 5));
                    Assert.Equal(5, at.Z, 9);
                    Assert.True(place.Min(p => (p - new Vector2D(at.X, at.Y)).Length) < 1e-6, $"{ring} segment {i}: {at}");
                }
            }
        });
}
