using System.Collections.Immutable;
using Ringwright.Core.Geometry;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Ringwright.Core.Rings;
using Ringwright.Core.Sawing;

namespace Ringwright.Core.Fitting;

/// <summary>
/// Staves at the saw. Leaning ones are sawn across panels whose ends slant by the lean, mitre and blade tilted, the panel turned
/// over between cuts. Upright ones are the same without mitre: strips ripped from a board, each crosscut into staves that share its
/// cuts; the rip fence guides the board over its whole length, so the mitre has no error there.
/// </summary>
internal static class StaveJobs
{
    /// <summary>One row of staves: a panel, or the strips of a board seen at one row.</summary>
    public static SawJob Job(RingPlan plan, StaveGeometry glued, Shop shop, double length, int staves, ulong seed, (double Mitre, double Tilt) errors, ErrorCause causes)
    {
        bool sander = shop.Sled.Kind == SledKind.DiscSander;
        double removal = shop.Sanding.PerFace.Millimetres;
        if (glued.IsUpright) errors = (0, errors.Tilt);
        return new(new BoardBlank(length, glued.Length, glued.Thickness) { EdgeSlant = Math.Abs(glued.Lean) }, Setup(plan, glued, shop, sander ? (0, 0) : errors, causes), staves)
        {
            Variation = VariationOf(glued, shop, causes),
            Sander = sander ? SanderOf(glued, errors, shop, causes) : null,
            Sanding = sander ? Sawing.Sanding.None : Sawing.Sanding.Both(new(removal, removal)),
            Seed = seed,
        };
    }

    /// <summary>All staves in their places, each wood from its own boards, in the order they fall.</summary>
    public static ImmutableArray<SawnWedge> Saw(RingPlan plan, StaveGeometry glued, Shop shop, ulong seed, (double, double) errors, ErrorCause causes)
    {
        var places = new SawnWedge[plan.Layout.Length];
        for (int w = 0; w < plan.Woods.Length; w++)
        {
            IEnumerable<int> where = Enumerable.Range(0, places.Length).Where(p => string.Equals(plan.Layout[p].Wood, plan.Woods[w].Wood, StringComparison.OrdinalIgnoreCase));
            foreach ((int place, SawnWedge stave) in where.Zip(Pile(plan, glued, shop, plan.Woods[w].Needed, seed + (1000UL * (ulong)(w + 1)), errors, causes))) places[place] = stave;
        }

        return [.. places];
    }

    /// <summary>
    /// The staves as they stand in the dry ring, their sections at the ring's two ends. Pressed together, wrong angles make the ring
    /// lean a little more or less, until the joints stand upright on average; what differs from stave to stave stays as gaps above or below.
    /// </summary>
    public static ImmutableArray<FitWedge> Lay(ImmutableArray<SawnWedge> staves, StaveGeometry glued)
    {
        Frame3D planned = InRing(glued, glued.Lean);
        Vector3D inwards = default;
        foreach (SawnWedge stave in staves) inwards += ToRing(stave, glued, planned, stave.PlusFace) + ToRing(stave, glued, planned, stave.MinusFace);
        Frame3D standing = InRing(glued, glued.Lean + Math.Atan2(-inwards.Z, -inwards.X));
        return [.. staves.Select(stave => Lay(stave.Solid.ToOuter(stave.InBoard).ToLocal(InBoard(stave, glued)).ToOuter(standing), glued))];
    }

    private static FitWedge Lay(ConvexSolid standing, StaveGeometry glued) => new(Section(standing, glued.Bottom), Section(standing, glued.Top));

    // Without its own ends, which lie in the plane of the section but for the little the ring leans more or less.
    private static ConvexPolygon Section(ConvexSolid standing, double z)
    {
        double reach = 2 * standing.Corners.ToArray().Max(c => Math.Abs(c.X) + Math.Abs(c.Y));
        var section = ConvexPolygon.Rectangle(-reach, -reach, 2 * reach, 2 * reach);
        for (int face = 0; face < standing.FaceCount; face++)
            if (standing.Tags[face] is not (FaceTag.Edge1 or FaceTag.Edge2)) section = section.Clip(standing.Planes[face].Trace(z));
        return section;
    }

    private static Vector3D ToRing(SawnWedge stave, StaveGeometry glued, Frame3D ring, HalfSpace face) =>
        ring.TurnToOuter(InBoard(stave, glued).TurnToLocal(stave.InBoard.TurnToOuter(face.Normal)));

