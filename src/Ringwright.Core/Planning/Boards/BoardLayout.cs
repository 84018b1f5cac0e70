using System.Collections.Immutable;
using Ringwright.Core.Geometry;

namespace Ringwright.Core.Planning;

/// <summary>Where the wedges of the flat disc stand in a ring that was sawn out of it, turned, and turned over where its wide face is down.</summary>
internal static class BoardLayout
{
    public static ImmutableArray<LaidSegment> Of(SawnBoardRing ring, RingPlan disc)
    {
        int n = ring.Ring.Segments;
        double step = 2 * Math.PI / n, turn = ring.Ring.Shift * step, height = ring.Ring.Thickness.Millimetres;
        return [.. Enumerable.Range(0, n).Select(i => ring.WideUp ? Turned(disc.Layout[i], turn) : Turned(Over(disc.Layout[(n - i) % n], height), turn))];
    }

    private static LaidSegment Turned(LaidSegment laid, double turn)
    {
        (double sin, double cos) = Math.SinCos(turn);
        return laid with
        {
            From = laid.From.Turned(turn),
            To = laid.To.Turned(turn),
            Frame = Moved(laid.Frame, v => new((cos * v.X) - (sin * v.Y), (sin * v.X) + (cos * v.Y), v.Z), default),
        };
    }

    // Half a turn about the line through the middle of the first segment.
    private static LaidSegment Over(LaidSegment laid, double height) => laid with
    {
        From = new(2 * Math.PI * Wraps(laid) - laid.To.Direction),
        To = new(2 * Math.PI * Wraps(laid) - laid.From.Direction),
        Frame = Moved(laid.Frame, v => new(v.X, -v.Y, -v.Z), new(0, 0, height)),
    };

    // The first segment lies on both sides of the line; all others come from the other side of a full turn.
    private static int Wraps(LaidSegment laid) => laid.From.Direction + laid.To.Direction > 1e-9 ? 1 : 0;

    private static Frame3D Moved(Frame3D frame, Func<Vector3D, Vector3D> turn, Vector3D then) => new(turn(frame.X), turn(frame.Y), turn(frame.Z), turn(frame.Origin) + then);
}
