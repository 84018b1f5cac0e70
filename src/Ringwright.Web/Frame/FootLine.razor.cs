using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;
using Ringwright.Core.Planning;
using Ringwright.Web.Bench;

namespace Ringwright.Web.Frame;

/// <summary>The line at the foot: will it work, and what to fix first.</summary>
public partial class FootLine
{
    /// <summary>The browser.</summary>
    [Inject]
    public required IJSRuntime Js { get; set; }

    /// <summary>Where we are.</summary>
    [Inject]
    public required NavigationManager Navigation { get; set; }

    private Fix? Fix => Fixes.First(Sheet) ?? (Missing > 0 ? new("/timber", null, "rack-answer", "Show what is short") : null);

    private int Missing => Sheet.IsCurrent ? Desk.For(Sheet.Good)?.Shortages.Sum(s => s.Missing) ?? 0 : 0;

    private bool Doubtful => Sheet.Good.Findings.Any(f => f.Weight != Weight.Note) || Missing > 0;

    private string Words => Sheet.IsCurrent ? Sheet.Good.Verdict.In(Sheet.Style) + Wood + Wall
        : Sheet.Texts.Count == 1 ? "One value cannot be used. Picture and figures are of the last good values."
        : $"{Sheet.Texts.Count} values cannot be used. Picture and figures are of the last good values.";

    private string Wood => Missing > 0 ? $" Wood is short: the rack lacks {Missing} {(Missing == 1 ? "piece" : "pieces")}." : "";

    // With nothing to fix there is room for the other thing one asks of a hollow piece.
    private string Wall => !Doubtful && Sheet.Good.Figures.FirstOrDefault(f => f.Name == "thinnest-wall") is Figure thin ? $" Thinnest wood: {Sheet.Style.Print(thin.Value, thin.Quantity)}." : "";

    private string Mark => !Sheet.IsCurrent ? "Wait" : Doubtful ? "Doubt" : "Can do";

    private string Class => "foot-" + Mark.ToLowerInvariant().Replace(' ', '-');

    private async Task Go(Fix fix)
    {
        if (fix.Ring is int ring && ring != Sheet.Shown) Bench.Select(ring);
        if (!Navigation.Uri.EndsWith(fix.Url, StringComparison.Ordinal)) Navigation.NavigateTo(fix.Url);
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
