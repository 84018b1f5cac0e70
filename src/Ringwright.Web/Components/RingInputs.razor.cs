using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Rendering;
using Microsoft.AspNetCore.Components.Web;
using Ringwright.Web.Bench;

namespace Ringwright.Web.Components;

/// <summary>The measures of the shown ring.</summary>
public partial class RingInputs
{
    private Draft Draft => Sheet.Draft;

    private Field InnerField => Draft.Ring.InnerBy == InnerBy.Tip ? RingFields.Tip : RingFields.BoardWidth;

    private RenderFragment Fewer => builder => Stepper(builder, -1, "−", "One segment fewer");

    private RenderFragment More => builder => Stepper(builder, 1, "+", "One segment more");

    private FieldProblem? ProblemOf(Field field) => Sheet.Problems.FirstOrDefault(p => p.Concerns(field, Draft.Selected));

    private void Stepper(RenderTreeBuilder builder, int by, string sign, string label)
    {
        builder.OpenElement(0, "button");
        builder.AddAttribute(1, "type", "button");
        builder.AddAttribute(2, "class", "stepper");
        builder.AddAttribute(3, "aria-label", label);
        builder.AddAttribute(4, "onclick", EventCallback.Factory.Create<MouseEventArgs>(this, () => Bench.StepSegments(by)));
        builder.AddContent(5, sign);
        builder.CloseElement();
    }
}
