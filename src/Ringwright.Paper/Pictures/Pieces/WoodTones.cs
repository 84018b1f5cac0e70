using Ringwright.Paper.Drawings;

namespace Ringwright.Paper.Pictures.Pieces;

/// <summary>
/// Collects what is of one wood and lays it down together, so that a picture of thousands of segments stays small: hatched where
/// every segment has room for lines, in greys where one has not, and with a tint on a screen.
/// </summary>
internal sealed class WoodTones(WoodKey key, bool shaded, bool coloured)
{
    private const double LeastWide = 3.2, LeastTall = 2.4; // of a segment on the paper, mm, for its lines to be told apart

    private readonly Dictionary<WoodEntry, List<Outline>> _byWood = [];

    /// <summary>Whether segments at least so wide and tall, mm on the paper, are too small for lines.</summary>
    public static bool MustShade(double width, double height) => width < LeastWide || height < LeastTall;

    /// <summary>Something of this wood.</summary>
    public void Add(string wood, Outline outline)
    {
        WoodEntry entry = key[wood];
        if (!_byWood.TryGetValue(entry, out List<Outline>? outlines)) _byWood[entry] = outlines = [];
        outlines.Add(outline);
    }

    /// <summary>Draws all of it. Nothing added may overlap.</summary>
    public void Draw(Drawing drawing)
    {
        foreach ((WoodEntry wood, List<Outline> outlines) in _byWood)
        {
            Outline all = Outline.Join(outlines);
            if (coloured) drawing.Fill(all, wood.Tint);
            else if (shaded) drawing.Fill(all, wood.Shade);
            if (shaded) continue;
            foreach (Outline outline in outlines) drawing.Hatch(outline, wood.Hatch);
        }
    }
}
