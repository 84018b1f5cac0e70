using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;
using Ringwright.Core.Planning;
using Ringwright.Web.Bench;

namespace Ringwright.Web.Components;

/// <summary>The line at the foot: will it work, and what to fix first.</summary>
public partial class FootLine
{
    /// <summary>The browser.</summary>
    [Inject]
    public required IJSRuntime Js { get; set; }

    private Fix? Fix => Fixes.First(Sheet);

    private bool Doubtful => Sheet.Good.Findings.Any(f => f.Weight != Weight.Note);

    private string Words => Sheet.IsCurrent ? Sheet.Good.Verdict.In(Sheet.Style)
        : Sheet.Problems.Length == 1 ? "One value cannot be used. Picture and figures are of the last good values."
        : $"{Sheet.Problems.Length} values cannot be used. Picture and figures are of the last good values.";

    private string Mark => !Sheet.IsCurrent ? "Wait" : Doubtful ? "Doubt" : "Can do";

    private string Class => "foot-" + Mark.ToLowerInvariant();

    private async Task Go(Fix fix)
    {
        if (fix.Ring is int ring && ring != Sheet.Draft.Selected) Bench.Select(ring);
        try
        {
            await Js.InvokeVoidAsync("ringwright.goTo", fix.ElementId);
        }
        catch (JSDisconnectedException)
        {
            // The page is gone; there is nowhere to go.
        }
    }
}
