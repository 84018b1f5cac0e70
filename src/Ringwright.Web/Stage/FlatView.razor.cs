using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Web;
using Microsoft.JSInterop;
using Ringwright.Core.Geometry;
using Ringwright.Core.Planning;
using Ringwright.Paper.Pictures.Pieces;
using Ringwright.Web.Drawing;

namespace Ringwright.Web.Stage;

/// <summary>The outside laid flat. While painting, a touch or a stroke gives segments the brush's wood; so does the space bar.</summary>
public sealed partial class FlatView : IDisposable
{
    private FlatOutlines _flat = null!;
    private Plan? _drawn;
    private string _viewBox = "";
    private double _extent;
    private (int Ring, int Segment)? _at;
    private int _strokes;
    private ElementReference _svg;
    private DotNetObjectReference<FlatView>? _self;

    /// <summary>The piece.</summary>
    [Parameter, EditorRequired]
    public required Plan Plan { get; set; }

    /// <summary>The woods' looks.</summary>
    [Parameter, EditorRequired]
    public required ImmutableArray<WoodLook> Looks { get; set; }

    private string Words => _at is { } at && at.Ring < Plan.Rings.Length && at.Segment < Plan.Rings[at.Ring].Layout.Length
        ? $"{Plan.Rings[at.Ring].Ring.Name}, piece {at.Segment + 1} of {Plan.Rings[at.Ring].Layout.Length}: {Plan.Rings[at.Ring].Layout[at.Segment].Wood}"
        : Look.Painting ? "Touch a piece to paint it" : "Touch a piece to see which it is";

    /// <summary>A stroke went through places in the drawing: x and y in turn, mm, y downwards.</summary>
    /// <param name="places">The places since the last call.</param>
    /// <param name="first">Whether the stroke begins with them.</param>
    [JSInvokable]
    public void Stroke(double[] places, bool first)
    {
        ArgumentNullException.ThrowIfNull(places);
        if (first) _strokes++;
        var met = new List<(int Ring, int Segment)>();
        for (int i = 0; i + 1 < places.Length; i += 2)
            if (_flat.At(new Vector2D(places[i], -places[i + 1])) is { } piece && (met.Count == 0 || met[^1] != piece)) met.Add(piece);
        if (met.Count == 0) return;
        _at = met[^1];
        if (Look.Painting && Look.Trial is null) Painter.Paint(Bench, met, $"stroke {_strokes}");
        else Bench.Select(met[^1].Ring);
        StateHasChanged();
    }

    /// <summary>The stroke ended.</summary>
    [JSInvokable]
    public void Dropped() => Bench.EndRun();

    /// <inheritdoc/>
    public void Dispose() => _self?.Dispose();

    /// <inheritdoc/>
    protected override void OnParametersSet()
    {
        if (ReferenceEquals(_drawn, Plan)) return;
        _drawn = Plan;
        _flat = PieceOutlines.Flat(Plan);
        double half = _flat.Rows.Max(r => r.Half), high = _flat.Rows[^1].High, margin = 0.02 * half;
        _extent = Math.Max(2 * half, high);
        _viewBox = $"{Svg.N(-half - margin)} {Svg.N(-high - margin)} {Svg.N(2 * (half + margin))} {Svg.N(high + (2 * margin))}";
    }

    /// <inheritdoc/>
    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (!firstRender) return;
        _self = DotNetObjectReference.Create(this);
        try
        {
            await Js.InvokeVoidAsync("ringwright.stage", _svg, _self);
        }
        catch (JSDisconnectedException)
        {
            // The page is gone.
        }
    }

    private static ImmutableArray<Vector2D> Edge(FlatRow row) => [new(-row.Half, row.Low), new(row.Half, row.Low), new(row.Half, row.High), new(-row.Half, row.High)];

    private ImmutableArray<Vector2D>? Box((int Ring, int Segment) at)
    {
        if (_flat.Rows.FirstOrDefault(r => r.Ring == at.Ring) is not FlatRow row || at.Segment >= row.Segments.Length) return null;
        (double from, double to) = row.Segments[at.Segment];
        double turns = Math.Round((from + to) / (4 * Math.PI)) * 2 * Math.PI, scale = row.Half / Math.PI;
        double left = Math.Max(-row.Half, (from - turns) * scale), right = Math.Min(row.Half, (to - turns) * scale);
        return ImmutableArray.Create<Vector2D>(new(left, row.Low), new(right, row.Low), new(right, row.High), new(left, row.High));
    }

    private void Press(KeyboardEventArgs key)
    {
        (int ring, int segment) = _at ?? (_flat.Rows[0].Ring, 0);
        int rings = Plan.Rings.Length;
        switch (key.Key)
        {
            case "ArrowRight": segment++; break;
            case "ArrowLeft": segment--; break;
            case "ArrowUp": ring = Math.Min(rings - 1, ring + 1); break;
            case "ArrowDown": ring = Math.Max(0, ring - 1); break;
            case " " or "Enter" when Look.Painting && Look.Trial is null:
                Painter.Paint(Bench, [(ring, segment)], null);
                break;
            default: return;
        }

        int around = Plan.Rings[ring].Layout.Length;
        if (_at is { } before && before.Ring != ring) segment = segment * around / Math.Max(1, Plan.Rings[before.Ring].Layout.Length);
        _at = (ring, ((segment % around) + around) % around);
    }
}
