using Ringwright.Core.Geometry;
using Ringwright.Core.Measures;
using Ringwright.Core.Planning;
using Ringwright.Core.Rings;
using Ringwright.Paper.Drawings;

namespace Ringwright.Paper.Templates;

/// <summary>Templates of a single wedge: its outline, and the guide that holds it while a face is rubbed flat.</summary>
internal static class WedgeTemplates
{
    private const double Rim = 20;       // of wood around a notch, mm
    private const double Relief = 1.5;   // radius of the holes in the corners of a notch, mm
    private const double LeastEdge = 6;  // an edge shorter than this gets no hole at its end, mm
    private const double WordsBelow = 5; // from the outline to its words, mm

    /// <summary>The wedge as glued, cut, with its outline as sawn around it; both rims on one line.</summary>
    public static Template Wedge(WedgeBatch batch, string name, MeasureStyle style)
    {
        Layers layers = new();
        layers.Cut(layers.Place.Polygon(FromRim(batch.Glued))).Reference(layers.Place.Polygon(FromRim(batch.Strip.Wedge)));
        layers.Words($"{name}\n{style.Print(batch.Glued.WedgeAngle, Quantity.Angle)}\nrim {style.Length(batch.Glued.RimEdge)}", new(0, WordsBelow + 9));
        return new(TemplateKind.Wedge, $"{name}: wedge", "Full line: the wedge as glued. Dashed: as sawn. Lay the wedge on it, rim to the rim's line: both faces must follow their lines.", layers.Together());
    }

    /// <summary>
    /// The lap guide: the wedge lies in a notch of the guide's edge, its second face against the notch and its first face in line
    /// with the edge, so that this face is done, at the right angle and size, when it no longer stands proud.
    /// </summary>
    public static Template Lap(WedgeBatch batch, string name, MeasureStyle style)
    {
        Vector2D[] wedge = Lying(batch.Glued);
        double length = wedge[^1].X, tall = wedge.Max(p => p.Y);
        Layers layers = new();
        List<Segment> steps = [];
        Vector2D at = wedge[0];
        steps.Add(new Segment.Line(layers.Place.Point(at)));
        for (int i = 1; i < wedge.Length; i++)
        {
            bool inner = i < wedge.Length - 1 && (wedge[i] - wedge[i - 1]).Length >= LeastEdge && (wedge[i + 1] - wedge[i]).Length >= LeastEdge;
            if (!inner) steps.Add(new Segment.Line(layers.Place.Point(wedge[i])));
            else AddRelief(steps, layers.Place, wedge[i - 1], wedge[i], wedge[i + 1]);
        }

        Vector2D[] outer = [new(length + Rim, 0), new(length + Rim, tall + Rim), new(-Rim, tall + Rim)];
        steps.AddRange(outer.Select(p => new Segment.Line(layers.Place.Point(p))));
        layers.Cut(new([new(layers.Place.Point(new(-Rim, 0)), steps, Closed: true)]));
        layers.Words($"{name}, lap guide, {style.Print(batch.Glued.WedgeAngle, Quantity.Angle)}", new(length / 2, tall + (Rim / 2)));
        return new(TemplateKind.Lap, $"{name}: lap guide", "Press the wedge into the notch, rim and second face tight. Rub the face that stands proud on a flat sheet of abrasive until it is in line with the guide's edge: the wedge then has its angle and its size.", layers.Together());
    }

    // Rim on the x axis, the wedge below it.
    private static IEnumerable<Vector2D> FromRim(WedgeGeometry wedge) =>
        wedge.PlanAt(Math.PI / 2).Vertices.Select(p => p - new Vector2D(0, wedge.ApexRadius + wedge.OuterApothem));

    // The first face on the x axis from the rim at 0 to the tip, the wedge above it: rim end of the first face, rim end of the
    // second, tip of the second, tip of the first; a wedge to a point has no third.
    private static Vector2D[] Lying(WedgeGeometry wedge)
    {
        Vector2D[] plan = [.. wedge.PlanAt(0).Vertices]; // from-outer, to-outer, to-inner, from-inner or the apex
        Vector2D along = plan[^1] - plan[0];
        double turn = -Math.Atan2(along.Y, along.X);
        Vector2D[] laid = [.. plan.Select(p => (p - plan[0]).Rotated(turn))];
        return laid[1].Y >= 0 ? laid : [.. laid.Select(p => new Vector2D(p.X, -p.Y))];
    }

    // A hole around the corner, so that no burr holds the wedge off: in along the first edge, around through the guide, out along the second.
    private static void AddRelief(List<Segment> steps, Placement place, Vector2D before, Vector2D corner, Vector2D after)
    {
        Vector2D back = (before - corner).Length is double a ? (Relief / a) * (before - corner) : default;
        Vector2D on = (after - corner).Length is double b ? (Relief / b) * (after - corner) : default;
        double inside = Math.Atan2(back.Cross(on), back.Dot(on)); // from the one edge to the other through the notch, counter-clockwise
        double around = inside > 0 ? inside - (2 * Math.PI) : inside + (2 * Math.PI);
        steps.Add(new Segment.Line(place.Point(corner + back)));
        // On the paper y runs down, so turns change their sign; an arc takes half a turn at most.
        steps.AddRange(Enumerable.Repeat(new Segment.Arc(place.Point(corner), -around / 2), 2));
    }
}
