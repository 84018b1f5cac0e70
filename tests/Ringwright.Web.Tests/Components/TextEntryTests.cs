#pragma warning disable BL0006 // A page of the framework's own kind is needed to answer a drawing at a moment of our choice.
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Rendering;
using Microsoft.AspNetCore.Components.RenderTree;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging.Abstractions;
using Ringwright.Web.Components;

namespace Ringwright.Web.Tests.Components;

/// <summary>
/// Letters that are on their way while the field is drawn anew. The drawing here counts as shown at once, as it does on a server whose
/// answer came before it had finished: a handler that was replaced is gone then.
/// </summary>
public class TextEntryTests
{
    [Fact]
    public async Task A_letter_that_was_typed_into_the_field_as_it_was_drawn_before_is_taken_in()
    {
        await using var page = new Page();
        ulong typed = await page.Draw<Field>();
        await page.Again();
        await page.Dispatch(typed, "Bowl fo");
        await page.Dispatch(typed, "Bowl for");
        Assert.Equal("Bowl for", page.Shown<Field>().Text);
    }

    [Fact]
    public async Task What_is_typed_is_not_drawn_over()
    {
        await using var page = new Page();
        ulong typed = await page.Draw<Field>();
        await page.Dispatch(typed, "Bowl");
        Assert.DoesNotContain("value", page.Redrawn);
        page.Shown<Field>().Text = "Vase";
        await page.Again();
        Assert.Contains("value", page.Redrawn);
    }

    // That the trap is there at all: with a binding the letter is lost.
    [Fact]
    public async Task A_binding_would_lose_it()
    {
        await using var page = new Page();
        ulong typed = await page.Draw<Bound>();
        await page.Again();
        ArgumentException lost = await Assert.ThrowsAsync<ArgumentException>(() => page.Dispatch(typed, "Bowl fo"));
        Assert.Contains("no event handler", lost.Message, StringComparison.Ordinal);
    }

    private sealed class Field : ComponentBase
    {
        public string Text { get; set; } = "";

        protected override void BuildRenderTree(RenderTreeBuilder builder)
        {
            builder.OpenComponent<TextEntry>(0);
            builder.AddComponentParameter(1, nameof(TextEntry.Text), Text);
            builder.AddComponentParameter(2, nameof(TextEntry.Typed), EventCallback.Factory.Create<string>(this, text => Text = text));
            builder.AddComponentParameter(3, "id", "field");
            builder.CloseComponent();
        }
    }

    private sealed class Bound : ComponentBase
    {
        private string? _text = "";

        protected override void BuildRenderTree(RenderTreeBuilder builder)
        {
            builder.OpenElement(0, "input");
            builder.AddAttribute(1, "value", _text);
            builder.AddAttribute(2, "oninput", EventCallback.Factory.CreateBinder<string?>(this, text => _text = text, _text));
            builder.SetUpdatesAttributeName("value");
            builder.CloseElement();
        }
    }

    /// <summary>A page that shows every drawing at once.</summary>
    private sealed class Page() : Renderer(new ServiceCollection().BuildServiceProvider(), NullLoggerFactory.Instance)
    {
        private int _root;
        private IComponent? _shown;
        private (ulong Handler, int Component) _drawn;

        /// <summary>Attributes that the last drawings set again.</summary>
        public List<string> Redrawn { get; } = [];

        public override Dispatcher Dispatcher { get; } = Dispatcher.CreateDefault();

        public T Shown<T>()
            where T : IComponent => (T)_shown!;

        /// <summary>Draws a component for the first time; the answer is the handler that its letters go to.</summary>
        public Task<ulong> Draw<T>()
            where T : IComponent, new() => Dispatcher.InvokeAsync(async () =>
            {
                _shown = InstantiateComponent(typeof(T));
                _root = AssignRootComponentId(_shown);
                await RenderRootComponentAsync(_root);
                return _drawn.Handler;
            });

        public Task Again() => Dispatcher.InvokeAsync(() =>
        {
            Redrawn.Clear();
            return RenderRootComponentAsync(_root);
        });

        public Task Dispatch(ulong handler, string text) => Dispatcher.InvokeAsync(() =>
        {
            Redrawn.Clear();
            return DispatchEventAsync(handler, new EventFieldInfo { ComponentId = _drawn.Component, FieldValue = text }, new ChangeEventArgs { Value = text });
        });

        protected override void HandleException(Exception exception) => System.Runtime.ExceptionServices.ExceptionDispatchInfo.Throw(exception);

        protected override Task UpdateDisplayAsync(in RenderBatch renderBatch)
        {
            for (int i = 0; i < renderBatch.UpdatedComponents.Count; i++)
            {
                RenderTreeDiff diff = renderBatch.UpdatedComponents.Array[i];
                foreach (RenderTreeEdit edit in diff.Edits)
                    if (edit.Type == RenderTreeEditType.SetAttribute) Redrawn.Add(renderBatch.ReferenceFrames.Array[edit.ReferenceFrameIndex].AttributeName);
            }

            for (int i = 0; _drawn.Handler == 0 && i < renderBatch.ReferenceFrames.Count; i++)
            {
                RenderTreeFrame frame = renderBatch.ReferenceFrames.Array[i];
                if (frame.FrameType == RenderTreeFrameType.Attribute && frame.AttributeName == "oninput" && frame.AttributeEventHandlerId > 0)
                    _drawn = (frame.AttributeEventHandlerId, renderBatch.UpdatedComponents.Array[renderBatch.UpdatedComponents.Count - 1].ComponentId);
            }

            return Task.CompletedTask;
        }
    }
}
