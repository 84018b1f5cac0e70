namespace Ringwright.Core.Turning;

/// <summary>
/// A segment as parts with two sides each. A strip of a glued segment has four sides: its glue lines, and the joints, where it
/// reaches past them. A glue line at the distance c(z) stands at a joint, d to the side, where c(z) = r sin d, which is a straight line
/// in the cut along the axis; on either side of it one and the same of the two is the nearer.
/// </summary>
internal static class SegmentCells
{
    /// <summary>The parts, which fill the segment and do not overlap; some may have no wood within the wall.</summary>
    public static SegmentSpan[] Of(TurnedSegment segment)
    {
        if (segment.Within is not SegmentJoints joints) return [new(segment)];
        // Beyond these radii the glue line (from, to) lies after the first joint (1) and before the second (2).
        RadialLine from1 = Crease(segment.From, joints.From), from2 = Crease(segment.From, joints.To);
        RadialLine to1 = Crease(segment.To, joints.From), to2 = Crease(segment.To, joints.To);
        return
        [
            new(segment.From, segment.To, new([from1, from2, to1, to2], [])),
            new(joints.From, segment.To, new([to1, to2], [from1])),
            new(segment.From, joints.To, new([from1, from2], [to2])),
            new(joints.From, joints.To, new([to1, from2], [from1, to2])),
        ];
    }

    private static RadialLine Crease(JointPlane glueLine, JointPlane joint)
    {
        double sin = Math.Sin(joint.Direction - glueLine.Direction);
        return new(glueLine.Offset / Math.Cos(glueLine.Tilt) / sin, Math.Tan(glueLine.Tilt) / sin);
    }
}
