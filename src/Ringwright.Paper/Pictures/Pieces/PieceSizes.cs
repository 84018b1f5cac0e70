using System.Collections.Immutable;
using Ringwright.Core.Geometry;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Ringwright.Core.Profiles;
using Ringwright.Core.Turning;
using Ringwright.Paper.Dimensions;
using Ringwright.Paper.Drawings;
using Ringwright.Paper.Lettering;

namespace Ringwright.Paper.Pictures.Pieces;

/// <summary>The sizes around the picture of a piece: diameters above and below, at the right the thinnest wood and the height.</summary>
internal sealed class PieceSizes(Plan plan, ImmutableArray<WallLevel> levels, Placement place, MeasureStyle style)
{
    private const double First = 8, Next = 7; // from the piece to the nearest size, and from one to the next, mm
    private const double Same = 0.005;        // radii that are printed as one, mm
    private const double NoteTall = 12;       // of the note on the thinnest wood, mm
    private const double HeightRoom = 8;      // from what stands at the right to the height's line; its text lies between, mm
    private const double Clear = 3;           // from a line to the note's first line, mm

    private readonly Vector2D _bottom = new(levels[0].Outer, levels[0].Z);
    private readonly Vector2D _top = new(levels[^1].Outer, levels[^1].Z);

    /// <summary>Draws them.</summary>
    /// <param name="drawing">The drawing.</param>
    /// <param name="lowest">The lowest place of the picture on the paper, mm.</param>
    /// <param name="highest">The highest, mm.</param>
    /// <param name="right">The outermost right, mm.</param>
    public void Draw(Drawing drawing, double lowest, double highest, double right)
    {
        Diameters(drawing, Below(), lowest, down: true);
        Diameters(drawing, Above(), highest, down: false);
        Thinnest(drawing, Beyond(drawing, right) + 3);
        Height(drawing, Beyond(drawing, right) + HeightRoom);
    }

    private static double Beyond(Drawing drawing, double right) => drawing.TextBoxes.Select(t => t.Box.Right).Append(right).Max();

    private Vector2D Widest
    {
        get
        {
            WallLevel level = levels.MaxBy(l => l.Outer);
            return new(plan.Form?.Extents(plan.Form.Bottom, plan.Form.Top).MaxOuter ?? level.Outer, level.Z);
        }
    }

    private IEnumerable<(string What, Vector2D At)> Below()
    {
        bool foot = Alike(_bottom, Widest), all = foot && Alike(_top, Widest);
        yield return (all ? "" : foot ? "foot, widest " : "foot ", _bottom);
        if (!foot && !Alike(_top, Widest)) yield return ("widest ", Widest);
    }

    private IEnumerable<(string What, Vector2D At)> Above()
    {
        double inside = levels[^1].Inner;
        if (inside > 0) yield return (plan.Piece.Shape?.Inside is Bore ? "bore " : "inside ", new(inside, _top.Y));
        if (Alike(_top, Widest) && Alike(_bottom, Widest)) yield break;
        yield return (Alike(_top, Widest) ? "rim, widest " : "rim ", _top);
    }

    private static bool Alike(Vector2D one, Vector2D other) => Math.Abs(one.X - other.X) < Same;

    private void Diameters(Drawing drawing, IEnumerable<(string What, Vector2D At)> sizes, double edge, bool down)
    {
        double line = edge + (down ? First : -First);
        foreach ((string what, Vector2D at) in sizes)
        {
            Vector2D right = place.Point(at), left = place.Point(new(-at.X, at.Y));
            drawing.Dimension(left, right, left.Y - line, $"{what}Ø {Caliper.Short(style, 2 * at.X)}");
            line += down ? Next : -Next;
        }
    }

    private void Thinnest(Drawing drawing, double beyond)
    {
        if (plan.Form?.Thinnest() is not ThinnestWood thin) return;
        // A floor is as thin all over; it is pointed at beside the axis.
        Vector2D at = thin.Outside.X > 0 ? thin.Outside : new(levels.Min(l => l.Outer) / 3, (thin.Outside.Y + thin.Inside.Y) / 2);
        Vector2D target = place.Point(at), knee = new(beyond, Beside(target.Y, thin.Outside - thin.Inside));
        string[] words = ["thinnest", Caliper.Short(style, thin.Thickness), $"at {Caliper.Short(style, at.Y)}"];
        drawing.Note(target, knee, string.Join('\n', words), thin.Outside.X > 0 ? LeaderEnd.Arrow : LeaderEnd.Dot);
    }

    // On the side from which the place is seen: level with it, or below or above the height's extension lines.
    private double Beside(double y, Vector2D outward)
    {
        double top = place.Point(_top).Y, bottom = place.Point(_bottom).Y, low = bottom - NoteTall;
        if (-outward.Y > Math.Abs(outward.X)) return bottom + Clear;
        return outward.Y > Math.Abs(outward.X) || low < top + Clear ? top - NoteTall : Math.Clamp(y, top + Clear, low);
    }

    private void Height(Drawing drawing, double x)
    {
        Vector2D bottom = place.Point(_bottom), top = place.Point(_top);
        // The edges lie at different distances, so the extension lines are drawn here.
        const double None = 0.5; // too near for extension lines
        string value = Caliper.Short(style, _top.Y - _bottom.Y);
        double wide = Typesetter.WidthOf(value, TypeScale.Dimension);
        foreach (Vector2D edge in new[] { bottom, top }) drawing.Line(edge + new Vector2D(0.8, 0), new(x + 2, edge.Y), Pens.Fine);
        if (bottom.Y - top.Y >= wide + 2) drawing.Dimension(new(x, bottom.Y), new(x, top.Y), -None, value);
        else drawing.UprightDimension(new(x, top.Y), new(x, bottom.Y), None, value);
    }
}
