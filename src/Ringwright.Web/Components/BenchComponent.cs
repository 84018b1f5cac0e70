using Microsoft.AspNetCore.Components;
using Ringwright.Web.Bench;

namespace Ringwright.Web.Components;

/// <summary>A component that shows the bench and is drawn again whenever the bench changes.</summary>
public abstract class BenchComponent : ComponentBase, IDisposable
{
    /// <summary>The bench.</summary>
    [Inject]
    public required Workbench Bench { get; set; }

    /// <summary>The present state.</summary>
    protected Sheet Sheet => Bench.Now;

    /// <inheritdoc/>
    protected override void OnInitialized() => Bench.Changed += Redraw;

    /// <summary>Ends listening.</summary>
    public void Dispose()
    {
        Dispose(true);
        GC.SuppressFinalize(this);
    }

    /// <summary>Ends listening.</summary>
    protected virtual void Dispose(bool disposing) => Bench.Changed -= Redraw;

    // The change may have been made in another window, on another thread.
    private void Redraw() => _ = InvokeAsync(StateHasChanged);
}
