using Ringwright.Core.Gauges;
using Ringwright.Core.Geometry;

namespace Ringwright.Paper.Templates;

/// <summary>Gauges as flat shapes, to saw or to burn out of a board.</summary>
internal static class GaugeTemplates
{
    private const string WedgeUse = "Lay it between the fences: when it touches both along their whole length, their sum is right, whatever each is alone.";
    private const string BlockUse = "Unplug the saw. Lay an end against the blade's plate, not its teeth: the sloping face is the fence's line. For a tilt stand the end on the table and lean the blade to the face.";

    public static Template Of(GaugeShape gauge)
    {
        Layers layers = new(Math.PI / 2); // upright, as the paper stands
        layers.Cut(layers.Place.Polygon(gauge.Outline.Vertices));
        (Vector2D corner, double width, double height) = gauge.Panel;
        layers.WordsAlong(gauge.Engraving, corner + new Vector2D(width / 2, height / 2), 0);
        bool block = gauge.Name.EndsWith("block", StringComparison.Ordinal);
        return new(block ? TemplateKind.Block : TemplateKind.Gauge, gauge.Name, block ? BlockUse : WedgeUse, layers.Together());
    }
}
