using System.Collections.Immutable;
using Ringwright.Core.Geometry;
using Ringwright.Core.Planning;

namespace Ringwright.Paper.Pictures;

/// <summary>The lines of a ring, or of some pieces of it that lie beside each other, from above. In the workshop's axes, mm.</summary>
internal sealed class RingLines
{
    private const double Same = 1e-6; // corners nearer than this are one, mm

    private readonly ImmutableArray<LaidOutline> _pieces;
    private readonly bool _whole;

    /// <summary>Takes pieces counter-clockwise; <paramref name="whole"/> when they are all of the ring.</summary>
    public RingLines(ImmutableArray<LaidOutline> pieces, bool whole)
    {
        (_pieces, _whole) = (pieces, whole);
        IsClosed = pieces.Length > 1 && Enumerable.Range(0, pieces.Length - (whole ? 0 : 1)).All(i => pieces[i].Touches(pieces[(i + 1) % pieces.Length]));
        Reach = pieces.SelectMany(p => p.Corners).Max(c => c.Length);
    }

    /// <summary>Whether each piece lies against the next.</summary>
    public bool IsClosed { get; }

    /// <summary>Distance of the farthest corner from the axis.</summary>
    public double Reach { get; }

    /// <summary>Corners along the outside, counter-clockwise.</summary>
    public Vector2D[] Outside => Chain(p => (p.Corners[0], p.Corners[1]));

    /// <summary>Corners along the inside, counter-clockwise; one when all pieces come to a point.</summary>
    public Vector2D[] Inside => Chain(p => (p.Corners[3], p.Corners[2]));

    /// <summary>
    /// The joints from inside to outside. Towards the centre they end where they would be nearer to each other than
    /// <paramref name="apart"/>.
    /// </summary>
    public IEnumerable<(Vector2D Inner, Vector2D Outer)> Joints(double apart)
    {
        double least = apart * Math.Max(_pieces.Length, 2 * Math.PI / (_pieces[0].Width / Reach)) / (2 * Math.PI);
        for (int i = 0; i < _pieces.Length; i++)
        {
            LaidOutline before = _pieces[(i + _pieces.Length - 1) % _pieces.Length], here = _pieces[i];
            bool first = i == 0 && !_whole;
            // A joint is as long as the longer of its two faces.
            Vector2D outer = first || here.Corners[0].Length >= before.Corners[1].Length ? here.Corners[0] : before.Corners[1];
            Vector2D inner = first || here.Corners[3].Length <= before.Corners[2].Length ? here.Corners[3] : before.Corners[2];
            if (outer.Length > least) yield return (Beyond(inner, outer, least), outer);
        }

        if (!_whole && _pieces[^1].Corners[1].Length > least) yield return (Beyond(_pieces[^1].Corners[2], _pieces[^1].Corners[1], least), _pieces[^1].Corners[1]);
    }

    private static Vector2D Beyond(Vector2D inner, Vector2D outer, double least) => inner.Length >= least
        ? inner
        : outer + ((outer.Length - least) / (outer.Length - inner.Length) * (inner - outer));

    private Vector2D[] Chain(Func<LaidOutline, (Vector2D From, Vector2D To)> edge)
    {
        List<Vector2D> corners = [];
        foreach ((Vector2D from, Vector2D to) in _pieces.Select(edge))
        {
            foreach (Vector2D corner in new[] { from, to })
                if (corners.Count == 0 || (corner - corners[^1]).Length > Same) corners.Add(corner);
        }

        if (_whole && corners.Count > 1 && (corners[0] - corners[^1]).Length <= Same) corners.RemoveAt(corners.Count - 1);
        return [.. corners];
    }
}
