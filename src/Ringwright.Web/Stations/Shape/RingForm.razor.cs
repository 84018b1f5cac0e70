using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Rendering;
using Microsoft.AspNetCore.Components.Web;
using Ringwright.Core.Pieces;
using Ringwright.Web.Bench.Edits;
using Ringwright.Web.Bench.Fields;

namespace Ringwright.Web.Stations;

/// <summary>The measures of the shown ring; typed for all rings that are chosen.</summary>
public partial class RingForm
{
    private static readonly string[] Further = [RingFields.Name.Key, RingFields.Shift.Key, RingFields.Allowance.Key];

    private Ring Ring => Sheet.Good.Piece.Rings[Sheet.Shown];

    private IEnumerable<Lens> Lenses => RingLenses.Of(Sheet.Work, Sheet.Shown);

    private RenderFragment Fewer => builder => Stepper(builder, -1, "−", "One segment fewer");

    private RenderFragment More => builder => Stepper(builder, 1, "+", "One segment more");

    // 0 what one looks at first, 1 what is seldom changed, 2 the woods, which have a form of their own.
    private static int Section(Lens lens) => Further.Contains(lens.Field.Key) ? 1 : lens.Field.Key.Split(' ')[0] is "woods" or "parts" or "strips" ? 2 : 0;

    private static bool IsCount(Lens lens) => lens.Field.Key == RingFields.Segments.Key;

    private void Build(string? construction) => Bench.Change(s => Constructions.Switch(s, construction ?? WedgeDisc.ConstructionName));

    private void Mirror() => Bench.Change(w => w.Piece.Rings[Sheet.Shown] is LaminatedRing ring ? w.WithRing(Sheet.Shown, ring with { Mirrored = !ring.Mirrored }) : w);

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
