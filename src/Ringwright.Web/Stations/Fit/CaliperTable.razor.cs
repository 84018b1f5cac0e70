using System.Globalization;
using Ringwright.Core;
using Ringwright.Core.Fitting;
using Ringwright.Core.Planning;
using Ringwright.Stock.Choosing;

namespace Ringwright.Web.Stations;

/// <summary>Caliper readings of the wedges: their dry fit, and which of them to take.</summary>
public sealed partial class CaliperTable
{
    private IReadOnlyList<CaliperReading> _measured = [];
    private MeasuredRing? _ring;
    private WedgeChoice? _choice;
    private CancellationTokenSource? _choosing;
    private string? _problem;
    private string _words = "";

    private FitDesk Desk => new(Sheet);

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

    private void Type(CaliperRow row, bool rim, string? text) => Bench.Note(Desk.Cell(row, rim), text ?? "");

    // Reads what is typed, and lays the ring dry as soon as there is a wedge for each place.
    private void Read()
    {
        if (Sheet.Ring.Batches.Length != 1 || Sheet.Ring.Stave is not null) return;
        IReadOnlyList<CaliperReading> before = _measured;
        try
        {
            _measured = Desk.Measured();
            _words = string.Create(CultureInfo.InvariantCulture, $"{_measured.Count} of {Desk.Rows.Length} measured.");
            if (!before.SequenceEqual(_measured)) _choice = null;
            Lay(_choice?.Ring.Select(p => p.Wedge).ToArray() ?? Desk.AsTheyCome(_measured), _choice is null ? "as they come" : "chosen");
            _problem = null;
        }
        catch (BadInputException e)
        {
            (_ring, _problem) = (null, e.Message);
        }
    }

    private void Lay(IReadOnlyList<CaliperReading>? wedges, string how)
    {
        if (wedges is null)
        {
            _ring = null;
            if (Look.Fit is not null) Look.Lay(null);
            return;
        }

        if (_ring is not null && ReferenceEquals(Look.Fit?.Of, Sheet.Ring) && _ring.Wedges.Select(w => w.Below).SequenceEqual(wedges)) return;
        _ring = MeasuredRing.Of(Sheet.Ring, Sheet.Good.Shop.Sled, [.. wedges.Select(w => new MeasuredWedge(w))], Desk.Depth);
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
            Lay([.. choice.Ring.Select(p => p.Wedge)], "chosen");
        }
        catch (BadInputException e)
        {
            _problem = e.Message;
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

    private void Stop() => _choosing?.Cancel();
}
