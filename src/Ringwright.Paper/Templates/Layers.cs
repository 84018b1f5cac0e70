using System.Collections.Immutable;
using Ringwright.Core.Geometry;
using Ringwright.Core.Planning;
using Ringwright.Paper.Drawings;
using Ringwright.Paper.Lettering;
using Ringwright.Paper.Pictures;

namespace Ringwright.Paper.Templates;

/// <summary>The layers of a template while it is drawn, all in the same axes: workshop millimetres around any origin.</summary>
/// <param name="turn">Turned counter-clockwise as seen, radians.</param>
internal sealed class Layers(double turn = 0)
{
    /// <summary>Name of the layer of lines to cut along.</summary>
    public const string CutName = "cut";

    /// <summary>Name of the layer of lines to see.</summary>
    public const string LinesName = "lines";

    /// <summary>Name of the layer of lines of something else: the ring below, the wedge as sawn, the turned circles.</summary>
    public const string ReferenceName = "reference";

    /// <summary>Name of the layer of words.</summary>
    public const string WordsName = "words";

    private static readonly Pen Thin = Pens.Fine with { Dashes = [3, 1.2] };

    private readonly Drawing _cut = new(0, 0), _lines = new(0, 0), _reference = new(0, 0), _words = new(0, 0);

    /// <summary>How workshop axes (y up) lie on the paper.</summary>
    public Placement Place { get; } = new(Vector2D.Zero, Turn: turn);

    /// <summary>A line to cut along.</summary>
    public Layers Cut(Outline outline) => On(_cut, outline, TrueScalePicture.Line);

    /// <summary>A line to see.</summary>
    public Layers Line(Outline outline) => On(_lines, outline, TrueScalePicture.Line);

    /// <summary>A line of something else, dashed on paper.</summary>
    public Layers Reference(Outline outline) => On(_reference, outline, Thin);

    /// <summary>Draws pieces of a ring to see.</summary>
    public Layers Pieces(ImmutableArray<LaidOutline> pieces, bool whole, bool reference = false)
    {
        TrueScalePicture.Pieces(reference ? _reference : _lines, pieces, whole, Place, reference ? Thin : TrueScalePicture.Line);
        return this;
    }

    /// <summary>Words whose middle stands at a place, in the workshop's axes; a line end begins a new line.</summary>
    public Layers Words(string text, Vector2D at, Anchor? anchor = null)
    {
        _words.Text(Wrapping.Lines(text, TypeScale.Body, double.PositiveInfinity), Place.Point(at), anchor ?? Anchor.Middle);
        return this;
    }

    /// <summary>A line of words along a direction of the workshop's axes, its middle at a place.</summary>
    public Layers WordsAlong(string text, Vector2D at, double direction)
    {
        _words.Text(text, Place.Point(at), TypeScale.Body, Anchor.Middle, Place.Angle(direction));
        return this;
    }

    /// <summary>The layers together, as large as what is on them.</summary>
    public Drawing Together()
    {
        (string Name, Drawing Drawing)[] layers = [.. new[] { (CutName, _cut), (LinesName, _lines), (ReferenceName, _reference), (WordsName, _words) }.Where(l => l.Item2.Marks.Count > 0)];
        Box box = layers.SelectMany(l => Cropping.BoxesOf(l.Drawing)).Aggregate((a, b) => Box.Around([a.TopLeft, new(a.Right, a.Bottom), b.TopLeft, new(b.Right, b.Bottom)]));
        Drawing all = new(box.Width, box.Height);
        foreach ((string name, Drawing layer) in layers) all.Layer(name, layer, -box.TopLeft);
        return all;
    }

    private Layers On(Drawing layer, Outline outline, Pen pen)
    {
        layer.Stroke(outline, pen);
        return this;
    }
}
