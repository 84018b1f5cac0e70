using System.Globalization;
using Ringwright.Core.Planning;
using Ringwright.Paper.Drawings;
using Ringwright.Paper.JobSheets;
using Ringwright.Paper.Lettering;

namespace Ringwright.Paper.Pictures.Gluing;

/// <summary>
/// Some hours of a glue schedule: time across, a row for each ring at work, and below them how many clamps are in use. Black: hands.
/// Hatched: clamped. Thin: curing.
/// </summary>
internal sealed class SchedulePicture
{
    private const double Names = 36, Air = 2;        // column of names, mm
    private const double Head = 13;                  // room for the axis
    private const double Tallest = 7, Lowest = 3.6;  // of a row
    private const double Bar = 0.62;                 // of a row's height
    private const double Edge = 1;                   // for lines at the ends
    private const int MostTasks = 1000;              // more are read off no picture

    private static readonly Hatch Banded = Drawings.Hatch.Of(1), Pressed = Drawings.Hatch.Of(3);

    private readonly GlueSchedule _schedule;
    private readonly TimeAxis _axis;
    private readonly int[] _rings;
    private readonly double _row;
    private readonly Drawing _drawing;

    private SchedulePicture(GlueSchedule schedule, TimeAxis axis, int[] rings, double width, double height)
    {
        (_schedule, _axis, _rings) = (schedule, axis, rings);
        int rows = rings.Length + 3;
        _row = Math.Clamp((height - Head - Edge) / rows, Lowest, Tallest);
        _drawing = new(width, Head + (rows * _row) + Edge);
    }

    /// <summary>A sentence in place of the pictures of a schedule that is too long for them, as of very thin strips; null when it is not.</summary>
    public static string? InsteadOf(GlueSchedule schedule) => schedule.Tasks.Length <= MostTasks ? null
        : string.Create(CultureInfo.InvariantCulture, $"{schedule.Tasks.Length} glue-ups one after the other are too many to draw. Thicker strips, or a glue that stays open longer, make them fewer.");

    /// <summary>The pictures of a schedule, each with the first and last minute it shows.</summary>
    /// <param name="schedule">The schedule; it has tasks.</param>
    /// <param name="width">Width of each, mm.</param>
    /// <param name="height">Greatest height of each, mm.</param>
    public static IEnumerable<(Drawing Drawing, int From, int To)> Draw(GlueSchedule schedule, double width, double height)
    {
        int most = Math.Max(1, (int)((height - Head - Edge) / Lowest) - 3);
        foreach (TimeAxis axis in TimeAxis.Of(schedule, width - Names - Air - Edge))
            foreach (int[] rings in AtWork(schedule, axis).Chunk(most))
                yield return (new SchedulePicture(schedule, axis, rings, width, height).Draw(), axis.Start, axis.End);
    }

    private static IEnumerable<int> AtWork(GlueSchedule schedule, TimeAxis axis) => schedule.Tasks
        .Select((t, i) => (t.Ring, Start: schedule.Work.Starts[i], Until: schedule.Work.Starts[i] + Math.Max(t.Hands, t.Clamped)))
        .Where(t => t.Start < axis.Stretches[^1].To && t.Until > axis.Start).Select(t => t.Ring).Distinct().Order();

    private Drawing Draw()
    {
        double foot = _drawing.Height - Edge;
        DrawAxis(foot);
        Row(0, "hands", SemiBold);
        for (int i = 0; i < _rings.Length; i++) Row(i + 1, string.Create(CultureInfo.InvariantCulture, $"{_rings[i] + 1} {_schedule.Plan.Rings[_rings[i]].Ring.Ring.Name}"), TypeScale.Note);
        for (int t = 0; t < _schedule.Tasks.Length; t++) Task(_schedule.Tasks[t], _schedule.Work.Starts[t]);
        InUse(1, "band clamps", _rings.Length + 1);
        InUse(2, "presses", _rings.Length + 2);
        _drawing.Line(new(0, foot), new(Left + _axis.Width, foot), Pens.Medium);
        return _drawing;
    }

    private static double Left => Names + Air;

    private static TextStyle SemiBold => TypeScale.Note with { Weight = FontWeight.SemiBold };

    private double X(int minute) => Left + _axis.X(minute);

    private double Top(int row) => Head + (row * _row);

    private void Row(int row, string name, TextStyle style)
    {
        double y = Top(row);
        _drawing.Line(new(0, y), new(Left + _axis.Width, y), Pens.Fine);
        TextLine line = Shortened.OneLine(name, style, Names);
        _drawing.Text(line, new(0, y + (_row / 2)), Anchor.MiddleLeft);
    }

    private void Task(GlueTask task, int start)
    {
        int row = Array.IndexOf(_rings, task.Ring);
        if (start < _axis.End && start + task.Hands > _axis.Start)
        {
            Solid(Box(0, start, start + task.Hands));
            if (row >= 0) Letter(task, Solid(Box(row + 1, start, start + task.Hands)));
        }

        if (row < 0) return;
        int held = start + Math.Max(task.Hands, task.Clamped), ready = start + task.Length;
        if (held > start + task.Hands && start + task.Hands < _axis.End && held > _axis.Start) Held(task, Box(row + 1, start + task.Hands, held));
        if (ready > held && held < _axis.End && ready > _axis.Start) Curing(row + 1, held, ready);
    }

