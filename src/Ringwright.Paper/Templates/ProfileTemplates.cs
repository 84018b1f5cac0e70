using System.Collections.Immutable;
using Ringwright.Core.Geometry;
using Ringwright.Core.Planning;
using Ringwright.Core.Profiles;
using Ringwright.Core.Turning;
using Ringwright.Paper.Drawings;

namespace Ringwright.Paper.Templates;

/// <summary>Cards whose edge fits the turned piece, from the exact curve.</summary>
internal static class ProfileTemplates
{
    private const double Fineness = 0.004; // how far the edge may leave the curve, mm: finer than any cut
    private const double Grip = 25;        // of card behind the edge, mm
    private const double Tick = 8;         // at the height of a glue line, mm

    /// <summary>The card for the outside.</summary>
    public static Template Outside(Plan plan, TurnedForm form)
    {
        WallLevel[] levels = [.. Levels(form)];
        double back = levels.Max(l => l.Outer) + Grip;
        Layers layers = new();
        Vector2D[] edge = [.. Distinct(levels.Select(l => new Vector2D(l.Outer, l.Z)))];
        layers.Cut(layers.Place.Polygon([.. edge, new(back, form.Top), new(back, form.Bottom)]));
        foreach ((string name, double z) in Joints(plan, form))
        {
            layers.Line(Outline.Line(layers.Place.Point(new(back - Tick, z)), layers.Place.Point(new(back, z))));
            layers.Words(name, new(back + 2, z), Anchor.MiddleLeft);
        }

        layers.Words("top", new(back - (Grip / 2), form.Top + 3)).Words($"{plan.Piece.Name}, outside", new(back - (Grip / 2), form.Bottom - 4));
        return new(TemplateKind.Outside, "Profile, outside", "Hold the cut edge against the turned outside, the card in line with the axis: no light may show. Strokes at the back: the glue lines.", layers.Together());
    }

    /// <summary>The card for the inside, one edge on the axis; null when nothing is hollow.</summary>
    public static Template? Inside(Plan plan, TurnedForm form)
    {
        WallLevel[] levels = [.. Levels(form).Where(l => l.Inner > 0)];
        if (levels.Length < 2) return null;
        Layers layers = new();
        double floor = levels[0].Z, above = form.Top + Grip;
        Vector2D[] edge = [.. Distinct(levels.Select(l => new Vector2D(l.Inner, l.Z)))];
        layers.Cut(layers.Place.Polygon([new(0, floor), .. edge, new(edge[^1].X, above), new(0, above)]));
        layers.Line(Outline.Line(layers.Place.Point(new(0, form.Top)), layers.Place.Point(new(edge[^1].X, form.Top))));
        layers.Words($"{plan.Piece.Name}, inside", new(edge[^1].X / 2, above + 4));
        return new(TemplateKind.Inside, "Profile, inside", "One straight edge stands on the axis. The line across is the rim: when it is level with the rim all around, the floor is deep enough and the wall follows the edge.", layers.Together());
    }

    private static ImmutableArray<WallLevel> Levels(TurnedForm form) => form.SectionWithin(form.Bottom, form.Top, Fineness).Levels;

    private static IEnumerable<(string Name, double Z)> Joints(Plan plan, TurnedForm form)
    {
        double z = 0, last = double.NegativeInfinity;
        foreach (RingPlan ring in plan.Rings.SkipLast(1))
        {
            z += ring.Ring.Thickness.Millimetres;
            if (z <= form.Bottom || z >= form.Top || z - last < 4) continue; // nearer, the names would touch
            last = z;
            yield return (ring.Ring.Name.Length <= 18 ? $"on {ring.Ring.Name}" : "", z);
        }
    }

    // A corner of the section comes once for each side of it.
    private static IEnumerable<Vector2D> Distinct(IEnumerable<Vector2D> points)
    {
        Vector2D? last = null;
        foreach (Vector2D point in points)
        {
            if (last is not Vector2D before || (point - before).Length > 1e-9) yield return point;
            last = point;
        }
    }
}
