using System.Collections.Immutable;
using Ringwright.Core.Geometry;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Ringwright.Paper.Drawings;

namespace Ringwright.Paper.Templates;

/// <summary>Templates of a ring from above, turned as it stands in the stack.</summary>
internal static class RingTemplates
{
    private const double Air = 6;          // from the wood to a mark or to words, mm
    private const double PlateRim = 25;    // of plate around the ring, mm
    private const double Pin = 6;          // diameter of the plate's hole in the middle, mm
    private const double MostRelief = 6, LeastRelief = 1.5; // diameter of the holes under the joints, mm

    private const string Circles = "Dashed: the circles to be turned.";

    /// <summary>The pieces whose middle lies in the first quarter.</summary>
    public static Template? Quarter(RingPlan ring)
    {
        ImmutableArray<LaidOutline> all = LaidOutline.Of(ring);
        const double Quarter = Math.PI / 2;
        // From where the quarter begins, so that they lie beside each other whatever the ring is turned by.
        ImmutableArray<LaidOutline> pieces = [.. all.Where(p => Turn(p.Middle) < Quarter - 1e-9).OrderBy(p => Turn(p.Middle))];
        if (pieces.IsEmpty) return null;
        Layers layers = new();
        layers.Pieces(pieces, whole: pieces.Length == all.Length);
        double reach = pieces.SelectMany(p => p.Corners).Max(c => c.Length);
        foreach (double radius in Radii(ring)) layers.Reference(Outline.Arc(default, radius, 0, -Quarter));
        layers.Line(Lines(layers, new(0, 0), new(reach + Air, 0))).Line(Lines(layers, new(0, 0), new(0, reach + Air)));
        layers.Words($"{ring.Ring.Name}\nquarter", Vector2D.Polar(Math.Max(reach * 0.3, 14), Quarter / 2));
        return new(TemplateKind.Quarter, $"{ring.Ring.Name}: quarter", $"Lay the dry wedges on it: the joints must follow theirs. {Circles}", layers.Together());
    }

    /// <summary>The whole ring; of a plain layer its round.</summary>
    public static Template? Disc(RingPlan ring)
    {
        Layers layers = new();
        if (!Wood(layers, ring)) return null;
        Cross(layers);
        Turned(layers, ring);
        layers.Words(ring.Ring.Name, new(0, -Math.Max(Reach(ring), (ring.Find("round")?.Value ?? 0) / 2) - Air));
        return new(TemplateKind.Disc, $"{ring.Ring.Name}: from above", $"Glue it to a board as a plan to lay the ring on. {Circles}", layers.Together());
    }

    /// <summary>A ring over the one below it.</summary>
    public static Template Stack(RingPlan ring, RingPlan? below)
    {
        Layers layers = new();
        foreach (double radius in Radii(ring)) layers.Line(Circle(radius));
        Joints(layers, ring, reference: false);
        double reach = Reach(ring);
        if (below is not null)
        {
            foreach (double radius in Radii(below)) layers.Reference(Circle(radius));
            Joints(layers, below, reference: true);
            reach = Math.Max(reach, Reach(below));
        }

        Cross(layers);
        layers.Line(Lines(layers, new(reach + Air, 0), new(reach + (3 * Air), 0)));
        layers.Words($"{ring.Ring.Name}{(below is null ? "" : $"\non {below.Ring.Name}")}", new(0, -reach - (2 * Air)));
        string dashed = below is null ? "" : " Dashed: the ring below.";
        return new(TemplateKind.Stack, $"{ring.Ring.Name}: stacking circles", $"Circles and joints where the ring stands in the stack.{dashed} The short stroke outside is the mark that every ring's stroke must meet.", layers.Together());
    }

