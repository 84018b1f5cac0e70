using System.Collections.Immutable;
using Ringwright.Core.Pieces;
using Ringwright.Core.Sawing;

namespace Ringwright.Core.Planning;

/// <summary>How one ring out of a board comes out over many simulated boards. Lengths in mm.</summary>
/// <param name="Ring">The ring as planned.</param>
/// <param name="OuterReserve">Wood outside the turned size at its leaner face: what 1 in 20 boards falls below, and the middle one.</param>
/// <param name="InnerReserve">The same inside.</param>
/// <param name="Chance">Chance that the turned size is whole in it, outside and inside, at both faces.</param>
public sealed record BoardRingOutcome(SawnBoardRing Ring, (double Low, double Middle) OuterReserve, (double Low, double Middle) InnerReserve, double Chance);

/// <summary>
/// Rings sawn out of a flat board with the errors of a shop: the table's tilt (set once for each different tilt), the hand
/// along the line (once a cut), the kerf. The cut follows the line on the wide face, which is up; an error of the tilt
/// shows at the narrow one. Cones around one axis, as <see cref="BoardGroupPlan"/> has them.
/// </summary>
/// <param name="Boards">Boards simulated.</param>
/// <param name="Chance">Chance that every ring of the board holds its turned size.</param>
/// <param name="Rings">The rings, the largest first.</param>
public sealed record BoardCutForecast(int Boards, double Chance, ImmutableArray<BoardRingOutcome> Rings)
{
    private const double LowShare = 0.05;

    /// <summary>Saws <paramref name="boards"/> boards.</summary>
    /// <exception cref="BadInputException">Not 1 to 1,000,000 boards.</exception>
    public static BoardCutForecast Of(BoardGroupPlan board, Shop shop, int boards, ulong seed)
    {
        ArgumentNullException.ThrowIfNull(board);
        ArgumentNullException.ThrowIfNull(shop);
        if (boards is < 1 or > 1_000_000) throw new BadInputException("boards", $"{boards} cannot be simulated", "1 to 1000000 can");
        int n = board.Rings.Length, whole = 0;
        var outer = new double[n][];
        var inner = new double[n][];
        var good = new int[n];
        for (int i = 0; i < n; i++) (outer[i], inner[i]) = (new double[boards], new double[boards]);
        for (int run = 0; run < boards; run++)
        {
            BoardCut[] cuts = Saw(board, shop, new(seed + (ulong)run));
            bool all = true;
            for (int i = 0; i < n; i++)
            {
                (outer[i][run], inner[i][run]) = Reserves(board.Rings[i], i == 0 ? null : cuts[i - 1], cuts[i], shop);
                bool holds = outer[i][run] >= 0 && inner[i][run] >= 0;
                if (holds) good[i]++;
                all &= holds;
            }

            if (all) whole++;
        }

        return new(boards, whole / (double)boards, [.. board.Rings.Select((ring, i) => new BoardRingOutcome(ring, Shares(outer[i]), Shares(inner[i]), good[i] / (double)boards))]);
    }

    /// <summary>The cuts of one board with its errors.</summary>
    internal static BoardCut[] Saw(BoardGroupPlan board, Shop shop, Draws draws)
    {
        double[] tilts = [.. board.Tilts];
        return [.. board.Rings.Select((ring, i) => Cut(ring.Inside, board, shop, draws, Array.IndexOf(tilts, ring.Inside.Tilt), i))];
    }

    private static BoardCut Cut(BoardCut planned, BoardGroupPlan board, Shop shop, Draws draws, int setting, int cut)
    {
        double tilt = planned.Tilt + draws.Normal(Draws.Source.Setting, setting, 0, shop.Hands.SettingSd.Radians);
        double line = planned.InsideWide + draws.Normal(Draws.Source.Stop, cut, 0, shop.Hands.StopSd.Millimetres);
        double kerf = Math.Max(0, draws.Normal(Draws.Source.Kerf, cut, board.Kerf, shop.Saw.KerfSd.Millimetres));
        double step = board.Thickness * Math.Tan(tilt);
        return new(tilt, step, kerf / Math.Cos(tilt), line - step);
    }

    // What is left beyond the turned size, at the leaner of the two faces.
    private static (double Outer, double Inner) Reserves(SawnBoardRing ring, BoardCut? outside, BoardCut inside, Shop shop)
    {
        WantedFaces wanted = ring.Wanted;
        double q = WantedFaces.Allowance(ring.Ring, shop);
        double wide = outside?.OutsideWide ?? ring.Wide.Outer, narrow = outside?.OutsideNarrow ?? ring.Narrow.Outer;
        return (Math.Min(wide - wanted.OuterWide, narrow - wanted.OuterNarrow) + q, Math.Min(wanted.InnerWide - inside.InsideWide, wanted.InnerNarrow - inside.InsideNarrow) + q);
    }

    private static (double Low, double Middle) Shares(double[] values)
    {
        Array.Sort(values);
        return (values[(int)(LowShare * (values.Length - 1))], values[values.Length / 2]);
    }
}
