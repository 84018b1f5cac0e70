using System.Globalization;
using Ringwright.Core;
using Ringwright.Core.Fitting;
using Ringwright.Core.Planning;
using Ringwright.Web.Bench;

namespace Ringwright.Web.Stations;

/// <summary>A wedge to be measured: its number, its wood, and which of the ring's batches it is of.</summary>
internal readonly record struct CaliperRow(int Number, string Wood, int Batch);

/// <summary>A place where a caliper is set: its name on the desk, its words, and whether it is at the rim and at the upper end.</summary>
internal readonly record struct CaliperPlace(string Key, string Words, bool Rim, bool Above);

/// <summary>A wedge that was measured.</summary>
internal sealed record CaliperWedge(CaliperRow Row, MeasuredWedge Wedge);

/// <summary>What was typed at the fit of one ring: readings of the dry ring, and the caliper's. It hangs on the ring's mark, not on its name.</summary>
/// <param name="sheet">The bench.</param>
internal sealed class FitDesk(Sheet sheet)
{
    /// <summary>What the desk's texts for the fit are called.</summary>
    public const string DeskPrefix = "fit.";

    private static readonly ImmutableArray<CaliperPlace> OnWedge = [new("rim", "rim", true, false), new("tip", "tip", false, false)];
    private static readonly ImmutableArray<CaliperPlace> OnStave = [new("rim", "outside", true, false), new("tip", "inside", false, false)];

    private static readonly ImmutableArray<CaliperPlace> OnLeaningStave =
    [
        new("rim", "lower, outside", true, false), new("tip", "lower, inside", false, false),
        new("rim-above", "upper, outside", true, true), new("tip-above", "upper, inside", false, true),
    ];

    private readonly RingPlan _ring = sheet.Ring;

    /// <summary>The name on the desk of what belongs to this ring.</summary>
    public string Name(string what) => NameOf(what, sheet.MarkOf(_ring));

    /// <summary>The name on the desk of what belongs to a ring.</summary>
    public static string NameOf(string what, string mark) => $"{DeskPrefix}{what}.{mark}";

    /// <summary>The readings as they were typed.</summary>
    public ImmutableArray<string> Seen => [.. sheet.Desk[Name("seen")].Split('\n', StringSplitOptions.RemoveEmptyEntries)];

    /// <summary>The wedges, spares counted, width by width and wood by wood.</summary>
    public ImmutableArray<CaliperRow> Rows => [.. _ring.Woods.SelectMany(n => Enumerable.Repeat((n.Wood, n.Batch), n.ToSaw)).Select((w, i) => new CaliperRow(i + 1, w.Wood, w.Batch))];

    /// <summary>Where each is measured.</summary>
    public ImmutableArray<CaliperPlace> Places => _ring.Stave is not { } stave ? OnWedge : stave.IsUpright ? OnStave : OnLeaningStave;

    /// <summary>Distance between the two reading places of a wedge, mm.</summary>
    /// <exception cref="BadInputException">It cannot be read.</exception>
    public double Depth => sheet.Desk.Length(Name("depth"), sheet.Units.Unit())?.Millimetres ?? MeasuredRing.UsualDepth(_ring);

    /// <summary>The name on the desk of one reading.</summary>
    public string Cell(CaliperRow row, CaliperPlace place) => Name(string.Create(CultureInfo.InvariantCulture, $"{place.Key}-{row.Number}"));

    /// <summary>The first wedge of which a reading is missing; null when all are measured.</summary>
    public CaliperRow? Next => Rows.Where(r => Places.Any(p => string.IsNullOrWhiteSpace(sheet.Desk[Cell(r, p)]))).Select(r => (CaliperRow?)r).FirstOrDefault();

    /// <summary>The wedges of one batch in words: number, angle and how it is called.</summary>
    public string Kind(int batch)
    {
        string angle = sheet.Style.Print(_ring.Batches[batch].Glued.WedgeAngle, Core.Measures.Quantity.Angle);
        return _ring.Stave is not null ? "Staves" : _ring.Batches.Length == 1 ? $"Wedges of {angle}" : string.Create(CultureInfo.InvariantCulture, $"Wedge {batch + 1}, {angle}");
    }

    /// <summary>The readings of a dry ring.</summary>
    /// <exception cref="BadInputException">One cannot be read.</exception>
    public IReadOnlyList<FitObservation> Observations() => [.. Seen.Select((text, i) => ReadingText.Read(text, string.Create(CultureInfo.InvariantCulture, $"reading {i + 1}"), sheet.Units.Unit()))];

    /// <summary>The wedges of which all readings are there.</summary>
    /// <exception cref="BadInputException">A reading cannot be read.</exception>
    public IReadOnlyList<CaliperWedge> Measured()
    {
        var measured = new List<CaliperWedge>();
        foreach (CaliperRow row in Rows)
        {
            double?[] read = [.. Places.Select(p => Read(row, p))];
            if (read.Any(r => r is null)) continue;
            var below = new CaliperReading(row.Number, row.Wood, read[0]!.Value, read[1]!.Value);
            measured.Add(new(row, read.Length == 2 ? new(below) : new(below, below with { Rim = read[2]!.Value, Tip = read[3]!.Value })));
        }

        return measured;
    }

    /// <summary>The ring as it comes: each place gets the next measured wedge of its width and wood; null while one is missing.</summary>
    public IReadOnlyList<MeasuredWedge>? AsTheyCome(IReadOnlyList<CaliperWedge> measured)
    {
        List<CaliperWedge> left = [.. measured];
        var laid = new List<MeasuredWedge>();
        foreach ((string wood, int kind) in MeasuredChoice.WoodsOf(_ring).Zip(MeasuredRing.KindsOf(_ring)))
        {
            int next = left.FindIndex(m => m.Row.Batch == kind && string.Equals(m.Row.Wood, wood, StringComparison.OrdinalIgnoreCase));
            if (next < 0) return null;
            laid.Add(left[next].Wedge);
            left.RemoveAt(next);
        }

        return laid;
    }

    /// <summary>What is asked of the chooser.</summary>
    public WedgeChoiceInput Choice(IReadOnlyList<CaliperWedge> measured) => MeasuredChoice.Of(_ring, [.. measured.Select(m => (m.Wedge, m.Row.Batch))], Depth);

    // Without a number there is no reading yet; nought is what a caliper shows at a point.
    private double? Read(CaliperRow row, CaliperPlace place)
    {
        string text = sheet.Desk[Cell(row, place)];
        return string.IsNullOrWhiteSpace(text) ? null : DeskTexts.Length(string.Create(CultureInfo.InvariantCulture, $"wedge {row.Number}, {place.Words}"), text, sheet.Units.Unit()).Millimetres;
    }
}
