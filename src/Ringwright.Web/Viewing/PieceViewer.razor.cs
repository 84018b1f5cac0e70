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

    // Edits come in runs; the picture follows when the fingers rest.
    private static readonly TimeSpan Rest = TimeSpan.FromMilliseconds(120);

    private static readonly (ViewerView, string)[] Views =
    [
        (ViewerView.Whole, "Whole"), (ViewerView.CutOpen, "Cut open"), (ViewerView.PulledApart, "Pulled apart"), (ViewerView.OneRing, "One ring"), (ViewerView.GlueJoints, "Glue joints"),
    ];

    private static int _made;
    private readonly string _id = "viewer-" + Interlocked.Increment(ref _made);
    private ElementReference _root;
    private DotNetObjectReference<PieceViewer>? _self;
    private IJSObjectReference? _view;
    private CancellationTokenSource _resting = new();
    private ViewedPlan _viewed = null!;
    private WoodKey _woods = null!;
    private PickedSegment? _picked;
    private MeasureStyle? _style;
    private bool _flatOnly;

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
        if (_view is not null) _ = ShowWhenRested(_view);
    }

    /// <inheritdoc/>
    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (!firstRender) return;
        try
        {
            await using IJSObjectReference module = await Js.InvokeAsync<IJSObjectReference>("import", "/" + Assets["js/dist/viewer.js"]);
            _self = DotNetObjectReference.Create(this);
            _view = await module.InvokeAsync<IJSObjectReference>("open", _root, _self);
        }
        catch (JSDisconnectedException)
        {
            // The page was left meanwhile.
            return;
        }
        catch (Exception e) when (e is JSException or OperationCanceledException)
        {
            // The bundle could not be had, or not in time; the rest of the page goes on without it.
            _flatOnly = true;
            StateHasChanged();
            return;
        }

        await Show(_view);
    }

    /// <summary>Lets the browser's part go.</summary>
    public async ValueTask DisposeAsync()
    {
        await _resting.CancelAsync();
        _resting.Dispose();
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

    private async Task ShowWhenRested(IJSObjectReference view)
    {
        await _resting.CancelAsync();
        _resting.Dispose();
        _resting = new();
        try
        {
            await Task.Delay(Rest, _resting.Token);
            await Show(view);
        }
        catch (Exception e) when (e is OperationCanceledException or JSDisconnectedException)
        {
            // A newer edit came, or the page was left.
        }
    }

    private ValueTask Show(IJSObjectReference view) => view.InvokeVoidAsync("show", _viewed.Version, _viewed.IsBig);

    private string Picture(string name) => ViewerEndpoints.PicturePath(_viewed.Version, name, Style);
}
