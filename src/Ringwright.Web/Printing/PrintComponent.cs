using Microsoft.AspNetCore.Components;
using Ringwright.Web.Components;

namespace Ringwright.Web.Printing;

/// <summary>A component that shows how the user prints too, and is drawn again whenever that changes.</summary>
public abstract class PrintComponent : BenchComponent
{
    [Inject]
    private protected PrintChoices Choices { get; set; } = null!;

    /// <inheritdoc/>
    protected override void OnInitialized()
    {
        base.OnInitialized();
        Choices.Changed += RedrawLater;
    }

    /// <inheritdoc/>
    protected override void Dispose(bool disposing)
    {
        Choices.Changed -= RedrawLater;
        base.Dispose(disposing);
    }

    private void RedrawLater() => _ = InvokeAsync(StateHasChanged);
}
