using System.Globalization;
using Ringwright.Core;
using Ringwright.Core.Fitting;
using Ringwright.Core.Planning;
using Ringwright.Web.Bench;

namespace Ringwright.Web.Stations;

/// <summary>A wedge to be measured: its number and its wood.</summary>
internal readonly record struct CaliperRow(int Number, string Wood);

/// <summary>What was typed at the fit of one ring: readings of the dry ring, and the caliper's.</summary>
/// <param name="sheet">The bench.</param>
internal sealed class FitDesk(Sheet sheet)
{
    private readonly RingPlan _ring = sheet.Ring;

    /// <summary>The name on the desk of what belongs to this ring.</summary>
    public string Name(string what) => $"fit.{what}.{sheet.Good.Piece.Name}.{_ring.Ring.Name}";

    /// <summary>The readings as they were typed.</summary>
    public ImmutableArray<string> Seen => [.. sheet.Desk[Name("seen")].Split('\n', StringSplitOptions.RemoveEmptyEntries)];

    /// <summary>The wedges, spares counted, wood by wood.</summary>
    public ImmutableArray<CaliperRow> Rows => [.. _ring.Woods.SelectMany(n => Enumerable.Repeat(n.Wood, n.ToSaw)).Select((wood, i) => new CaliperRow(i + 1, wood))];

    /// <summary>Distance between the two reading places of a wedge, mm.</summary>
    /// <exception cref="BadInputException">It cannot be read.</exception>
    public double Depth => sheet.Desk.Length(Name("depth"), sheet.Units.Unit())?.Millimetres ?? _ring.Glued.Depth;

    /// <summary>The name on the desk of one reading.</summary>
    public string Cell(CaliperRow row, bool rim) => Name(string.Create(CultureInfo.InvariantCulture, $"{(rim ? "rim" : "tip")}-{row.Number}"));

    /// <summary>The readings of a dry ring.</summary>
    /// <exception cref="BadInputException">One cannot be read.</exception>
    public IReadOnlyList<FitObservation> Observations() => [.. Seen.Select((text, i) => ReadingText.Read(text, string.Create(CultureInfo.InvariantCulture, $"reading {i + 1}"), sheet.Units.Unit()))];

    /// <summary>The wedges of which both readings are there.</summary>
    /// <exception cref="BadInputException">A reading cannot be read.</exception>
    public IReadOnlyList<CaliperReading> Measured()
    {
        var measured = new List<CaliperReading>();
        foreach (CaliperRow row in Rows)
            if (Read(row, true) is double rim && Read(row, false) is double tip) measured.Add(new(row.Number, row.Wood, rim, tip));
        return measured;
    }

    /// <summary>The ring as it comes: each place gets the next measured wedge of its wood; null while one is missing.</summary>
    public IReadOnlyList<CaliperReading>? AsTheyCome(IReadOnlyList<CaliperReading> measured)
    {
        List<CaliperReading> left = [.. measured], laid = [];
        foreach (LaidSegment place in _ring.Layout)
        {
            int next = left.FindIndex(m => string.Equals(m.Wood, place.Wood, StringComparison.OrdinalIgnoreCase));
            if (next < 0) return null;
            laid.Add(left[next]);
            left.RemoveAt(next);
        }

        return laid;
    }

    /// <summary>What is asked of the chooser.</summary>
    public WedgeChoiceInput Choice(IReadOnlyList<CaliperReading> measured) => new()
    {
        Wedges = measured,
        Places = _ring.Ring.Around,
        Depth = Depth,
        Radius = _ring.Glued.Reach,
        Pattern = _ring.Woods.Length == 1 ? [] : [.. _ring.Layout.Select(s => s.Wood)],
    };

    // Without a number there is no reading yet; nought is what a caliper shows at a point.
    private double? Read(CaliperRow row, bool rim)
    {
        string text = sheet.Desk[Cell(row, rim)];
        return string.IsNullOrWhiteSpace(text) ? null : DeskTexts.Length(string.Create(CultureInfo.InvariantCulture, $"wedge {row.Number}, {(rim ? "rim" : "tip")}"), text, sheet.Units.Unit()).Millimetres;
    }
}
