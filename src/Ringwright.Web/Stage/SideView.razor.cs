using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Web;
using Microsoft.JSInterop;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Ringwright.Web.Bench.Edits;
using Ringwright.Web.Drawing;

namespace Ringwright.Web.Stage;

/// <summary>The piece from its side; where it may be edited, its outline's points are dragged, or moved with arrow keys.</summary>
public sealed partial class SideView : IDisposable
{
    private const double Step = 0.5, FineStep = 0.1; // mm, of arrow keys

    private SideDrawing _view = null!;
    private (Plan Plan, MeasureStyle Style)? _drawn;
    private ElementReference _svg;
    private DotNetObjectReference<SideView>? _self;

    /// <summary>The piece.</summary>
    [Parameter, EditorRequired]
    public required Plan Plan { get; set; }

    /// <summary>How lengths are printed.</summary>
    [Parameter, EditorRequired]
    public required MeasureStyle Style { get; set; }

    /// <summary>The woods' looks.</summary>
    [Parameter, EditorRequired]
    public required ImmutableArray<WoodLook> Looks { get; set; }

    /// <summary>Whether the outline's points can be moved.</summary>
    [Parameter]
    public bool Editable { get; set; }

    /// <summary>A point was dragged to a place in the drawing, mm.</summary>
    /// <param name="handle">Which point.</param>
    /// <param name="x">Radius.</param>
    /// <param name="y">Height, downwards.</param>
    [JSInvokable]
    public void Dragged(string handle, double x, double y)
    {
        if (_view.Handles.FirstOrDefault(h => h.Id == handle) is not Handle moved || !double.IsFinite(x) || !double.IsFinite(y)) return;
        if (IsThere(moved)) Bench.Change(w => ShapeEdits.MovePoint(w, moved.Inner, moved.Index, Math.Abs(x), -y, ShapeEdits.Grid(Bench.Now.Units)), "drag " + handle);
    }

    /// <summary>The point was let go.</summary>
    [JSInvokable]
    public void Dropped() => Bench.EndRun();

    /// <inheritdoc/>
    public void Dispose() => _self?.Dispose();

    /// <inheritdoc/>
    protected override void OnParametersSet()
    {
        if (_drawn is { } drawn && ReferenceEquals(drawn.Plan, Plan) && drawn.Style == Style) return;
        _drawn = (Plan, Style);
        _view = new(Plan, Style);
    }

    /// <inheritdoc/>
    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (!firstRender) return;
        _self = DotNetObjectReference.Create(this);
        try
        {
            await Js.InvokeVoidAsync("ringwright.stage", _svg, _self);
        }
        catch (JSDisconnectedException)
        {
            // The page is gone.
        }
    }

    private void Press(Handle handle, KeyboardEventArgs key)
    {
        if (!IsThere(handle)) return;
        double step = key.ShiftKey ? FineStep : Step;
        (double across, double up) = key.Key switch
        {
            "ArrowRight" => (step, 0),
            "ArrowLeft" => (-step, 0),
            "ArrowUp" => (0, step),
            "ArrowDown" => (0, -step),
            _ => (0.0, 0.0),
        };
        if (across != 0 || up != 0)
            Bench.Change(w => Moved(w, handle, across, up), "key " + handle.Id);
        else if (key.Key is "Delete" or "Backspace")
            Bench.Change(w => ShapeEdits.RemovePoint(w, handle.Inner, handle.Index));
        else if (key.Key is "s" or "S" && !key.CtrlKey && !key.MetaKey)
            Bench.Change(w => ShapeEdits.TurnSharp(w, handle.Inner, handle.Index));
    }

    // Keys may be typed faster than the page is drawn: Delete twice at the last point means one that is gone.
    private bool IsThere(Handle handle) => Bench.Now.Work.Piece.Shape is { } shape && (handle.Inner ? (shape.Inside as Hollow)?.Points : shape.Outer) is { } points && handle.Index < points.Length;

    // From where it stands now, so that keys typed faster than the page is drawn add up. Across counts on the diameter's half.
    private static Bench.Work Moved(Bench.Work work, Handle handle, double across, double up)
    {
        ShapePoint point = ShapeEdits.PointsOf(work, handle.Inner)[handle.Index];
        return ShapeEdits.MovePoint(work, handle.Inner, handle.Index, (point.Diameter.Millimetres / 2) + across, point.Height.Millimetres + up, FineStep);
    }
}
