using Ringwright.Core.Planning;

namespace Ringwright.Paper.Pictures.Gluing;

/// <summary>
/// A part of a schedule's time laid across the paper. Where the hands do nothing for long, the axis is broken: such a stretch takes the
/// same few millimetres whether it is an hour or a night.
/// </summary>
internal sealed class TimeAxis
{
    /// <summary>Width of a break, mm.</summary>
    public const double Break = 10;

    private const int LongWait = 60;     // minutes; a longer wait is a break
    private const int Shown = 480;       // minutes of work on one picture
    private const int MostPictures = 8;  // of one schedule; then more minutes are shown on each
    private const double Widest = 1.4;   // mm for a minute

    private readonly IReadOnlyList<(int From, int To)> _stretches;

    private TimeAxis(IReadOnlyList<(int From, int To)> stretches, int end, double width)
    {
        (_stretches, End) = (stretches, end);
        int breaks = stretches.Count - 1 + (end > stretches[^1].To ? 1 : 0);
        PerMinute = Math.Min(Widest, (width - (breaks * Break)) / Math.Max(1, stretches.Sum(s => s.To - s.From)));
        Width = X(end);
    }

    /// <summary>Millimetres for a minute of work.</summary>
    public double PerMinute { get; }

    /// <summary>Its width, mm.</summary>
    public double Width { get; }

    /// <summary>First minute shown.</summary>
    public int Start => _stretches[0].From;

    /// <summary>Last minute shown.</summary>
    public int End { get; }

    /// <summary>The stretches of work shown.</summary>
    public IReadOnlyList<(int From, int To)> Stretches => _stretches;

    /// <summary>The breaks between them, and behind the last one where something still cures.</summary>
    public IEnumerable<(int From, int To)> Breaks => _stretches.Select((s, i) => (s.To, i + 1 < _stretches.Count ? _stretches[i + 1].From : End)).Where(b => b.Item2 > b.To);

    /// <summary>The axes of a schedule, one for each picture.</summary>
    public static IReadOnlyList<TimeAxis> Of(GlueSchedule schedule, double width)
    {
        (int From, int To)[] stretches = [.. Worked(schedule)];
        int most = Math.Max(Shown, (stretches.Sum(s => s.To - s.From) + MostPictures - 1) / MostPictures);
        // A break takes room as well: as much as its millimetres would show of work.
        int room = (int)(most * Break / width);
        List<TimeAxis> axes = [];
        List<(int From, int To)> part = [];
        int used = 0;
        foreach ((int From, int To) in stretches.SelectMany(s => Cut(s, most)))
        {
            if (part.Count > 0 && used + To - From > most)
            {
                axes.Add(new(part, part[^1].To, width));
                (part, used) = ([], 0);
            }

            part.Add((From, To));
            used += To - From + room;
        }

        if (part.Count > 0) axes.Add(new(part, schedule.Work.Makespan, width));
        return axes;
    }

    /// <summary>Where a minute lies, mm from the left; times outside lie at the ends.</summary>
    public double X(int minute)
    {
        double x = 0;
        for (int i = 0; i < _stretches.Count; i++)
        {
            (int from, int to) = _stretches[i];
            if (minute <= to) return x + (PerMinute * Math.Max(0, minute - from));
            x += PerMinute * (to - from);
            int next = i + 1 < _stretches.Count ? _stretches[i + 1].From : End;
            if (next == to) continue;
            if (minute < next) return x + (Break * (minute - to) / (next - to));
            x += Break;
        }

        return x;
    }

    // The times at which the hands work, with short waits between.
    private static IEnumerable<(int From, int To)> Worked(GlueSchedule schedule)
    {
        int from = -1, to = -1;
        foreach ((GlueTask task, int start) in schedule.InOrder)
        {
            if (from >= 0 && start - to > LongWait)
            {
                yield return (from, to);
                from = -1;
            }

            if (from < 0) from = start;
            to = Math.Max(to, start + task.Hands);
        }

        if (from >= 0) yield return (from, to);
    }

    private static IEnumerable<(int From, int To)> Cut((int From, int To) stretch, int most)
    {
        for (int from = stretch.From; from < stretch.To; from += most) yield return (from, Math.Min(stretch.To, from + most));
    }
}
