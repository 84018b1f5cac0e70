using Microsoft.AspNetCore.Components;
using Ringwright.Core;
using Ringwright.Store;
using Ringwright.Web.Bench.Fields;
using Ringwright.Web.Components;

namespace Ringwright.Web.Stations;

/// <summary>A component that shows the rack too, and is drawn again whenever it changes.</summary>
public abstract class RackComponent : BenchComponent
{
    [Inject]
    private protected RackDesk Desk { get; set; } = null!;

    /// <summary>Why the last thing asked for was not done; null when it was. A sentence.</summary>
    protected string? Wrong { get; private set; }

    /// <inheritdoc/>
    protected override void OnInitialized()
    {
        base.OnInitialized();
        Desk.Changed += RedrawLater;
    }

    /// <inheritdoc/>
    protected override void Dispose(bool disposing)
    {
        Desk.Changed -= RedrawLater;
        base.Dispose(disposing);
    }

    /// <summary>Does something; a refusal becomes <see cref="Wrong"/>.</summary>
    /// <returns>Whether it was done.</returns>
    protected bool Do(Action action)
    {
        ArgumentNullException.ThrowIfNull(action);
        try
        {
            action();
            Wrong = null;
            return true;
        }
        catch (Exception e) when (e is BadInputException or StoreException)
        {
            Wrong = FieldProblem.Capital(e.Message);
            return false;
        }
    }

    private void RedrawLater() => _ = InvokeAsync(StateHasChanged);
}
