using MathNet.Numerics.Distributions;
using Ringwright.Core.Documents;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;

namespace Ringwright.Core.Tests.Planning;

public class BoardCutForecastTests
{
    private static readonly Piece Bowl = DocumentJson.ReadPiece(File.ReadAllText(Path.Combine(SolutionFolder.Path, "examples/board-bowl.json")));

    private static Shop Exact => Shop.Starting with
    {
        Saw = Shop.Starting.Saw with { KerfSd = default },
        Hands = Shop.Starting.Hands with { SettingSd = default, StopSd = default },
    };

    [Fact]
    public void Without_errors_the_rings_are_those_of_the_plan_and_keep_their_allowance()
    {
        BoardGroupPlan board = Board(Exact);
        BoardCutForecast forecast = BoardCutForecast.Of(board, Exact, 3, 1);
        Assert.Equal(1, forecast.Chance);
        foreach (BoardRingOutcome ring in forecast.Rings)
        {
            double q = (ring.Ring.Ring.Allowance ?? Exact.Wanted.Allowance).Millimetres;
            Assert.True(ring.OuterReserve.Low >= q - 1e-9 && ring.InnerReserve.Low >= q - 1e-9, ring.Ring.Ring.Name);
            Assert.Equal(ring.OuterReserve.Low, ring.OuterReserve.Middle);
        }
    }

    // Only the tilt errs: at the narrow face the inside moves by T (tan(θ + δ) − tan θ), so the chance is that of a normal δ.
    [Fact]
    public void A_tilt_that_errs_gives_the_chance_of_the_closed_form()
    {
        Shop shop = Exact with { Hands = Exact.Hands with { SettingSd = Angle.FromDegrees(4) } };
        BoardGroupPlan board = Board(Exact);
        SawnBoardRing last = board.Rings[^1];
        BoardCutForecast forecast = BoardCutForecast.Of(board, shop, 40_000, 7);
        // The last ring's inside: the planned reserve at the narrow face is used up when the step shrinks by as much; the wide face stays.
        double reserve = forecast.Rings[^1].InnerReserve.Middle;
        Assert.True(reserve > 0);
        double q = (last.Ring.Allowance ?? shop.Wanted.Allowance).Millimetres;
        double narrow = (last.Ring.InnerDiameter!.Value.Millimetres / 2) - last.Inside.InsideNarrow;
        double least = Math.Atan(Math.Tan(last.Inside.Tilt) - (narrow / board.Thickness)) - last.Inside.Tilt;
        double expected = 1 - Normal.CDF(0, shop.Hands.SettingSd.Radians, least);
        double innerHolds = Share(board, shop, 40_000, 7, narrow);
        Assert.Equal(expected, innerHolds, 4 * Math.Sqrt(expected * (1 - expected) / 40_000) + 1e-3);
        Assert.True(forecast.Rings[^1].Chance <= innerHolds + 1e-9);
        Assert.True(q > 0);
    }

    [Fact]
    public void The_same_seed_gives_the_same_boards()
    {
        BoardGroupPlan board = Board(Shop.Starting);
        Assert.Equal(BoardCutForecast.Of(board, Shop.Starting, 50, 3).Rings, BoardCutForecast.Of(board, Shop.Starting, 50, 3).Rings);
        Assert.Throws<BadInputException>(() => BoardCutForecast.Of(board, Shop.Starting, 0, 3));
    }

    private static double Share(BoardGroupPlan board, Shop shop, int boards, ulong seed, double narrow)
    {
        BoardCut planned = board.Rings[^1].Inside;
        return Enumerable.Range(0, boards).Count(run => BoardCutForecast.Saw(board, shop, new(seed + (ulong)run))[^1].InsideNarrow - planned.InsideNarrow <= narrow) / (double)boards;
    }

    private static BoardGroupPlan Board(Shop shop) => Planner.Plan(Bowl, shop).Rings.First(r => r.Board is not null).Board!;
}
