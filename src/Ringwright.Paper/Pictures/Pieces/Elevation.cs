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
    /// <summary>What is in view.</summary>
    public static readonly AroundView Quarter = new(-Math.PI / 2, 0);

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
            foreach (SeenSegment segment in ring.Seen(ring.Levels))
                foreach (double move in Quarter.Moves(segment)) Add(segment, move, place, tones, lines);
            joints.AddRange(lines.Shown(place.Scale * ring.Turned!.Segments.Max(s => Width(ring, s))));
        }

        tones.Draw(drawing);
        if (joints.Count > 0) drawing.Stroke(Outline.Join(joints), Pens.Fine);
    }

    /// <summary>One side of a piece as it is seen, mm: from the axis, and up; the piece moved by whole turns.</summary>
    public static IEnumerable<Vector2D> Edge(SeenSegment segment, double move, Func<SeenLevel, double> side) =>
        segment.Levels.Select(level => new Vector2D(level.Wall.Outer * Math.Sin(Quarter.Clamp(side(level) + move)), level.Wall.Z));

    // On the outer wall, at its widest.
    private static double Width(PieceRing ring, TurnedSegment segment) => SeenSegment.Width(segment, ring.Levels.MaxBy(l => l.Outer));

    private static void Add(SeenSegment segment, double move, Placement place, WoodTones tones, JointLines lines)
    {
        IReadOnlyList<Vector2D> from = place.Points(Edge(segment, move, level => level.From)), to = place.Points(Edge(segment, move, level => level.To));
        tones.Add(segment.Wood, Outline.Polygon([.. from, .. to.Reverse()]));
        lines.Add(Quarter, segment, move, from, to);
    }
}
