using System.Globalization;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Authorization;
using Ringwright.Core;
using Ringwright.Web.Bench.Fields;

namespace Ringwright.Web.Sharing;

/// <summary>Where sharing is switched on and off and devices are let in; for the machine itself only.</summary>
public sealed partial class SharingPage : IDisposable
{
    /// <summary>Its address.</summary>
    public const string Path = "/sharing";

    /// <summary>What other devices are told.</summary>
    public const string OnlyThere = "Sharing is set on the machine that Ringwright runs on, and only there.";

    private static readonly TimeSpan Beat = TimeSpan.FromSeconds(5);

    // A page of another device holds no handler at all: nothing is drawn that could be pressed.
    private bool _own;
    private bool _turning;
    private string? _wrong;
    private Timer? _beat;

    [Inject]
    private LocalSharing Sharing { get; set; } = null!;

    [Inject]
    private AuthenticationStateProvider Visitors { get; set; } = null!;

    /// <inheritdoc/>
    public void Dispose()
    {
        Sharing.Changed -= Redraw;
        _beat?.Dispose();
    }

    /// <inheritdoc/>
    protected override async Task OnInitializedAsync()
    {
        _own = (await Visitors.GetAuthenticationStateAsync()).User.IsOwn();
        if (!_own) return;
        Sharing.Changed += Redraw;
        // The code's end and when devices were seen are told by nobody.
        if (RendererInfo.IsInteractive) _beat = new(_ => Redraw(), null, Beat, Beat);
    }

    private static string Clock(DateTimeOffset time) => time.ToLocalTime().ToString("HH:mm", CultureInfo.InvariantCulture);

    private void Redraw() => _ = InvokeAsync(StateHasChanged);

    private Task Start() => Turn(() => Sharing.Start());

    private Task Stop() => Turn(Sharing.Stop);

    private async Task Turn(Func<Task> turn)
    {
        _turning = true;
        try
        {
            await turn();
            _wrong = null;
        }
        catch (BadInputException e)
        {
            _wrong = FieldProblem.Capital(e.Message);
        }
        finally
        {
            _turning = false;
        }
    }
}
