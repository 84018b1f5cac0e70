using Ringwright.Core.Fitting;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;

namespace Ringwright.Bench;

/// <summary>Rings of unequal wedges for the dry fit; open ones differ by a few hundredths of a millimetre at the rim, of a degree in angle.</summary>
internal static class FitRings
{
    internal const double Radius = 60;
    private const double Wider = 0.03;
    private const double Turned = 0.0008;

    /// <summary>An open ring of depth 15 mm.</summary>
    internal static FitWedge[] Ring(int wedges)
    {
        var random = new Random(1);
        double Error(double size) => ((2 * random.NextDouble()) - 1) * size;
        double scale = Math.Min(1, 36.0 / wedges); // narrow wedges need finer hands
        return
        [
            .. Enumerable.Range(0, wedges).Select(_ =>
            {
                double rim = (2 * Radius * Math.Tan(Math.PI / wedges)) + Error(scale * Wider);
                return FitWedge.FromCaliper(rim, rim - (30 * Math.Tan((Math.PI / wedges) + Error(scale * Turned))), 15);
            }),
        ];
    }

    /// <summary>Discs of wedges sawn to a point in simulation, so that a narrow wedge ends short of the centre and a wide one in a flat.</summary>
    internal static FitWedge[][] Discs(int wedges, int discs)
    {
        var disc = new WedgeDisc { Name = "Disc", Segments = wedges, Diameter = Length.FromMillimetres(Radius), Thickness = Length.FromMillimetres(20), Tip = default, Woods = ["maple"] };
        RingPlan plan = Planner.Plan(new() { Name = "Bench", Rings = [disc] }, Shop.Starting).Rings[0];
        double thickness = plan["board-thickness"].Value;
        return [.. Enumerable.Range(1, discs).Select(seed => (FitWedge[])[.. RingJobs.Saw(plan, Shop.Starting, (ulong)seed, ErrorCause.All).Select(w => RingJobs.Lay(w, thickness))])];
    }
}
