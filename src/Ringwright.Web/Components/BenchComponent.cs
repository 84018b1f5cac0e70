using Microsoft.AspNetCore.Components;
using Ringwright.Web.Bench;

namespace Ringwright.Web.Components;

/// <summary>A component that shows the bench and is drawn again whenever the bench changes.</summary>
public abstract class BenchComponent : ComponentBase, IDisposable
{
    private Sheet? _drawn;

    /// <summary>The bench.</summary>
    [Inject]
    public required Workbench Bench { get; set; }

    /// <summary>The present state.</summary>
    protected Sheet Sheet => Bench.Now;

    /// <inheritdoc/>
    protected override void OnInitialized() => Bench.Changed += Redraw;

    /// <inheritdoc/>
    protected override void OnAfterRender(bool firstRender) => _drawn = Sheet;

    /// <summary>Whether the sheet differs, in what this component shows, from the one drawn last.</summary>
    protected virtual bool Differs(Sheet drawn) => true;

    /// <summary>Draws the component again, on the right thread.</summary>
    protected void Redraw()
    {
        if (_drawn is null || Differs(_drawn)) _ = InvokeAsync(StateHasChanged);
    }

    /// <summary>Ends listening.</summary>
    public void Dispose()
    {
        Dispose(true);
        GC.SuppressFinalize(this);
    }

    /// <summary>Ends listening.</summary>
    protected virtual void Dispose(bool disposing) => Bench.Changed -= Redraw;
}
