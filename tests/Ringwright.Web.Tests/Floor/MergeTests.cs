using CsCheck;
using Ringwright.Web.Floor;

namespace Ringwright.Web.Tests.Floor;

/// <summary>Two tablets and the bench count the same ring, each away at times: every tap counts, once.</summary>
public class MergeTests
{
    private const string Job = "7/1", Cut = "1/maple";

    // What happens: a tap at a tablet, a message that arrives, one that arrives while its answer is lost, the bench's own tap.
    private static readonly Gen<(int What, int Who, int Kind, int Drift)[]> Days =
        Gen.Select(Gen.Int[0, 4], Gen.Int[0, 1], Gen.Int[0, 9], Gen.Int[-50, 50]).Array[1, 60];

    [Fact]
    public void No_tap_is_lost_or_counted_twice() => Days.Sample(day =>
    {
        var bench = FloorState.Empty;
        Tablet[] tablets = [new("a"), new("b")];
        var taken = new HashSet<string>();
        var tapped = new List<Mark>();
        int time = 1000;
        foreach ((int what, int who, int kind, int drift) in day)
        {
            time += 10;
            if (what <= 1) tapped.Add(tablets[who].Tap(kind, time + (who * drift), taken));
            else if (what == 2) bench = tablets[who].Send(bench, answered: true);
            else if (what == 3) bench = tablets[who].Send(bench, answered: false);
            else
            {
                bench = bench.Mark(Job, Cut, MarkKind.Sawn, DateTimeOffset.FromUnixTimeMilliseconds(time));
                tapped.Add(bench.MarksOf(Job)[^1]);
            }
        }

        // Back in reach, each sends and hears twice.
        for (int i = 0; i < 4; i++) bench = tablets[i % 2].Send(bench, answered: true);
        CutTally all = CutTally.Of(bench.MarksOf(Job), Cut);
        Assert.Equal(tapped.Count, bench.MarksOf(Job).Length);
        Assert.Equal(tapped.Count(m => m.Kind == MarkKind.Sawn && !taken.Contains(m.Id)), all.Good);
        Assert.Equal(tapped.Count(m => m.Kind == MarkKind.Lost && !taken.Contains(m.Id)), all.Lost);
        foreach (Tablet tablet in tablets) Assert.Equal(all, CutTally.Of(tablet.Marks, Cut));
        Assert.Equal(all, CutTally.Of(bench.MarksOf(Job).Reverse(), Cut));
    }, iter: 400);

    // As the page at the saw: marks are kept, those the bench has not confirmed are sent, its answer is taken in.
    private sealed class Tablet(string name)
    {
        private readonly HashSet<string> _sent = [];
        private int _count;

        public List<Mark> Marks { get; } = [];

        public Mark Tap(int kind, int time, HashSet<string> taken)
        {
            long at = Math.Max(time, Marks.Select(m => m.At + 1).DefaultIfEmpty(0).Max());
            Mark? last = CutTally.Of(Marks, Cut).Last;
            bool undo = kind >= 8 && last is not null;
            var mark = new Mark($"{name}{++_count}", Cut, undo ? MarkKind.Undone : kind >= 6 ? MarkKind.Lost : MarkKind.Sawn, at, undo ? last!.Id : null);
            if (undo) taken.Add(last!.Id);
            Marks.Add(mark);
            return mark;
        }

        public FloorState Send(FloorState bench, bool answered)
        {
            FloorState now = bench.Add(Job, Marks.Where(m => !_sent.Contains(m.Id)));
            if (!answered) return now;
            Marks.AddRange(now.MarksOf(Job).ExceptBy(Marks.Select(m => m.Id), m => m.Id));
            _sent.UnionWith(now.MarksOf(Job).Select(m => m.Id));
            return now;
        }
    }
}
