using System.Collections.Immutable;
using Ringwright.Core.Geometry;
using Ringwright.Core.Turning;
using Ringwright.Paper.Drawings;

namespace Ringwright.Paper.Pictures.Pieces;

/// <summary>
/// The left half of a piece from outside, seen along the middle of the first segment of a ring that is not turned: every segment and
/// joint on the near side, where it is seen.
/// </summary>
internal static class Elevation
{
    private static readonly AroundView Quarter = new(-Math.PI / 2, 0);

    /// <summary>Whether some segment is too small at a scale for the lines of its wood.</summary>
    public static bool IsShaded(ImmutableArray<PieceRing> rings, double scale) =>
        rings.Where(r => r.Turned is not null).Any(r => WoodTones.MustShade(scale * r.Turned!.Segments.Min(s => Width(r, s)), scale * (r.Levels[^1].Z - r.Levels[0].Z)));

    /// <summary>Draws it.</summary>
    public static void Draw(Drawing drawing, ImmutableArray<PieceRing> rings, Placement place, WoodTones tones)
    {
        List<Outline> joints = [];
        foreach (PieceRing ring in rings.Where(r => r.Turned is not null))
        {
            JointLines lines = new();
            for (int i = 0; i < ring.Turned!.Segments.Length; i++)
                foreach (double move in Quarter.Moves(ring.Turned.Segments[i], ring.Levels[0], ring.Levels[^1]))
                    Add(new(ring, i, move, place), tones, lines);
            joints.AddRange(lines.Shown(place.Scale * ring.Turned.Segments.Max(s => Width(ring, s))));
        }

        tones.Draw(drawing);
        if (joints.Count > 0) drawing.Stroke(Outline.Join(joints), Pens.Fine);
    }

    // On the outer wall, at its widest.
    private static double Width(PieceRing ring, TurnedSegment segment)
    {
        WallLevel level = ring.Levels.MaxBy(l => l.Outer);
        return level.Outer * Math.Min(1, AroundView.At(segment.To, level) - AroundView.At(segment.From, level));
    }

    private static void Add(Seen seen, WoodTones tones, JointLines lines)
    {
        IReadOnlyList<Vector2D> from = seen.Edge(seen.Segment.From), to = seen.Edge(seen.Segment.To);
        tones.Add(seen.Ring.Plan.Layout[seen.Index].Wood, Outline.Polygon([.. from, .. to.Reverse()]));
        if (seen.IsWhole) return;
        if (seen.Shows(seen.Segment.From)) lines.Add(from);
        if (seen.Shows(seen.Segment.To)) lines.Add(to);
    }

    /// <summary>A segment moved into view.</summary>
    private readonly record struct Seen(PieceRing Ring, int Index, double Move, Placement Place)
    {
        public TurnedSegment Segment => Ring.Turned!.Segments[Index];

        public bool IsWhole => Segment.To.Direction - Segment.From.Direction > (2 * Math.PI) - 1e-9;

        public bool Shows(JointPlane joint)
        {
            double move = Move;
            return Ring.Levels.Any(level => Quarter.Shows(AroundView.At(joint, level) + move));
        }

        public IReadOnlyList<Vector2D> Edge(JointPlane joint)
        {
            double move = Move;
            return Place.Points(Ring.Levels.Select(level =>
                new Vector2D(level.Outer * Math.Sin(Quarter.Clamp(AroundView.At(joint, level) + move)), level.Z)));
        }
    }
}
