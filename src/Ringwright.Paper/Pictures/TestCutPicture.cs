using System.Collections.Immutable;
using Ringwright.Core;
using Ringwright.Core.Geometry;
using Ringwright.Core.Planning;
using Ringwright.Core.Sawing;
using Ringwright.Paper.Drawings;
using Ringwright.Paper.Sheets;

namespace Ringwright.Paper.Pictures;

/// <summary>
/// The first wedge from above as it falls, with the stop too far, right and not far enough, so that a first cut is judged by
/// eye. The right wedge is dashed in the other two.
/// </summary>
public static class TestCutPicture
{
    private const double ShownOff = 0.25; // stop off by this share of the stop distance, so that it is seen
    private const double MostOff = 3;     // and by no more than this, mm

    /// <summary>The three test cuts of a ring's plan, or none where its wedges are too small to be simulated.</summary>
    public static ImmutableArray<TestCut> Of(RingPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        double stop = plan.Strip.Wedge.RimEdge, half = plan.Strip.Wedge.HalfAngle;
        BoardBlank board = new(plan.Strip.LengthFor(6) + (6 * stop) + plan.Strip.Wedge.Depth, plan.Strip.Wedge.Depth, plan["board-thickness"].Value);
        SawSetup saw = new(new TwoFenceSled(new(half), new(half)), stop, plan.Strip.Kerf) { SquaringTrim = plan.Strip.EndTrim };
        try
        {
            return TestCut.Pictures(board, saw, Math.Min(MostOff, ShownOff * stop));
        }
        catch (BadInputException)
        {
            return [];
        }
    }

    /// <summary>Draws the three cuts at one scale, the largest preferred at which each fits the room.</summary>
    /// <param name="cuts">The three cuts.</param>
    /// <param name="room">Room for each.</param>
    public static (DrawingScale Scale, ImmutableArray<Drawing> Pictures) Draw(ImmutableArray<TestCut> cuts, Room room)
    {
        ConvexPolygon right = cuts.Single(c => c.Setting == TestCutSetting.Right).Piece;
        DrawingScale scale = cuts.Select(cut => ScaledPicture.Largest(cut.RimLength, room, s => Draw(cut, right, s.Ratio)).Scale)
            .MinBy(s => s.Ratio);
        return (scale, [.. cuts.Select(cut => Draw(cut, right, scale.Ratio).Cropped())]);
    }

    /// <summary>What one sees at a cut and what to do about it, in one or two sentences.</summary>
    public static Sentence InWords(TestCut cut)
    {
        ArgumentNullException.ThrowIfNull(cut);
        Measured off = Measured.Length(Math.Abs(cut.StopOffset)), tip = Measured.Length(cut.TipLength);
        return cut.Setting switch
        {
            TestCutSetting.TooFar => Sentence.Of("Drawn with the stop {0} too far from the blade. The tip comes out too wide, {1}. Move the stop nearer.", off, tip),
            TestCutSetting.Right when cut.TipLength < 0.005 => Sentence.Of("The wedge comes to a point just at the far edge of the board."),
            TestCutSetting.Right => Sentence.Of("The tip is {0} wide, straight to the corners.", tip),
            _ when cut.EndsBeforeFarEdge > 0 => Sentence.Of("Drawn with the stop {0} too near. The wedge ends {1} before the far edge, and the next one loses a corner of its rim. Move the stop away.", off, Measured.Length(cut.EndsBeforeFarEdge)),
            _ => Sentence.Of("Drawn with the stop {0} too near. The tip is too narrow, {1} wide. Move the stop away.", off, tip),
        };
    }

    // The board's body to the left and the rim at the fence below, as at the saw: half a turn of the board's axes.
    private static Drawing Draw(TestCut cut, ConvexPolygon right, double scale)
    {
        Placement place = new(Vector2D.Zero, scale, Math.PI);
        Drawing drawing = new(0, 0);
        double end = cut.Piece.Vertices.Max(v => v.X) + (14 / scale);
        ConvexPolygon board = cut.BoardEnd.Clip(new(new(1, 0), end));
        drawing.Fill(place.Polygon(cut.Kerf.Vertices), Colour.Grey(190));
        Edges(drawing, place, board, end);
        if (cut.Setting != TestCutSetting.Right) drawing.Stroke(place.Polygon(right.Vertices), Pens.Hidden);
        return drawing.Stroke(place.Polygon(cut.Piece.Vertices), Pens.Heavy);
    }

    // All edges but the one where the picture ends.
    private static void Edges(Drawing drawing, Placement place, ConvexPolygon board, double end)
    {
        foreach ((Vector2D a, Vector2D b) in board.Edges())
        {
            if (a.X < end - 1e-9 || b.X < end - 1e-9) drawing.Line(place.Point(a), place.Point(b), Pens.Medium);
        }
    }
}
