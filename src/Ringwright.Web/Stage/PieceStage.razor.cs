using Microsoft.AspNetCore.Components;
using Ringwright.Core.Planning;
using Ringwright.Core.Timber;
using Ringwright.Web.Bench;
using Ringwright.Web.Drawing;
using Ringwright.Web.Viewing;

namespace Ringwright.Web.Stage;

/// <summary>The piece, in sight at every station.</summary>
public partial class PieceStage
{
    private bool _open;
    private Plan? _solid;
    private PickedSegment? _picked;

    /// <summary>The station that is shown beside it; null on a page beside the stations.</summary>
    [Parameter, EditorRequired]
    public required Station? Station { get; set; }

    /// <summary>Path of the page.</summary>
    [Parameter, EditorRequired]
    public required string Path { get; set; }

    // Out of sight it keeps what it showed last, and has nothing to do.
    private Plan? Solid => View == StageView.Solid ? _solid = Shown : _solid;

    private Plan Shown => Look.Trial ?? Sheet.Good;

    private StageView View => Look.View is { } chosen && (chosen != StageView.Work || HasWork) ? chosen : Suitable;

    private bool HasWork => Station is Web.Bench.Station.Saw or Web.Bench.Station.Fit or Web.Bench.Station.Glue or Web.Bench.Station.Lathe;

    // A pattern is seen laid flat, an outline where its points are dragged; a piece of one ring from above; at a machine one sees the work.
    private StageView Suitable => HasWork ? StageView.Work : Path == "shape/pattern" ? StageView.Flat
        : Sheet.Good.Rings.Length == 1 && Sheet.Good.Piece.Shape is null ? StageView.Above
        : Path == "shape/outline" && Sheet.Good.Piece.Shape is not null ? StageView.Side : StageView.Solid;

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

    private void Take(PickedSegment? picked)
    {
        _picked = picked;
        // By name: rings may have come and gone since the picture was drawn.
        if (picked is not null && Sheet.Good.Piece.Rings.Index().Where(r => r.Item.Name == picked.Ring.Ring.Name).Select(r => (int?)r.Index).FirstOrDefault() is int ring && ring != Sheet.Shown) Bench.Select(ring);
    }

    private void Keep(PickedSegment? picked) => _picked = picked;

    private void Pick(StageView view) => Look.Show(view == Suitable ? null : view);

    private void RedrawLater() => _ = InvokeAsync(StateHasChanged);
}