    /// <summary>The plate to glue the ring on.</summary>
    public static Template? Plate(RingPlan ring)
    {
        ImmutableArray<LaidOutline> pieces = LaidOutline.Of(ring);
        if (pieces.IsEmpty) return null;
        Layers layers = new();
        double reach = Reach(ring);
        layers.Cut(Circle(reach + PlateRim)).Cut(Circle(Pin / 2)).Pieces(pieces, whole: true);
        double hole = Math.Min(MostRelief, 0.4 * pieces.Min(p => p.Width));
        if (hole >= LeastRelief)
            foreach (Vector2D at in pieces.Select(p => p.Corners[0])) layers.Cut(Outline.Circle(layers.Place.Point(at), hole / 2));
        Turned(layers, ring);
        layers.Words($"{ring.Ring.Name}, plate", new(0, -reach - (PlateRim / 2)));
        return new(TemplateKind.Plate, $"{ring.Ring.Name}: glue-up plate", "Wax or tape the plate. Lay the pieces on their lines around a pin in the middle; glue that is pressed out runs into the holes.", layers.Together());
    }

    /// <summary>What stands in the gaps of an open ring.</summary>
    public static Template? Spacer(RingPlan ring)
    {
        if (ring.Ring is not OpenRing) return null;
        ImmutableArray<LaidOutline> pieces = LaidOutline.Of(ring);
        if (pieces.Length < 2) return null;
        double turn = (Math.PI / 2) - ((pieces[0].Middle + pieces[1].Middle) / 2);
        Vector2D[] gap = [pieces[0].Corners[2], pieces[0].Corners[1], pieces[1].Corners[0], pieces[1].Corners[3]];
        Layers layers = new();
        layers.Cut(layers.Place.Polygon(gap.Select(p => p.Rotated(turn)))).Words($"{ring.Ring.Name}\nspacer", new(0, gap.Max(p => p.Length) + 9));
        return new(TemplateKind.Spacer, $"{ring.Ring.Name}: gap spacer", $"One for every gap, {ring.Ring.Around} in all, waxed: they keep the segments apart while they are glued.", layers.Together());
    }

    /// <summary>Radii to be turned, the outer first.</summary>
    private static IEnumerable<double> Radii(RingPlan ring)
    {
        yield return ring.Ring.Outside.Millimetres / 2;
        Length? inside = ring.Ring is WedgeDisc disc ? disc.Bore : (ring.Ring as IHollowRing)?.InnerDiameter;
        if (inside is Length known && known.Millimetres > 0) yield return known.Millimetres / 2;
    }

    private static bool Wood(Layers layers, RingPlan ring)
    {
        if (Joints(layers, ring, reference: false)) return true;
        if (ring.Find("round") is not Figure round) return false;
        layers.Cut(Circle(round.Value / 2));
        return true;
    }

    private static bool Joints(Layers layers, RingPlan ring, bool reference)
    {
        ImmutableArray<LaidOutline> pieces = LaidOutline.Of(ring);
        if (pieces.IsEmpty) return false;
        layers.Pieces(pieces, whole: true, reference);
        return true;
    }

    private static double Reach(RingPlan ring) => LaidOutline.Of(ring).SelectMany(p => p.Corners).Select(c => c.Length).Append(Radii(ring).First()).Max();

    private static void Turned(Layers layers, RingPlan ring)
    {
        foreach (double radius in Radii(ring)) layers.Reference(Circle(radius));
    }

    private static void Cross(Layers layers)
    {
        const double Arm = 4;
        layers.Line(Lines(layers, new(-Arm, 0), new(Arm, 0))).Line(Lines(layers, new(0, -Arm), new(0, Arm)));
    }

    private static double Turn(double angle) => ((angle % (2 * Math.PI)) + (2 * Math.PI) + 1e-9) % (2 * Math.PI);

    private static Outline Circle(double radius) => Outline.Circle(Vector2D.Zero, radius);

    private static Outline Lines(Layers layers, Vector2D from, Vector2D to) => Outline.Line(layers.Place.Point(from), layers.Place.Point(to));
}