    private Box Box(int row, int from, int to)
    {
        double tall = Bar * _row, x = X(from);
        return new(x, Top(row) + ((_row - tall) / 2), Math.Max(0.35, X(to) - x), tall);
    }

    private Box Solid(Box box)
    {
        _drawing.Fill(Outline.Rectangle(box), Colour.Black);
        return box;
    }

    private void Held(GlueTask task, Box box)
    {
        Outline outline = Outline.Rectangle(box);
        if (task.Clamps == 0)
        {
            _drawing.Stroke(outline, Pens.Hidden);
            return;
        }

        _drawing.Hatch(outline, task.Clamp == GlueClamp.Band ? Banded : Pressed).Stroke(outline, Pens.Fine);
    }

    private void Curing(int row, int from, int to)
    {
        double y = Top(row) + (_row / 2), end = X(to);
        _drawing.Line(new(X(from), y), new(end, y), Pens.Medium);
        if (to <= _axis.End) _drawing.Line(new(end, y - (Bar * _row / 2)), new(end, y + (Bar * _row / 2)), Pens.Medium);
    }

    private void Letter(GlueTask task, Box box)
    {
        TextLine letter = Typesetter.Set(LetterOf(task.Kind), TypeScale.Note with { Weight = FontWeight.SemiBold, Colour = Colour.Grey(255) });
        if (box.Width > letter.Width + 0.6 && box.Height > letter.Style.Height + 0.3) _drawing.Text(letter, box.Centre, Anchor.Middle);
    }

    /// <summary>The letter on a bar of handwork.</summary>
    public static string LetterOf(GlueTaskKind kind) => kind switch
    {
        GlueTaskKind.True => "T",
        GlueTaskKind.Close => "C",
        GlueTaskKind.Flatten => "F",
        GlueTaskKind.Stack => "S",
        _ => "G",
    };

    // How many of a resource are in use, as bars that are as tall as their share.
    private void InUse(int resource, string name, int row)
    {
        WorkResource known = _schedule.Work.Problem.Resources[resource];
        Row(row, string.Create(CultureInfo.InvariantCulture, $"{name}, of {known.Capacity}"), SemiBold);
        (int From, int To, int Amount)[] uses =
        [
            .. _schedule.Work.Problem.Tasks.SelectMany((t, i) => t.Uses.Where(u => u.Resource == resource).Select(u => (From: _schedule.Work.Starts[i], To: _schedule.Work.Starts[i] + u.Length, u.Amount)))
                .Where(u => u.From < _axis.End && u.To > _axis.Start),
        ];
        int[] times = [.. uses.SelectMany(u => new[] { u.From, u.To }).Distinct().Where(t => t > _axis.Start && t < _axis.End).Append(_axis.Start).Append(_axis.End).Order()];
        double foot = Top(row + 1) - 0.4, tall = _row - 1;
        for (int i = 1; i < times.Length; i++)
        {
            int used = uses.Where(u => u.From <= times[i - 1] && times[i - 1] < u.To).Sum(u => u.Amount);
            double x = X(times[i - 1]), wide = X(times[i]) - x, high = tall * used / known.Capacity;
            if (used > 0 && wide > 0) _drawing.Fill(Outline.Rectangle(new(x, foot - high, wide, high)), Colour.Grey(150));
        }
    }

    private void DrawAxis(double foot)
    {
        foreach ((int from, int to) in _axis.Breaks) Broken(from, to, foot);
        double free = 0;
        foreach (int minute in Ticks())
        {
            double x = X(minute);
            TextLine text = Typesetter.Set(_schedule.Clock(minute), TypeScale.Note);
            double at = Math.Clamp(x - (text.Width / 2), 0, _drawing.Width - text.Width);
            bool told = at >= free;
            _drawing.Line(new(x, Head - (told ? 2.5 : 1.2)), new(x, foot), Pens.Fine);
            if (!told) continue;
            _drawing.Text(text, new(at, Head - 3.2));
            free = at + text.Width + 1.5;
        }

        _drawing.Line(new(Left, Head), new(Left + _axis.Width, Head), Pens.Medium);
    }

    private IEnumerable<int> Ticks()
    {
        int[] steps = [10, 15, 30, 60, 120, 240];
        int step = steps.Where(s => s * _axis.PerMinute >= 12).DefaultIfEmpty(480).First();
        foreach ((int from, int to) in _axis.Stretches)
        {
            yield return from;
            for (int minute = ((from / step) + 1) * step; minute < to; minute += step) yield return minute;
        }

        if (_axis.End > _axis.Stretches[^1].To) yield return _axis.End;
    }

    // Two slanted strokes across the axis, and how long nothing is done.
    private void Broken(int from, int to, double foot)
    {
        double left = X(from), right = X(to), middle = (left + right) / 2;
        _drawing.Fill(Outline.Rectangle(new(left, Head, right - left, foot - Head)), Colour.Grey(238));
        foreach (double x in new[] { middle - 0.7, middle + 0.7 }) _drawing.Line(new(x - 0.8, Head + 1.6), new(x + 0.8, Head - 1.6), Pens.Medium);
        TextLine wait = Typesetter.Set(Core.Measures.Duration.Print(to - from), TypeScale.Caption);
        if (wait.Width < TimeAxis.Break + 6) _drawing.Text(wait, new(Math.Min(middle, _drawing.Width - (wait.Width / 2)), 2), Anchor.TopCentre);
    }
}
