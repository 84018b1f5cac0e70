using System.Globalization;
using Microsoft.AspNetCore.Components;
using Ringwright.Web.Floor;

namespace Ringwright.Web.Components;

/// <summary>A clock to be read from a metre away: counting up, or down from a limit. It goes on while nobody looks.</summary>
public sealed partial class BigClock
{
    private ITimer? _timer;

    /// <summary>Its name on the shop floor, for the piece's number there.</summary>
    [Parameter, EditorRequired]
    public required Func<string, string> Name { get; set; }

    /// <summary>What it is for.</summary>
    [Parameter, EditorRequired]
    public required string Label { get; set; }

    /// <summary>Minutes to count down from; null to count up.</summary>
    [Parameter]
    public double? Limit { get; set; }

    /// <summary>What is said when the limit is over.</summary>
    [Parameter]
    public string Over { get; set; } = "Time is over.";

    private Watch Watch => Floor.Now.WatchOf(Name(Numbers.Of(Sheet)));

    private double Seconds => Watch.Seconds(Floor.Clock.GetUtcNow());

    private bool IsOver => Limit is double limit && Seconds >= limit * 60;

    private string Face => Text(Limit is double limit ? (limit * 60) - Seconds : Seconds);

    /// <summary>Seconds as minutes and seconds; less than nothing with a sign.</summary>
    public static string Text(double seconds)
    {
        int whole = (int)Math.Floor(Math.Abs(seconds) + 1e-6);
        string sign = seconds <= -1 ? "−" : "";
        return whole >= 3600
            ? string.Create(CultureInfo.InvariantCulture, $"{sign}{whole / 3600}:{whole / 60 % 60:00}:{whole % 60:00}")
            : string.Create(CultureInfo.InvariantCulture, $"{sign}{whole / 60}:{whole % 60:00}");
    }

    /// <inheritdoc/>
    protected override void OnInitialized()
    {
        base.OnInitialized();
        _timer = Floor.Clock.CreateTimer(_ => Tick(), null, TimeSpan.FromSeconds(0.5), TimeSpan.FromSeconds(0.5));
    }

    /// <inheritdoc/>
    protected override void Dispose(bool disposing)
    {
        _timer?.Dispose();
        base.Dispose(disposing);
    }

    private void Press()
    {
        string what = $"{Label}: clock {(Watch.Since is null ? "started" : "stopped")}";
        Floor.Press(Name(Numbers.Own()), what, By);
    }

    private void Reset() => Floor.Reset(Name(Numbers.Own()), $"{Label}: clock put back to start at {Face}", By);

    private void Tick()
    {
        if (Watch.Since is not null) _ = InvokeAsync(StateHasChanged);
    }
}
