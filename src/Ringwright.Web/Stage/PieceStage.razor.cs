using Microsoft.AspNetCore.Components;
using Ringwright.Core.Planning;
using Ringwright.Core.Timber;
using Ringwright.Web.Bench;
using Ringwright.Web.Drawing;

namespace Ringwright.Web.Stage;

/// <summary>The piece, in sight at every station.</summary>
public partial class PieceStage
{
    private bool _open;

    /// <summary>The station that is shown beside it; null on a page beside the stations.</summary>
    [Parameter, EditorRequired]
    public required Station? Station { get; set; }

    /// <summary>Path of the page.</summary>
    [Parameter, EditorRequired]
    public required string Path { get; set; }

    private Plan Shown => Look.Trial ?? Sheet.Good;

    private StageView View => Look.View is { } chosen && (chosen != StageView.Work || HasWork) ? chosen : Suitable;

    private bool HasWork => Station is Web.Bench.Station.Saw or Web.Bench.Station.Fit or Web.Bench.Station.Glue or Web.Bench.Station.Lathe;

    // A pattern is seen laid flat; a piece of one ring from above; at a machine one sees the work.
    private StageView Suitable => HasWork ? StageView.Work : Path == "shape/pattern" ? StageView.Flat
        : Sheet.Good.Rings.Length == 1 && Sheet.Good.Piece.Shape is null ? StageView.Above
        : StageView.Side;

    private bool IsShape => Station == Web.Bench.Station.Shape;

    private ImmutableArray<WoodLook> Looks => WoodLook.For(Shown.Rings.SelectMany(r => r.Layout).Select(s => s.Wood), SpeciesTable.For(Shown.Shop), Look.Aged);

    private string Words => View == StageView.Above || Shown.Rings.Length == 1
        ? RingDescription.Of(Sheet.Ring.Ring).In(Sheet.Style)
        : $"{Shown.Rings.Length} rings, {Shown.Rings.Sum(r => r.Layout.Length)} pieces of wood";

    /// <inheritdoc/>
    protected override void OnInitialized()
    {
        base.OnInitialized();
        Look.Changed += RedrawLater;
    }

    /// <inheritdoc/>
    protected override void Dispose(bool disposing)
    {
        Look.Changed -= RedrawLater;
        base.Dispose(disposing);
    }

    private void Pick(StageView view) => Look.Show(view == Suitable ? null : view);

    private void RedrawLater() => _ = InvokeAsync(StateHasChanged);
}
