using CsCheck;
using Ringwright.Core.Fitting;

namespace Ringwright.Core.Tests.Fitting;

/// <summary>Records update the whole of the hands; their order and grouping do not matter.</summary>
public class LearningHandsTests
{
    private static readonly Gen<double> Error = Gen.Double[-0.01, 0.01];

    private static readonly Gen<RunRecord> Record = Gen.Select(
        Error.Array[0, 6].Array[0, 3],
        Gen.Select(Gen.Int[4, 20], Gen.Int[1, 4], Error, (n, runs, e) => new RingClosure(new(n, runs), e)).Array[0, 2],
        Gen.Int[0, 40],
        Gen.Int[0, 40],
        Gen.Double[0.1, 3],
        (errors, closures, a, b, minutes) => new RunRecord
        {
            WedgeErrors = errors,
            Closures = closures,
            PiecesSawn = Math.Max(a, b),
            PiecesLost = Math.Min(a, b),
            Cuts = a,
            CuttingMinutes = a * minutes,
            FacesSanded = b,
            SandingMinutes = b * minutes / 2,
        });

    [Fact]
    public void Order_of_records_does_not_matter() =>
        Gen.Select(Record.Array[2, 6], Gen.Double[0, 2]).Sample((records, ratio) =>
        {
            HandBelief start = Start(ratio);
            Same(start.Update(records), start.Update(records.Reverse()));
        });

    [Fact]
    public void One_by_one_equals_all_in_one() =>
        Gen.Select(Record, Record).Sample((first, second) =>
        {
            RunRecord both = new()
            {
                WedgeErrors = [.. first.WedgeErrors, .. second.WedgeErrors],
                Closures = [.. first.Closures, .. second.Closures],
                PiecesSawn = first.PiecesSawn + second.PiecesSawn,
                PiecesLost = first.PiecesLost + second.PiecesLost,
                Cuts = first.Cuts + second.Cuts,
                CuttingMinutes = first.CuttingMinutes + second.CuttingMinutes,
                FacesSanded = first.FacesSanded + second.FacesSanded,
                SandingMinutes = first.SandingMinutes + second.SandingMinutes,
            };
            Same(HandBelief.Unrecorded.Update(first).Update(second), HandBelief.Unrecorded.Update(both));
        });

    [Fact]
    public void Empty_record_teaches_nothing() => Assert.Equal(HandBelief.Unrecorded, HandBelief.Unrecorded.Update(new RunRecord()));

    public static TheoryData<RunRecord, string> Impossible => new()
    {
        { new() { WedgeErrors = [[0.001, 20]] }, "run 1, wedge 2" },
        { new() { WedgeErrors = [[double.NaN]] }, "run 1, wedge 1" },
        { new() { Closures = [new(new(0, 0), 0)] }, "wedges in the ring" },
        { new() { Closures = [new(new(4, 1), double.PositiveInfinity)] }, "ring 1" },
        { new() { PiecesSawn = 3, PiecesLost = 4 }, "pieces lost" },
        { new() { PiecesSawn = -1 }, "pieces sawn" },
        { new() { Cuts = 10 }, "timed cuts" },
        { new() { SandingMinutes = 10 }, "timed sanded faces" },
        { new() { Cuts = 1, CuttingMinutes = -1 }, "minutes for the timed cuts" },
    };

    [Theory]
    [MemberData(nameof(Impossible))]
    public void Impossible_records_are_refused_with_their_place(RunRecord record, string where) =>
        Assert.StartsWith(where, Assert.Throws<BadInputException>(() => HandBelief.Unrecorded.Update(record)).Message, StringComparison.Ordinal);

    [Fact]
    public void Sentences_say_from_how_many_and_what_the_start_still_weighs()
    {
        Assert.All(LearnedSentences.Of(HandBelief.Unrecorded), text => Assert.Contains("nothing recorded yet", text, StringComparison.Ordinal));
        RunRecord record = new()
        {
            WedgeErrors = [[0.001, 0.002, 0.0015, 0.001, 0.002]],
            PiecesSawn = 20,
            PiecesLost = 3,
            Cuts = 30,
            CuttingMinutes = 20,
            FacesSanded = 1,
            SandingMinutes = 0.4,
        };
        Assert.Equal(
            [
                "Angle of a cut: bias +0.021° (-0.024° to +0.067°), standard deviation 0.079° (0.053° to 0.117°); learned from 5 wedges, the starting belief still weighs 50 % in the bias and 55 % in the standard deviation.",
                "Loss: 10.0 % of wedges (2.9 to 20.9 %), 3 of 20 lost; learned from 20 wedges, the starting belief still weighs 50 %.",
                "Time per cut: 0.63 min (0.54 to 0.73); learned from 30 cuts, the starting belief still weighs 25 %.",
                "Time per sanded face: 0.49 min (0.37 to 0.66); learned from 1 sanded face, the starting belief still weighs 91 %.",
            ],
            LearnedSentences.Of((HandBelief.Unrecorded with { Angle = new(new(Bias: 0, BiasWorth: 6, Sd: Math.PI / 1800, SdWorth: 6)) }).Update(record)));
    }

    private static HandBelief Start(double fenceRatio) =>
        HandBelief.Unrecorded with { Angle = new(HandBelief.Unrecorded.Angle.Prior with { FenceVarianceRatio = fenceRatio }) };

    /// <summary>Equal but for the rounding of sums taken in another order.</summary>
    private static void Same(HandBelief a, HandBelief b)
    {
        Assert.Equal(a.Angle.Bias, b.Angle.Bias, 1e-12);
        Assert.Equal(a.Angle.Sd, b.Angle.Sd, 1e-12);
        Assert.Equal(a.Angle.BiasWorth, b.Angle.BiasWorth, 1e-9);
        Assert.Equal(a.Angle.SdWorth, b.Angle.SdWorth);
        Assert.Equal(a.Loss, b.Loss);
        Assert.Equal(a.Cutting.MinutesPerPiece, b.Cutting.MinutesPerPiece, 1e-12);
        Assert.Equal(a.Sanding.MinutesPerPiece, b.Sanding.MinutesPerPiece, 1e-12);
    }
}
