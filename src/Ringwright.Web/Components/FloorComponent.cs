using Microsoft.AspNetCore.Components;
using Ringwright.Web.Floor;

namespace Ringwright.Web.Components;

/// <summary>A component that shows the bench and what is done on the shop floor, and is drawn again whenever one of them changes.</summary>
public abstract class FloorComponent : BenchComponent
{
    /// <summary>The shop floor.</summary>
    [Inject]
    public required ShopFloor Floor { get; set; }

    /// <summary>Whether a step of the piece on the bench is ticked off.</summary>
    protected bool IsDone(string step) => Floor.Now.Ticks.Contains(Tick(step));

    /// <summary>Ticks a step off, or takes the tick back.</summary>
    protected void Turn(string step) => Floor.Change(s => s.Turn(Tick(step)));

    /// <inheritdoc/>
    protected override void OnInitialized()
    {
        base.OnInitialized();
        Floor.Changed += RedrawLater;
    }

    /// <inheritdoc/>
    protected override void Dispose(bool disposing)
    {
        Floor.Changed -= RedrawLater;
        base.Dispose(disposing);
    }

    private string Tick(string step) => $"{Sheet.Good.Piece.Name} | {step}";

    private void RedrawLater() => _ = InvokeAsync(StateHasChanged);
}
