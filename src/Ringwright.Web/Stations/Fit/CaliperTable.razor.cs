using System.Globalization;
using Ringwright.Core;
using Ringwright.Core.Fitting;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Ringwright.Stock.Choosing;
using Ringwright.Web.Bench.Fields;

namespace Ringwright.Web.Stations;

/// <summary>Caliper readings of the wedges: their dry fit, and which of them to take.</summary>
public sealed partial class CaliperTable
{
    private IReadOnlyList<CaliperWedge> _measured = [];
    private MeasuredRing? _ring;
    private WedgeChoice? _choice;
    private CancellationTokenSource? _choosing;
    private string? _problem;
    private string _words = "";

    private FitDesk Desk => new(Sheet);

    private string One => Sheet.Ring.Stave is null ? "Wedge" : "Stave";

    private string How => Sheet.Ring.Stave is not { } stave ? "Across each wedge near its rim and near its tip."
        : stave.IsUpright ? "Across an end of each stave, along its outer and along its inner edge."
        : "Across each stave along the outer and the inner edge of its lower end, then of its upper end.";

    /// <inheritdoc/>
    protected override void OnInitialized()
    {
        base.OnInitialized();
        Bench.Changed += ReadLater;
        Read();
    }

    /// <inheritdoc/>
    protected override void Dispose(bool disposing)
    {
        Bench.Changed -= ReadLater;
        Stop();
        base.Dispose(disposing);
    }

    private void ReadLater() => _ = InvokeAsync(() =>
    {
        Read();
        StateHasChanged();
    });

    private void Type(CaliperRow row, CaliperPlace place, string text) => Bench.Note(Desk.Cell(row, place), text);

    // Reads what is typed, and lays the ring dry as soon as there is a wedge for each place.
    private void Read()
    {
        if (Sheet.Ring is { Ring: OpenRing } or { Lamination: not null } || Sheet.Ring.Batches.IsEmpty) return;
        IReadOnlyList<CaliperWedge> before = _measured;
        FitDesk desk = Desk;
        try
        {
            _measured = desk.Measured();
            string next = desk.Next is { } row ? $" Next: {One.ToLowerInvariant()} {row.Number.ToString(CultureInfo.InvariantCulture)}, {row.Wood}{(Sheet.Ring.Batches.Length > 1 ? $" ({desk.Kind(row.Batch)})" : "")}." : "";
            _words = string.Create(CultureInfo.InvariantCulture, $"{_measured.Count} of {desk.Rows.Length} measured.{next}");
            if (!before.SequenceEqual(_measured)) _choice = null;
            Lay(_choice is null ? desk.AsTheyCome(_measured) : Chosen(_choice), _choice is null ? "as they come" : "chosen");
            _problem = null;
        }
        catch (BadInputException e)
        {
            (_ring, _problem) = (null, FieldProblem.Capital(e.Message));
        }
    }

    private void Lay(IReadOnlyList<MeasuredWedge>? wedges, string how)
    {
        if (wedges is null)
        {
            _ring = null;
            if (Look.Fit is not null) Look.Lay(null);
            return;
        }

        if (_ring is not null && ReferenceEquals(Look.Fit?.Of, Sheet.Ring) && _ring.Wedges.SequenceEqual(wedges)) return;
        _ring = MeasuredRing.Of(Sheet.Ring, Sheet.Good.Shop.Sled, wedges, Desk.Depth);
        Look.Lay(new(Sheet.Ring, _ring.Fit, $"{Sheet.Ring.Ring.Name}: the measured wedges {how}, under a band"));
    }

    private async Task Choose()
    {
        using var choosing = new CancellationTokenSource();
        _choosing = choosing;
        RingPlan ring = Sheet.Ring;
        try
        {
            WedgeChoiceInput input = Desk.Choice(_measured);
            WedgeChoice choice = await Task.Run(() => new WedgeChooser().Choose(input, null, choosing.Token), choosing.Token);
            if (!ReferenceEquals(ring, Sheet.Ring)) return;
            _choice = choice;
            Lay(Chosen(choice), "chosen");
        }
        catch (BadInputException e)
        {
            _problem = FieldProblem.Capital(e.Message);
        }
        catch (OperationCanceledException)
        {
            // Stopped by the user.
        }
        finally
        {
            _choosing = null;
        }
    }

    // The chooser's readings may be told for a wedge common to all widths; what is laid are the real ones.
    private MeasuredWedge[] Chosen(WedgeChoice choice)
    {
        var wedges = _measured.ToDictionary(m => m.Row.Number, m => m.Wedge);
        return [.. choice.Ring.Select(p => wedges[p.Wedge.Number])];
    }

    private void Stop() => _choosing?.Cancel();
}
