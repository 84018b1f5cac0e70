using Microsoft.AspNetCore.Components;
using Ringwright.Web.Components;

namespace Ringwright.Web.Stations;

/// <summary>A component that shows the order of gluing too. Once it is looked at, the quickest order is looked for.</summary>
public abstract class GlueComponent : FloorComponent
{
    [Inject]
    private protected GlueDesk Orders { get; set; } = null!;

    /// <summary>Whether the piece on the bench has anything to glue.</summary>
    protected abstract bool HasWork { get; }

    /// <inheritdoc/>
    protected override void OnInitialized()
    {
        base.OnInitialized();
        Orders.Changed += RedrawLater;
    }

    /// <inheritdoc/>
    protected override void OnAfterRender(bool firstRender)
    {
        // Only a page that is looked at searches; one that the server draws beforehand has no use for it.
        if (HasWork && !Orders.Knows(Sheet.Good)) Orders.Begin(Sheet.Good);
    }

    /// <inheritdoc/>
    protected override void Dispose(bool disposing)
    {
        Orders.Changed -= RedrawLater;
        base.Dispose(disposing);
    }

    private void RedrawLater() => _ = InvokeAsync(StateHasChanged);
}
