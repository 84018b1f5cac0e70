using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Authorization;
using Ringwright.Core.Planning;
using Ringwright.Web.Bench;
using Ringwright.Web.Floor;
using Ringwright.Web.Sharing;

namespace Ringwright.Web.Components;

/// <summary>A component that shows the bench and what is done on the shop floor, and is drawn again whenever one of them changes.</summary>
public abstract class FloorComponent : BenchComponent
{
    /// <summary>The shop floor.</summary>
    [Inject]
    public required ShopFloor Floor { get; set; }

    /// <summary>Under which number a piece has its work there.</summary>
    [Inject]
    public required FloorNumbers Numbers { get; set; }

    /// <summary>Tells at which device the page is looked at.</summary>
    [Inject]
    public required AuthenticationStateProvider Visitors { get; set; }

    /// <summary>The device; empty for this machine.</summary>
    protected string By { get; private set; } = "";

    /// <summary>The work on the ring that is shown.</summary>
    protected string Job
    {
        get
        {
            Sheet sheet = Sheet;
            return Numbers.Job(sheet, sheet.Ring);
        }
    }

    /// <summary>The wedges of a ring's plan.</summary>
    protected ImmutableArray<CutBasis> BasisOf(RingPlan ring) => [.. SawCut.Of(ring, Sheet.Good.Shop).Select(CutBasis.Of)];

    /// <summary>Whether a step of the piece on the bench is ticked off.</summary>
    protected bool IsDone(string step) => Floor.Now.Ticks.Contains(FloorNames.Tick(Numbers.Of(Sheet), step));

    /// <summary>Ticks a step off, or takes the tick back.</summary>
    protected void Turn(string step, string words)
    {
        string tick = FloorNames.Tick(Numbers.Own(), step);
        bool done = Floor.Now.Ticks.Contains(tick);
        Floor.Change(s => Based(s, step).Turn(tick), $"{(done ? "tick taken away" : "ticked off")}: {words}", By);
    }

    /// <inheritdoc/>
    protected override void OnInitialized()
    {
        base.OnInitialized();
        Floor.Changed += RedrawLater;
    }

    /// <inheritdoc/>
    protected override async Task OnInitializedAsync() => By = (await Visitors.GetAuthenticationStateAsync()).User.DeviceName();

    /// <inheritdoc/>
    protected override void Dispose(bool disposing)
    {
        Floor.Changed -= RedrawLater;
        base.Dispose(disposing);
    }

    // A gluing step is of wedges, and means nothing for others.
    private FloorState Based(FloorState floor, string step)
    {
        Sheet sheet = Sheet;
        int ring = sheet.RingMarks.ToList().FindIndex(m => step.StartsWith(FloorNames.Gluing(m), StringComparison.Ordinal));
        if (ring < 0) return floor;
        string job = Numbers.Job(sheet, sheet.Good.Rings[ring]);
        return floor.On(job, BasisOf(sheet.Good.Rings[ring]), !floor.HasWork(job));
    }

    private void RedrawLater() => _ = InvokeAsync(StateHasChanged);
}
