using System.Collections.Immutable;
using Ringwright.Core.Sawing;
using Ringwright.Paper.Blocks;
using Ringwright.Paper.Pictures;

namespace Ringwright.Paper.JobSheets;

/// <summary>How the first cut of each ring is judged: the three pictures once, and the numbers ring by ring.</summary>
internal static class FirstCuts
{
    private const double Tall = 42; // of a picture, mm

    public static IEnumerable<IBlock> Of(AllRings rings)
    {
        (RingJob Job, ImmutableArray<TestCut> Cuts)[] all = [.. rings.Jobs.SelectMany(j => j.Batches).Select(j => (j, TestCutPicture.Of(j.Ring))).Where(c => !c.Item2.IsEmpty)];
        if (all.Length == 0) yield break;
        (RingJob job, ImmutableArray<TestCut> cuts) = all[all.Length / 2];
        (Sheets.DrawingScale scale, Columns three) = TestCutTriptych.Of(cuts, job.Style, job.Width, Tall);
        yield return new Section($"The first test cut, here of {Called(job)}, {scale}", three);
        if (all.Length == 1) yield break;
        yield return new Section("The first test cut, ring by ring", new Table(
            [new("Ring"), new("Stop off by", ColumnKind.Numbers), new("Too far: tip", ColumnKind.Numbers), new("Right: tip", ColumnKind.Numbers), new("Not far enough: tip", ColumnKind.Numbers), new("or ends before the edge", ColumnKind.Numbers)],
            AllRings.Rows(all.Select(c => (Called(c.Job), Row(c.Job, c.Cuts))))));
    }

    private static string[] Row(RingJob job, ImmutableArray<TestCut> cuts)
    {
        TestCut Cut(TestCutSetting setting) => cuts.Single(c => c.Setting == setting);
        string Size(double millimetres) => Caliper.Short(job.Style, millimetres);
        TestCut near = Cut(TestCutSetting.NotFarEnough);
        bool ends = near.EndsBeforeFarEdge > 0;
        return
        [
            Size(Math.Abs(near.StopOffset)), Size(Cut(TestCutSetting.TooFar).TipLength), Cut(TestCutSetting.Right).TipLength < 0.005 ? "a point" : Size(Cut(TestCutSetting.Right).TipLength),
            ends ? "–" : Size(near.TipLength), ends ? Size(near.EndsBeforeFarEdge) : "–",
        ];
    }

    private static string Called(RingJob job) => job.Wedge is int wedge ? $"{job.Ring.Ring.Name}, wedge {wedge}" : job.Ring.Ring.Name;
}
