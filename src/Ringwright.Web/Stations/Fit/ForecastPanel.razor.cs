using Ringwright.Core;
using Ringwright.Core.Fitting;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;

namespace Ringwright.Web.Stations;

/// <summary>Simulates many rings, with progress and a way to stop.</summary>
public sealed partial class ForecastPanel
{
    private const ulong Seed = 1;
    private static readonly double[] Levels = [0.1, 0.5, 0.9, 0.99];

    private int _rings = 500;
    private double _part;
    private RingPlan? _of;
    private FitForecast? _forecast;
    private CancellationTokenSource? _running;
    private string? _problem;

    private double Gap => Sheet.Good.Shop.Wanted.JointGap.Millimetres;

    /// <inheritdoc/>
    protected override void Dispose(bool disposing)
    {
        Stop();
        base.Dispose(disposing);
    }

    private string Fine(double mm) => double.IsFinite(mm) ? Sheet.Style.Print(mm, Quantity.FineLength) : "–";

    private string Share(double share) => Sheet.Style.Print(share, Quantity.Share);

    private async Task Run()
    {
        using var running = new CancellationTokenSource();
        (_running, _part, _problem) = (running, 0, null);
        (RingPlan ring, Shop shop, int rings) = (Sheet.Ring, Sheet.Good.Shop, _rings);
        var progress = new Progress<double>(Advance);
        try
        {
            FitForecast found = await Task.Run(() => FitForecast.Of(ring, shop, rings, Seed, progress, running.Token), running.Token);
            (_forecast, _of) = (found, ring);
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
            _running = null;
        }
    }

    // A hundred steps are enough to see.
    private void Advance(double part)
    {
        if (part - _part < 0.01) return;
        _part = part;
        _ = InvokeAsync(StateHasChanged);
    }

    private void Stop() => _running?.Cancel();
}
