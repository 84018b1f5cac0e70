using System.Collections.Immutable;
using Ringwright.Core.Measures;
using Ringwright.Core.Timber;

namespace Ringwright.Core.Planning;

/// <summary>What moisture does to one ring, in numbers: the worst case of its woods, cuts and seasons.</summary>
internal static class MovementFigures
{
    private const string Handbook = "Wood Handbook FPL-GTR-190, eq. 13-2 and 13-3";
    private const string Wedges = "plane geometry of a wedge that grows across its grain only";
    private const string Stress = "ring closed over a gap, elastic, stiffer around than along the radius; for equal stiffness it is Timoshenko and Goodier's ring with initial stress";

    public static ImmutableArray<Figure> Of(RingPlan plan, MovementVerdict verdict)
    {
        var book = new FigureBook();
        MovementCase worst = verdict.Worst;
        KnowMoisture(worst, book);
        AddSizes(plan, worst, book);
        AddStress(worst, book);
        return book.Figures;
    }

    private static void KnowMoisture(MovementCase worst, FigureBook book)
    {
        book.Know("Mi", "moisture when glued, percent", worst.From, Quantity.Ratio);
        book.Know("Mf", "moisture at home, percent", worst.To, Quantity.Ratio);
        book.Add("moisture-glued", "Moisture when glued, at worst", worst.From / 100, Quantity.Share, "Mi/100", "Mi",
            "Measured in the wood, or what it comes to in the air of the shop; the season that strains the ring most is taken.", Handbook);
        book.Add("moisture-home", "Moisture at home, at worst", worst.To / 100, Quantity.Share, "Mf/100", "Mf",
            "What the wood comes to in the air of the home after some weeks.", Handbook);
    }

    private static void AddSizes(RingPlan plan, MovementCase worst, FigureBook book)
    {
        RingMovement ring = worst.Ring;
        (double width, double thickness) = (PerPercent(worst, ring.Cut), PerPercent(worst, ring.Cut.Other()));
        double change = Math.Min(worst.To, Movement.FibreSaturation) - Math.Min(worst.From, Movement.FibreSaturation);
        book.Know("ΔM", "change of moisture up to 30 percent", change, Quantity.Ratio);
        book.Know("Cw", $"change of the board's width for one percent, {ring.Species.Name}, {CutName(ring.Cut)}: {ring.Species.WidthChange(ring.Cut).Source}", width, Quantity.Ratio);
        book.Know("Ct", $"change of its thickness for one percent: {ring.Species.WidthChange(ring.Cut.Other()).Source}", thickness, Quantity.Ratio);
        bool upright = ring.Body.Grain == SegmentGrain.Upright;
        book.Know("w", "depth of the turned ring", ring.Body.Depth, Quantity.Length);
        book.Add("depth-change", "The ring's depth changes by", ring.Body.Depth * (upright ? thickness : width) * change, Quantity.FineLength, upright ? "w·Ct·ΔM" : "w·Cw·ΔM", upright ? "w Ct ΔM" : "w Cw ΔM",
            "Below 0 it shrinks. Along the grain wood keeps its size, so the way around the ring stays.", Handbook);
        if (!upright)
        {
            book.Know("T", "height of the ring", plan.Ring.Thickness.Millimetres, Quantity.Length);
            book.Add("height-change", "Its height changes by", plan.Ring.Thickness.Millimetres * thickness * change, Quantity.FineLength, "T·Ct·ΔM", "T Ct ΔM",
                "Segments whose boards were sawn differently change differently, and their edges can be felt.", Handbook);
        }

        book.Know("N", "segments around the ring", ring.Body.Segments, Quantity.Count);
        book.Know("a", "half the wedge's angle, π/N", ring.Body.HalfAngle, Quantity.Angle);
        book.Add("opening-wish", "Cut open it would gape by", worst.Gap, Quantity.FineAngle, upright ? "N·(Ct − Cw)·ΔM·sin(2·a)" : "N·Cw·ΔM·sin(2·a)", upright ? "N Ct Cw ΔM a" : "N Cw ΔM a",
            "Each wedge's angle changes when its depth does and its edges do not. Below 0 the ends would overlap: then the joints pull at the hole.", Wedges);
    }

    private static void AddStress(MovementCase worst, FigureBook book)
    {
        RingMovement ring = worst.Ring;
        book.Know("ε", "the gap over a full turn", worst.Closing, Quantity.Ratio);
        book.Know("E", "modulus around the ring, MPa, averaged over the slant of the grain", ring.Stiffness.Around, Quantity.Stress);
        book.Know("k", "root of the modulus around over that along the radius", ring.Unit.K, Quantity.Ratio);
        book.Know("c", "inner over outer radius", ring.Unit.Hole, Quantity.Ratio);
        book.Know("κ", "share of the stress that stays in slowly moving wood", ring.Joint.StressKept, Quantity.Share);
        book.Know("ρ", worst.AtHole ? "where it is read beside the hole, over the outer radius" : "where it is read: the rim", worst.AtHole ? ring.Body.NearHole : 1, Quantity.Ratio);
        book.Know("ρr", "where it is largest, over the outer radius", ring.PeakAt, Quantity.Ratio);
        const string grows = "(1 − c^(k + 1))", falls = "(c^(k + 1) − c^(2·k))", scale = "κ·E·ε/(1 − k^2)", under = "(1 − c^(2·k))";
        double joint = book.Add("joint-pull", worst.AtHole ? "Pull on the joints beside the hole" : "Pull on the joints at the rim", worst.JointPull, Quantity.Stress,
            $"max(0, {scale}·(1 − k·({grows}·ρ^(k − 1) − {falls}·ρ^(-k − 1))/{under}))", "κ E ε k c ρ", "What the glue must hold so that the ring stays closed.", Stress);
        double radial = ring.Joint.StressKept * Math.Max(0, ring.RadialAtPeak * worst.Closing);
        book.Add("wood-pull", "Pull across the grain, along the radius", radial, Quantity.Stress,
            $"max(0, {scale}·(1 − ({grows}·ρr^(k − 1) + {falls}·ρr^(-k − 1))/{under}))", "κ E ε k c ρr", "Wood is weakest across its grain; a drying disc pulls its own middle apart.", Stress);
        book.Know("σ", $"stress on {PartName(worst.Weak)}", worst.Stress, Quantity.Stress);
        book.Know("S", $"what stands it: {Source(worst)}", worst.Strength, Quantity.Stress);
        book.Add("movement-use", "The seasons use of its strength", worst.Use, Quantity.Share, "σ/S", "σ S", "Above 100 % something gives: a joint opens or the wood splits.", Stress);
    }

    private static double PerPercent(MovementCase worst, GrainCut cut) =>
        Movement.PerPercent(worst.Ring.Species.WidthChange(cut).Value, worst.Ring.Species.WidthShrinkage(cut).Value, worst.From, worst.To);

    private static string Source(MovementCase worst) => worst.Weak switch
    {
        WeakPart.Joint => "the shop's joints",
        WeakPart.Split => worst.Ring.Species.TensionAcross.Source,
        _ => worst.Ring.Species.Shear.Source,
    };

    internal static string PartName(WeakPart part) => part switch
    {
        WeakPart.Joint => "a joint",
        WeakPart.Split => "the wood across its grain",
        _ => "the wood beside a joint, along its grain",
    };

    internal static string CutName(GrainCut cut) => cut == GrainCut.FlatSawn ? "flat-sawn" : "quarter-sawn";
}
