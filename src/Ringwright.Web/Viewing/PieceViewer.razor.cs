using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;
using Ringwright.Core.Measures;
using Ringwright.Core.Planning;
using Ringwright.Paper.Pictures;

namespace Ringwright.Web.Viewing;

/// <summary>The turned piece in three dimensions. The picture itself is drawn by the bundle in <c>viewer/</c>; what it needs goes past Blazor.</summary>
public sealed partial class PieceViewer : IAsyncDisposable
{
    private const string NotLoaded = "The picture in three dimensions did not load, so these are the flat pictures.";

    private static readonly (ViewerView, string)[] Views =
    [
        (ViewerView.Whole, "Whole"), (ViewerView.CutOpen, "Cut open"), (ViewerView.PulledApart, "Pulled apart"), (ViewerView.OneRing, "One ring"), (ViewerView.GlueJoints, "Glue joints"),
    ];

    private static int _made;
    private readonly string _id = "viewer-" + Interlocked.Increment(ref _made);
    private ElementReference _root;
    private DotNetObjectReference<PieceViewer>? _self;
    private IJSObjectReference? _view;
    private ViewedPlan _viewed = null!;
    private WoodKey _woods = null!;
    private PickedSegment? _picked;
    private MeasureStyle? _style;
    private bool _flatOnly, _showing, _changed;

    /// <summary>The plan whose piece is shown.</summary>
    [Parameter, EditorRequired]
    public required Plan Plan { get; set; }

    /// <summary>How lengths are printed in the flat pictures.</summary>
    [Parameter, EditorRequired]
    public required MeasureStyle Style { get; set; }

    /// <summary>What is shown first.</summary>
    [Parameter]
    public ViewerOptions Options { get; set; } = new();

    /// <summary>Called with what was pointed at, and with null when it is let go.</summary>
    /// <remarks>What is in hand stays in hand when the plan changes; that is told by <see cref="OnKept"/>.</remarks>
    [Parameter]
    public EventCallback<PickedSegment?> OnPicked { get; set; }

    /// <summary>Called with what is in hand as it is in a new plan, and with null when it is not there any more.</summary>
    [Parameter]
    public EventCallback<PickedSegment?> OnKept { get; set; }

    [Inject]
    private IJSRuntime Js { get; set; } = null!;

    [Inject]
    private ViewerStore Store { get; set; } = null!;

    /// <summary>Called by the browser: which piece of wood was pointed at, by the plan's ring and the place in its layout; −1 for none.</summary>
    [JSInvokable]
    public Task Picked(string version, int ring, int place, bool byHand)
    {
        // The picture may be of a plan that has changed since.
        if (Store.Find(version)?.Plan is not { } plan) return Task.CompletedTask;
        bool known = ring >= 0 && ring < plan.Rings.Length && place >= 0 && place < plan.Rings[ring].Layout.Length;
        _picked = known ? new(plan.Rings[ring], place) : null;
        StateHasChanged();
        return (byHand ? OnPicked : OnKept).InvokeAsync(_picked);
    }

    /// <inheritdoc/>
    protected override void OnParametersSet()
    {
        if (ReferenceEquals(_viewed?.Plan, Plan) && _style == Style) return;
        _style = Style;
        _viewed = Store.Publish(Plan);
        _woods = WoodKey.Of(Plan);
        _changed = true;
    }

    /// <inheritdoc/>
    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (firstRender) await Open();
        // Not before the page is drawn: the flat pictures' addresses are in it.
        if (_view is not null && _changed) await ShowNewest(_view);
    }

    /// <summary>Lets the browser's part go.</summary>
    public async ValueTask DisposeAsync()
    {
        _self?.Dispose();
        if (_view is null) return;
        try
        {
            await _view.InvokeVoidAsync("close");
            await _view.DisposeAsync();
        }
        catch (JSDisconnectedException)
        {
            // The page is gone, and its part with it.
        }
    }

    private async Task Open()
    {
        try
        {
            await using IJSObjectReference module = await Js.InvokeAsync<IJSObjectReference>("import", "/" + Assets["js/dist/viewer.js"]);
            _self = DotNetObjectReference.Create(this);
            _view = await module.InvokeAsync<IJSObjectReference>("open", _root, _self);
        }
        catch (JSDisconnectedException)
        {
            // The page was left meanwhile.
        }
        catch (Exception e) when (e is JSException or OperationCanceledException)
        {
            // The bundle could not be had, or not in time; the rest of the page goes on without it.
            _flatOnly = true;
            StateHasChanged();
        }
    }

    // The first edit is shown at once. Edits come in runs: while one is being shown the next wait, and the newest of them follows.
    private async Task ShowNewest(IJSObjectReference view)
    {
        if (_showing) return;
        _showing = true;
        try
        {
            while (_changed)
            {
                _changed = false;
                await Show(view);
            }
        }
        catch (Exception e) when (e is OperationCanceledException or ObjectDisposedException or JSException or JSDisconnectedException)
        {
            // The page was left, or the browser is too busy to answer; the next edit asks again.
        }
        finally
        {
            _showing = false;
        }
    }

    private ValueTask Show(IJSObjectReference view) => view.InvokeVoidAsync("show", _viewed.Version, _viewed.IsBig);

    private string Picture(string name) => ViewerEndpoints.PicturePath(_viewed.Version, name, Style);
}
