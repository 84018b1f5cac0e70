using Microsoft.AspNetCore.Components;
using Ringwright.Web.Saving;

namespace Ringwright.Web.Components;

/// <summary>What the user must know about saving.</summary>
public partial class Notices
{
    private bool _read;

    [Inject]
    private AutoSave Saver { get; set; } = null!;

    [Inject]
    private StartState Start { get; set; } = null!;

    /// <inheritdoc/>
    protected override void OnInitialized() => Saver.Changed += Redraw;

    /// <inheritdoc/>
    public void Dispose()
    {
        Saver.Changed -= Redraw;
        GC.SuppressFinalize(this);
    }

    private void Redraw() => _ = InvokeAsync(StateHasChanged);
}