    private static IEnumerable<SawnWedge> Pile(RingPlan plan, StaveGeometry glued, Shop shop, int needed, ulong seed, (double, double) errors, ErrorCause causes)
    {
        int columns = (int)plan["staves-across"].Value, rowsPerBoard = (int)plan["rows-per-board"].Value;
        for (int row = 0; row * columns < needed; row++)
        {
            int staves = Math.Min(columns, needed - (row * columns)), cuts = glued.IsUpright ? row / rowsPerBoard : row;
            SawRun run = SawSimulator.Run(Job(plan, glued, shop, RingJobs.EnoughFor(plan, staves), staves, seed + (ulong)cuts, errors, causes) with { FinishSeed = seed + (ulong)row });
            if (run.Wedges.Length < staves) throw new BadInputException($"ring {plan.Ring.Name}", run.Explanation.TrimEnd('.'), "a wider stop or smaller errors are needed");
            foreach (SawnWedge stave in run.Wedges) yield return stave;
        }
    }

    // The foremost corner, at the stop, is the outer face's; at the table the blade meets the inner face: between them lies the mean width.
    private static SawSetup Setup(RingPlan plan, StaveGeometry glued, Shop shop, (double Mitre, double Tilt) errors, ErrorCause causes)
    {
        StaveGeometry sawn = shop.Sled.Kind == SledKind.DiscSander ? glued : glued.BeforeSanding(shop.Sanding.PerFace.Millimetres);
        double held = glued.IsUpright ? shop.Boards.Length.Millimetres : glued.Length, lean = causes.HasFlag(ErrorCause.Lean) ? shop.Saw.Lean.Radians : 0;
        return new(new FlippedMitre(new(glued.Mitre, errors.Mitre)), sawn.Width(sawn.MiddleApothem(sawn.WideEnd)), shop.Saw.Kerf.Millimetres)
        {
            BladeTilt = glued.Tilt,
            BladeLean = lean - errors.Tilt,
            SquaringTrim = shop.Saw.EndTrim.Millimetres,
            FirstOffcutTip = RingJobs.OffcutTip,
            HoldingLength = StaveBoard.RestAcross(held, shop.Saw.HoldingLength.Millimetres),
        };
    }

    private static Variation VariationOf(StaveGeometry glued, Shop shop, ErrorCause causes)
    {
        Variation all = RingJobs.VariationOf(shop, causes);
        Variation guided = glued.IsUpright ? all with { SeatingMean = 0, SeatingDeviation = 0 } : all;
        return guided with { LeanDeviation = all.SeatingDeviation, SandingUnevennessAcross = all.SandingUnevenness };
    }

    // Both faces with the inner side on the table, each at a fence of its own hand; at the table the wood left on is wider by the tilt.
    private static DiscSander SanderOf(StaveGeometry glued, (double Mitre, double Tilt) errors, Shop shop, ErrorCause causes)
    {
        double oversize = shop.Sanding.PerFace.Millimetres / Math.Cos(glued.Tilt);
        DiscSander sander = RingJobs.SanderOf(glued.Mitre, errors.Mitre, oversize, shop, causes) with
        {
            TurnedOver = false,
            TableLean = -glued.Tilt - errors.Tilt,
            LeanDeviation = causes.HasFlag(ErrorCause.CutToCut) ? shop.Hands.AngleSd.Radians : 0,
            RimEdge = glued.Width(glued.InnerApothem(glued.WideEnd)),
        };
        return glued.IsUpright ? sander with { SeatingMean = 0, SeatingDeviation = 0 } : sander;
    }

    // x to the wider end, z out of the outer face, which was up as it fell; from the middle of the panel.
    private static Frame3D InBoard(SawnWedge stave, StaveGeometry glued)
    {
        var wide = new Vector3D(0, stave.Marks.RimEdge == BoardEdge.Edge1 ? -1 : 1, 0);
        var outward = new Vector3D(0, 0, stave.Marks.Up == BoardSide.Top ? 1 : -1);
        double middle = (glued.Length - (glued.Thickness * Math.Tan(Math.Abs(glued.Lean)))) / 2;
        return new(wide, outward.Cross(wide), outward, new(stave.InBoard.Origin.X, middle, glued.Thickness / 2));
    }

    private static Frame3D InRing(StaveGeometry glued, double lean)
    {
        (double sin, double cos) = Math.SinCos(lean);
        Vector3D wide = (glued.Lean >= 0 ? 1 : -1) * new Vector3D(sin, 0, cos), outward = new(cos, 0, -sin);
        double half = (glued.Bottom + glued.Top) / 2;
        return new(wide, outward.Cross(wide), outward, new(glued.MiddleApothem(half), 0, half));
    }
}
