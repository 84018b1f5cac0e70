using Microsoft.AspNetCore.Components;
using Ringwright.Web.Saving;

namespace Ringwright.Web.Frame;

/// <summary>What the user must know about saving, and why the last change was refused.</summary>
public partial class Notices
{
    private bool _read;

    [Inject]
    private AutoSave Saver { get; set; } = null!;

    [Inject]
    private StartState Start { get; set; } = null!;

    /// <inheritdoc/>
    protected override void OnInitialized()
    {
        base.OnInitialized();
        Saver.Changed += RedrawLater;
    }

    /// <inheritdoc/>
    protected override void Dispose(bool disposing)
    {
        Saver.Changed -= RedrawLater;
        base.Dispose(disposing);
    }

    private void RedrawLater() => _ = InvokeAsync(StateHasChanged);
}
