using Ringwright.Core.Measures;
using Ringwright.Core.Patterns;
using Ringwright.Core.Patterns.Reports;
using Ringwright.Core.Timber;
using Ringwright.Web.Bench.Fields;
using Ringwright.Web.Drawing;

namespace Ringwright.Web.Stations;

/// <summary>Which wood goes where: by brush, by numbers, or from a picture.</summary>
public partial class PatternInputs
{
    private const int MostTold = 4;

    private string _other = "", _times = "1";
    private string? _timesWrong;

    private IEnumerable<string> Woods => Sheet.Good.Rings.SelectMany(r => r.Layout).Select(s => s.Wood);

    private ImmutableArray<WoodLook> Palette => WoodLook.For(Woods.Append(Painter.Wood), SpeciesTable.For(Sheet.Good.Shop));

    private ImmutableArray<ImmutableArray<string>> Rows => [.. Sheet.Good.Rings.Select(r => Enumerable.Range(0, r.Ring.Around).Select(r.Ring.WoodOf).ToImmutableArray())];

    private ImmutableArray<NeighbourContrast> Weak => [.. NeighbourContrast.Of(PieceLattice.Of(Sheet.Good), Rows).Where(c => c.Contrast.IsWeak).Take(MostTold)];

    private string CountWords => "Pieces: " + string.Join(", ", WoodCounts.Of(Rows).InAll.Select(c => $"{c.Wood} {c.Pieces}")) + ".";

    /// <inheritdoc/>
    protected override void OnInitialized()
    {
        base.OnInitialized();
        Look.Changed += RedrawLater;
    }

    /// <inheritdoc/>
    protected override void Dispose(bool disposing)
    {
        Look.Changed -= RedrawLater;
        Look.Paint(false);
        Look.Try(null);
        base.Dispose(disposing);
    }

    private void RedrawLater() => _ = InvokeAsync(StateHasChanged);

    private void Take(string wood)
    {
        Painter.Wood = wood;
        Look.Paint(true);
    }

    private void Other(string? wood)
    {
        _other = "";
        if (!string.IsNullOrWhiteSpace(wood)) Take(wood.Trim());
    }

    private void Times(string text)
    {
        _times = text;
        bool read = FieldText.TryWhole(_times, out int times, out ParseError? error);
        _timesWrong = read && times is >= 1 and <= 360 ? null : error is null ? "1 to 360 times can be." : FieldProblem.Capital(error.Sentence) + ".";
        if (_timesWrong is null) Painter.Times = times;
    }
}
