using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Rendering;
using Microsoft.AspNetCore.Components.Web;

namespace Ringwright.Web.Components;

/// <summary>
/// Text that is typed, told letter by letter. Its handlers are the same from drawing to drawing. Those of a binding are made
/// anew each time; where much is drawn for others, the server may have let go of one while a letter was on its way to it, and
/// that letter was lost.
/// </summary>
public sealed class TextEntry : ComponentBase
{
    /// <summary>What stands there.</summary>
    [Parameter, EditorRequired]
    public required string? Text { get; set; }

    /// <summary>Told the whole text after every letter.</summary>
    [Parameter, EditorRequired]
    public EventCallback<string> Typed { get; set; }

    /// <summary>Told when the field is left.</summary>
    [Parameter]
    public EventCallback Left { get; set; }

    /// <summary>Whether it has several lines.</summary>
    [Parameter]
    public bool SeveralLines { get; set; }

    /// <summary>All else that the element says.</summary>
    [Parameter(CaptureUnmatchedValues = true)]
    public IReadOnlyDictionary<string, object>? More { get; set; }

    /// <inheritdoc/>
    protected override void BuildRenderTree(RenderTreeBuilder builder)
    {
        ArgumentNullException.ThrowIfNull(builder);
        builder.OpenElement(0, SeveralLines ? "textarea" : "input");
        if (!SeveralLines) builder.AddAttribute(1, "type", "text");
        builder.AddMultipleAttributes(2, More);
        builder.AddAttribute(3, "value", Text);
        builder.AddAttribute(4, "oninput", EventCallback.Factory.Create<ChangeEventArgs>(this, Tell));
        // As in a binding: what was typed meanwhile is not drawn over.
        builder.SetUpdatesAttributeName("value");
        builder.AddAttribute(5, "onblur", EventCallback.Factory.Create<FocusEventArgs>(this, Leave));
        builder.CloseElement();
    }

    private Task Tell(ChangeEventArgs typed) => Typed.InvokeAsync(typed.Value as string ?? string.Empty);

    private Task Leave() => Left.InvokeAsync();
}
