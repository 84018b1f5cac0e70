using Microsoft.AspNetCore.Components;
using Ringwright.Core.Measures;
using Ringwright.Web.Bench;
using Ringwright.Web.Bench.Fields;

namespace Ringwright.Web.Components;

/// <summary>One typed value: label, text, what it means, or what is wrong with it. Drawn again by what it stands in.</summary>
public partial class LensField
{
    /// <summary>The bench.</summary>
    [Inject]
    public required Workbench Bench { get; set; }

    /// <summary>What is typed.</summary>
    [Parameter, EditorRequired]
    public required Lens Lens { get; set; }

    /// <summary>Another label.</summary>
    [Parameter]
    public string? Label { get; set; }

    /// <summary>A button before the text.</summary>
    [Parameter]
    public RenderFragment? Before { get; set; }

    /// <summary>A button behind the text.</summary>
    [Parameter]
    public RenderFragment? After { get; set; }

    private string Text => Bench.Now.TextOf(Lens);

    private FieldProblem? Problem => Bench.Now.ProblemOf(Lens);

    private string DescriptionId => Lens.Id + "-note";

    // Fractions, inch marks and units need the full keyboard; whole numbers do not.
    private string InputMode => Lens.Field.Kind == FieldKind.WholeNumber ? "numeric" : "text";

    /// <summary>The length in the chosen units, when it was written otherwise.</summary>
    private string? Echo
    {
        get
        {
            UnitChoice units = Bench.Now.Units;
            if (Lens.Field.Kind != FieldKind.Length || !Length.TryParse(Text, units.Unit(), out Length length, out _) || length.Millimetres == 0) return null;
            string printed = units.Style().Length(length.Millimetres);
            string number = printed[..printed.LastIndexOf(units.Unit() == LengthUnit.Inch ? " in" : " mm", StringComparison.Ordinal)];
            if (length.Written.StartsWith(number, StringComparison.Ordinal)) return null;
            return number.StartsWith('≈') ? printed : "= " + printed;
        }
    }
}
