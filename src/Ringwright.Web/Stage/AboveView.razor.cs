using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Web;
using Ringwright.Core.Measures;
using Ringwright.Core.Planning;
using Ringwright.Web.Drawing;

namespace Ringwright.Web.Stage;

/// <summary>A glued ring from above. Each piece tells its number and wood when it is tapped or reached with the arrow keys.</summary>
public partial class AboveView
{
    // One handler for each piece, kept: a new one at every drawing would have to be sent to the browser each time.
    private readonly List<Action> _picks = [];
    private AboveDrawing _view = null!;
    private (RingPlan Plan, MeasureStyle Style)? _drawn;
    private int _selected;

    /// <summary>The ring's plan.</summary>
    [Parameter, EditorRequired]
    public required RingPlan Plan { get; set; }

    /// <summary>How lengths are printed.</summary>
    [Parameter, EditorRequired]
    public required MeasureStyle Style { get; set; }

    /// <summary>The woods' looks.</summary>
    [Parameter, EditorRequired]
    public required ImmutableArray<WoodLook> Looks { get; set; }

    // Lines close enough for a small wedge to show at least two.
    private double Period => Math.Clamp(_view.ThinnestEdge * 0.21, 2.4, 6);

    /// <inheritdoc/>
    protected override void OnParametersSet()
    {
        if (_drawn is { } drawn && ReferenceEquals(drawn.Plan, Plan) && drawn.Style == Style) return;
        _drawn = (Plan, Style);
        _view = new(Plan, Style);
        _selected = Math.Min(_selected, _view.Pieces.Length - 1);
        for (int i = _picks.Count; i < _view.Pieces.Length; i++) _picks.Add(Pick(i));
    }

    private Action Pick(int index) => () => _selected = index;

    private static string WedgeId(int index) => $"wedge-{index + 1}";

    private string PatternId(WoodLook look) => $"plan-{Looks.IndexOf(look)}";

    private WoodLook LookOf(int index) => Looks.First(l => string.Equals(l.Name, _view.Pieces[index].Wood, StringComparison.OrdinalIgnoreCase));

    private string Name(int index) => $"{(Plan.Ring is Core.Pieces.WedgeDisc ? "Wedge" : "Piece")} {index + 1} of {_view.Pieces.Length}: {_view.Pieces[index].Wood}";

    private void Go(KeyboardEventArgs key)
    {
        int last = _view.Pieces.Length - 1;
        _selected = key.Key switch
        {
            "ArrowRight" or "ArrowDown" => _selected == 0 ? last : _selected - 1,
            "ArrowLeft" or "ArrowUp" => _selected == last ? 0 : _selected + 1,
            "Home" => 0,
            "End" => last,
            _ => _selected,
        };
    }

    // From the upper left (side −1) or right (side 1) of a circle of this radius to a shelf above the ring.
    private static string Leader(double radius, int side)
    {
        double at = radius * Math.Sqrt(0.5);
        return $"M{Svg.N(side * at)},{Svg.N(-at)}L{side * 84},-106H{side * 126}";
    }
}
