using System.Collections.Immutable;
using Ringwright.Core.Geometry;
using Ringwright.Core.Pieces;

namespace Ringwright.Core.Planning;

/// <summary>Where the segments and spacers of a mixed ring stand, and where each lay in its board.</summary>
internal static class MixedLayout
{
    public static ImmutableArray<LaidSegment> Of(MixedCourse course, ImmutableArray<WedgeBatch> batches, ImmutableArray<WoodNeed> woods, ImmutableArray<SpacerBatch> spacers, Shop shop)
    {
        var laid = new LaidSegment[course.Wedges.Length + course.Spacers.Length];
        var boards = new Dictionary<string, int>(StringComparer.OrdinalIgnoreCase);
        Dictionary<int, CourseWedge> wedgeAt = course.Wedges.ToDictionary(w => w.Place);
        for (int b = 0; b < batches.Length; b++) Wedges(laid, batches[b], [.. batches[b].Places.Select(p => wedgeAt[p])], woods.Where(w => w.Batch == b), boards, shop);
        Dictionary<int, CourseSpacer> spacerAt = course.Spacers.ToDictionary(s => s.Place);
        foreach (SpacerBatch kind in spacers) Spacers(laid, kind, [.. kind.Places.Select(p => spacerAt[p])], boards, shop);
        return [.. laid];
    }

    // A wood's boards are numbered on from batch to batch.
    private static void Wedges(LaidSegment[] laid, WedgeBatch batch, ImmutableArray<CourseWedge> wedges, IEnumerable<WoodNeed> woods, Dictionary<string, int> boards, Shop shop)
    {
        int perBoard = Math.Max(1, batch.Strip.WedgesIn(shop.Boards.Length.Millimetres));
        foreach (WoodNeed need in woods)
        {
            int taken = 0, first = boards.GetValueOrDefault(need.Wood);
            foreach (CourseWedge w in wedges.Where(w => string.Equals(w.Wood, need.Wood, StringComparison.OrdinalIgnoreCase)))
            {
                laid[w.Place] = new(
                    new(w.Middle - w.HalfAngle, w.Before / 2), new(w.Middle + w.HalfAngle, -w.After / 2), w.Wood, first + (taken / perBoard), taken % perBoard,
                    WedgeLayout.Frame(batch.Glued, batch.Strip, taken % perBoard, w.Middle, w.Aside));
                taken++;
            }

            boards[need.Wood] = first + need.Boards;
        }
    }

    private static void Spacers(LaidSegment[] laid, SpacerBatch kind, ImmutableArray<CourseSpacer> spacers, Dictionary<string, int> boards, Shop shop)
    {
        double pitch = kind.Length + shop.Saw.Kerf.Millimetres, trim = shop.Saw.EndTrim.Millimetres;
        int perBoard = (int)Math.Floor((shop.Boards.Length.Millimetres - trim - shop.Saw.HoldingLength.Millimetres + 1e-9) / pitch);
        int first = boards.GetValueOrDefault(kind.Wood);
        for (int i = 0; i < spacers.Length; i++)
        {
            CourseSpacer s = spacers[i];
            double outerEnd = trim + (i % perBoard * pitch);
            laid[s.Place] = new(new(s.Direction, s.Offset), new(s.Direction, s.Offset + s.Thickness), s.Wood, first + (i / perBoard), i % perBoard, Frame(kind, s, outerEnd));
        }

        boards[kind.Wood] = first + kind.Need.Boards;
    }

    // The strip's length (and grain) points to the centre, its width up, its thickness counter-clockwise.
    private static Frame3D Frame(SpacerBatch kind, CourseSpacer s, double outerEnd)
    {
        (double sin, double cos) = Math.SinCos(s.Direction);
        var radial = new Vector3D(cos, sin, 0);
        var tangent = new Vector3D(-sin, cos, 0);
        return new(-1 * radial, new(0, 0, 1), tangent, ((kind.Outer + outerEnd) * radial) + (s.Offset * tangent));
    }
}
