using Microsoft.AspNetCore.Components;
using Ringwright.Core.Measures;
using Ringwright.Web.Bench;

namespace Ringwright.Web.Components;

/// <summary>One typed value: label, text, what it means, or what is wrong with it.</summary>
public partial class MeasureField
{
    /// <summary>What is typed.</summary>
    [Parameter, EditorRequired]
    public required Field Field { get; set; }

    /// <summary>The text as it stands.</summary>
    [Parameter, EditorRequired]
    public required string Text { get; set; }

    /// <summary>What is wrong with it, or null.</summary>
    [Parameter]
    public FieldProblem? Problem { get; set; }

    /// <summary>How lengths are printed.</summary>
    [Parameter, EditorRequired]
    public required UnitChoice Units { get; set; }

    /// <summary>Called at every keystroke.</summary>
    [Parameter, EditorRequired]
    public required Action<string> Typed { get; set; }

    /// <summary>Called when the field is left.</summary>
    [Parameter, EditorRequired]
    public required Action Left { get; set; }

    /// <summary>A button before the text.</summary>
    [Parameter]
    public RenderFragment? Before { get; set; }

    /// <summary>A button behind the text.</summary>
    [Parameter]
    public RenderFragment? After { get; set; }

    private string DescriptionId => Field.Id + "-note";

    // Fractions, inch marks and units need the full keyboard; whole numbers do not.
    private string InputMode => Field.Kind == FieldKind.WholeNumber ? "numeric" : "text";

    /// <summary>The length in the chosen units, when it was written otherwise.</summary>
    private string? Echo
    {
        get
        {
            if (Field.Kind != FieldKind.Length || !Length.TryParse(Text, Units.Unit(), out Length length, out _) || length.Millimetres == 0) return null;
            string printed = Units.Style().Length(length.Millimetres);
            string number = printed[..printed.LastIndexOf(Units.Unit() == LengthUnit.Inch ? " in" : " mm", StringComparison.Ordinal)];
            if (length.Written.StartsWith(number, StringComparison.Ordinal)) return null;
            return number.StartsWith('≈') ? printed : "= " + printed;
        }
    }
}
