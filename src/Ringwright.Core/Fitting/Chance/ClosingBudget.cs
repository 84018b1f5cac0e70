using System.Collections.Immutable;
using MathNet.Numerics.Distributions;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Ringwright.Core.Rings;

namespace Ringwright.Core.Fitting;

/// <summary>
/// Where a ring's closing error comes from in a given shop, in closed form: cut to cut, setting the fences, uneven sanding,
/// and a constant bias. The three scatter independently, so their variances add; E is normal.
/// </summary>
/// <param name="Wedges">Wedges in the ring, N.</param>
/// <param name="Mean">Mean of E = 2π − sum of wedge angles, rad: −2 N times the bias of a cut.</param>
/// <param name="FromCuts">Variance from cut to cut, rad²: (4 N − 2 runs) σ² with shared cuts, 2 N σ² for faces trued one by one.</param>
/// <param name="FromSetting">Variance from setting the fences, rad²: N² times 2 s² for two fences, 4 s² for one.</param>
/// <param name="FromSanding">Variance from uneven sanding, rad²: 2 N times (unevenness over the face's length)².</param>
/// <param name="Limit">Largest |E| that still closes, rad: g/R, since joint by joint all error gathers in the last one.</param>
public readonly record struct ClosingBudget(int Wedges, double Mean, double FromCuts, double FromSetting, double FromSanding, double Limit)
{
    /// <summary>Variance of E, rad².</summary>
    public double Variance => FromCuts + FromSetting + FromSanding;

    /// <summary>Standard deviation of E, rad.</summary>
    public double Sd => Math.Sqrt(Variance);

    /// <summary>Chance that the ring closes: P(|E| ≤ <see cref="Limit"/>).</summary>
    public double Chance
    {
        get
        {
            double sd = Sd;
            if (sd == 0) return Math.Abs(Mean) <= Limit ? 1 : 0;
            return Math.Clamp(Normal.CDF(0, 1, (Limit - Mean) / sd) - Normal.CDF(0, 1, (-Limit - Mean) / sd), 0, 1);
        }
    }

    /// <summary>The budget once a test half has corrected the fences: what is constant in all cuts is gone, what scatters stays.</summary>
    public ClosingBudget Corrected => this with { Mean = 0, FromSetting = 0 };

    /// <summary>The budget of a ring of <paramref name="glued"/> wedges from <paramref name="boards"/> boards.</summary>
    public static ClosingBudget Of(WedgeGeometry glued, int boards, Shop shop)
    {
        int n = glued.Segments;
        CutRuns runs = Runs(n, boards, shop.Sled.Kind);
        double sd = shop.Hands.AngleSd.Radians;
        double setting = new FenceSetting(shop.Hands.SettingSd.Radians, Fences(shop.Sled.Kind)).WedgeVariance;
        double turn = SandingTurn(glued, shop);
        return new(n, -2.0 * n * shop.Hands.AngleBias.Radians, runs.VarianceFactor * sd * sd, (double)n * n * setting, 2.0 * n * turn * turn, shop.Wanted.JointGap.Millimetres / glued.OuterCorner);
    }

    /// <summary>
    /// The budget of a ring whose wedges are sawn in batches: a fence is set anew for each angle, so its error is common to the
    /// wedges of that angle only. Spacers of even thickness turn nothing.
    /// </summary>
    /// <param name="batches">The batches.</param>
    /// <param name="woods">What is needed for them.</param>
    /// <param name="limit">Largest |E| that still closes, rad.</param>
    /// <param name="shop">The shop.</param>
    public static ClosingBudget Of(ImmutableArray<WedgeBatch> batches, ImmutableArray<WoodNeed> woods, double limit, Shop shop)
    {
        int n = batches.Sum(b => b.Places.Length);
        double sd = shop.Hands.AngleSd.Radians;
        double setting = new FenceSetting(shop.Hands.SettingSd.Radians, Fences(shop.Sled.Kind)).WedgeVariance;
        return new(n, -2.0 * n * shop.Hands.AngleBias.Radians, CutFactor(batches, woods, shop) * sd * sd, SettingFactor(batches) * setting, SandingVariance(batches, shop), limit);
    }

    /// <summary>The budget of a planned ring whose joints close.</summary>
    public static ClosingBudget Of(RingPlan plan, Shop shop)
    {
        ArgumentNullException.ThrowIfNull(plan);
        if (plan.Stave is { } stave) return StaveClosing.Of(plan, stave, shop);
        return plan.Batches.Length == 1 && plan.Spacers.IsEmpty
            ? Of(plan.Glued, RunsOf(plan), shop)
            : Of(plan.Batches, plan.Woods, plan["closing-limit"].Value, shop);
    }

    /// <summary>Runs of wedges of a ring of equal ones: one for each board; with wood left out between wedges each has both its cuts to itself.</summary>
    public static int RunsOf(RingPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return plan.Strip.Slip > 0 ? plan.Ring.Around : plan.Woods.Sum(w => w.Boards);
    }

    /// <summary>The factor of a cut's variance: each batch's own, added up.</summary>
    public static double CutFactor(ImmutableArray<WedgeBatch> batches, ImmutableArray<WoodNeed> woods, Shop shop) =>
        batches.Select((b, i) => Runs(b.Places.Length, woods.Where(w => w.Batch == i).Sum(w => w.Boards), shop.Sled.Kind).VarianceFactor).Sum();

    /// <summary>The factor of a wedge's variance from setting: wedges of one angle squared, added up.</summary>
    public static double SettingFactor(ImmutableArray<WedgeBatch> batches) =>
        batches.GroupBy(b => b.Glued.HalfAngle).Sum(g => Math.Pow(g.Sum(b => b.Places.Length), 2));

    /// <summary>Variance of E from uneven sanding, rad².</summary>
    public static double SandingVariance(ImmutableArray<WedgeBatch> batches, Shop shop) =>
        batches.Sum(b => 2.0 * b.Places.Length * Math.Pow(SandingTurn(b.Glued, shop), 2));

    /// <summary>Fences that are set: one, unless the sled has two.</summary>
    public static int Fences(SledKind kind) => kind == SledKind.TwoFences ? 2 : 1;

    /// <summary>How the wedges share cuts: neighbours from one board do, faces trued on the sander do not.</summary>
    public static CutRuns Runs(int wedges, int boards, SledKind kind) => kind == SledKind.DiscSander
        ? CutRuns.IndependentFaces(wedges)
        : new(wedges, Math.Clamp(boards, 1, wedges));

    /// <summary>
    /// By how much uneven hand sanding turns one face, as standard deviation, rad: unevenness over the face's length w / cos a.
    /// 0 where nothing is sanded by hand or faces are trued on a sander.
    /// </summary>
    public static double SandingTurn(WedgeGeometry glued, Shop shop) =>
        shop.Sled.Kind == SledKind.DiscSander || shop.Sanding.PerFace.Millimetres == 0
            ? 0
            : shop.Sanding.Unevenness.Millimetres / glued.FaceLength;
}
