using System.Collections.Immutable;
using Ringwright.Core.Geometry;
using Ringwright.Core.Timber.Colour;

namespace Ringwright.Core.Patterns.Pictures;

/// <summary>
/// Chooses woods so that the mean over a few segments comes near to the picture: each segment's difference is handed on to
/// the next one (7/16) and to the ring above, with the weights of Floyd and Steinberg (Proceedings of the Society for
/// Information Display 17 (1976), 75 to 77), to and fro from ring to ring. What is handed on is difference times visible
/// area, and on the ring above it goes where the angles meet, so cells of different size and place get their due. The wood
/// is the one that looks nearest by CIEDE2000 to the mixture of woods nearest to what is wanted with what was handed on:
/// without that limit differences pile up, because what looks near is not what balances best, and patches drift away.
/// </summary>
internal sealed class ErrorDiffusion
{
    private const double Ahead = 7.0 / 16;

    // Parts for the ring above: over the place behind, over the own place, over the place ahead.
    private static readonly ImmutableArray<(int Places, double Part)> Above = [(-1, 3.0 / 9), (0, 5.0 / 9), (1, 1.0 / 9)];

    private readonly Lattice _lattice;
    private readonly Palette _palette;
    private readonly WorkingSpace _space;
    private readonly ColourHull _hull;
    private readonly Vector3D[] _woods;
    private readonly Vector3D[][] _carried; // difference handed to each cell, per area

    public ErrorDiffusion(Lattice lattice, Palette palette, ErrorSpread spread)
    {
        (_lattice, _palette, _space) = (lattice, palette, WorkingSpace.Of(spread));
        _woods = [.. palette.Lights.Select(_space.Point)];
        _hull = new(_woods);
        _carried = [.. lattice.Rings.Select(r => new Vector3D[r.Segments])];
    }

    /// <summary>The number of the wood of each cell; null cells are background and stay null.</summary>
    public int?[][] Choose(LinearRgb?[][] wanted)
    {
        int?[][] chosen = [.. wanted.Select(row => new int?[row.Length])];
        for (int r = 0; r < wanted.Length; r++)
        {
            int n = wanted[r].Length, way = r % 2 == 0 ? 1 : -1;
            for (int i = 0; i < n; i++)
            {
                int k = way > 0 ? i : n - 1 - i;
                if (wanted[r][k] is { } light) chosen[r][k] = Choose(r, k, way, light, isLast: i == n - 1);
            }
        }

        return chosen;
    }

    private int Choose(int ring, int segment, int way, LinearRgb light, bool isLast)
    {
        Vector3D colour = _hull.Nearest(_space.Point(light) + _carried[ring][segment]);
        int wood = _palette.Nearest(_space.Lab(colour)).Wood;
        Vector3D left = colour - _woods[wood];
        double ahead = isLast ? 0 : Ahead;
        if (!isLast) _carried[ring][segment + way] += ahead * left;
        if (ring < _lattice.Rings.Length - 1) HandUp(ring, segment, way, (1 - ahead) * left);
        return wood;
    }

    private void HandUp(int ring, int segment, int way, Vector3D left)
    {
        double ratio = _lattice.Rings[ring].CellArea / _lattice.Rings[ring + 1].CellArea;
        foreach ((int places, double part) in Above)
        {
            (double from, double to) = _lattice.Span(ring, segment + (places * way));
            foreach ((int above, double turns) in _lattice.Meeting(ring + 1, from, to))
                _carried[ring + 1][above] += (part * ratio * turns / (to - from)) * left;
        }
    }
}
