using Microsoft.AspNetCore.Components;
using Ringwright.Web.Components;
using Ringwright.Web.Floor;

namespace Ringwright.Web.Stations;

/// <summary>A part of a station that follows what its window looks at.</summary>
public abstract class LookComponent : FloorComponent
{
    /// <summary>What this window looks at.</summary>
    [Inject]
    public required StationLook Look { get; set; }

    /// <summary>The cuts of the ring that is shown.</summary>
    protected ImmutableArray<SawCut> Cuts => SawCut.Of(Sheet.Ring, Sheet.Good.Shop);

    /// <summary>The cut that is looked at; null for a ring without wedges of its own.</summary>
    protected SawCut? Cut => Cuts is { IsEmpty: false } cuts ? cuts[Math.Min(Look.Cut, cuts.Length - 1)] : null;

    /// <summary>What is counted of a cut.</summary>
    protected CutTally TallyOf(SawCut cut)
    {
        ArgumentNullException.ThrowIfNull(cut);
        return CutTally.Of(Floor.Now.MarksOf(Job), cut.Key);
    }

    /// <inheritdoc/>
    protected override void OnInitialized()
    {
        base.OnInitialized();
        Look.Changed += RedrawLater;
    }

    /// <inheritdoc/>
    protected override void Dispose(bool disposing)
    {
        Look.Changed -= RedrawLater;
        base.Dispose(disposing);
    }

    private void RedrawLater() => _ = InvokeAsync(StateHasChanged);
}
