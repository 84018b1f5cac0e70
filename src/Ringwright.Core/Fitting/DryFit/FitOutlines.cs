using System.Collections.Immutable;
using Ringwright.Core.Geometry;

namespace Ringwright.Core.Fitting;

/// <summary>
/// Outlines for a picture of a dry-fitted ring. Real gaps are too small to see, so they can be drawn larger by a stated
/// factor: at either end of every joint the two corners are moved apart about the point midway between them until
/// their distance is the real one times the factor, and the rest of each outline follows its nearest corner. The ring
/// stays in its place, touching corners stay touching, and factor 1 is the exact ring.
/// </summary>
public static class FitOutlines
{
    private static readonly ImmutableArray<double> RoundFactors = [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000];

    /// <summary>The largest round factor (1, 2, 5, 10 and so on to 1000) that draws the worst gap at most a third of the mean outer edge wide.</summary>
    public static double SuggestFactor(DryFitResult fit)
    {
        double edge = fit.Summary.BandLength / fit.Wedges.Length;
        return RoundFactors.LastOrDefault(f => f * fit.Summary.WorstGap <= edge / 3, 1);
    }

    /// <summary>The outline of each wedge at one level, mm, with the gaps <paramref name="factor"/> times as wide.</summary>
    /// <exception cref="BadInputException">The factor is not at least 1.</exception>
    public static ImmutableArray<ImmutableArray<Vector2D>> Draw(DryFitResult fit, bool top, double factor)
    {
        if (!(factor >= 1 && double.IsFinite(factor)))
            throw new BadInputException("Picture of the fit", FormattableString.Invariant($"gaps cannot be drawn {factor:0.###} times as wide"), "give a factor of at least 1");
        FaceEnds[] ends = [.. fit.Wedges.Select((w, i) => FaceEnds.Of(Section(w, top), fit.Poses[i]))];
        int n = ends.Length;
        return
        [
            .. fit.Wedges.Select((w, i) =>
                Outline(Section(w, top), fit.Poses[i], ends[i].Apart(ends[(i + n - 1) % n], ends[(i + 1) % n], factor))),
        ];
    }

    private static ImmutableArray<Vector2D> Section(FitWedge wedge, bool top) => (top ? wedge.Top : wedge.Bottom).Vertices;

    private static ImmutableArray<Vector2D> Outline(ImmutableArray<Vector2D> section, WedgePose pose, (Vector2D At, Vector2D Move)[] moves)
    {
        var outline = ImmutableArray.CreateBuilder<Vector2D>(section.Length);
        foreach (Vector2D corner in section)
        {
            Vector2D place = pose.Place(corner);
            double nearest = moves.Min(m => (m.At - place).Length);
            (Vector2D At, Vector2D Move)[] close = [.. moves.Where(m => (m.At - place).Length <= nearest)];
            outline.Add(close.Aggregate(place, (p, m) => p + ((1.0 / close.Length) * m.Move)));
        }

        return outline.MoveToImmutable();
    }

    /// <summary>The ends of the two faces of a wedge on the table.</summary>
    private sealed record FaceEnds(Vector2D PlusRim, Vector2D PlusTip, Vector2D MinusRim, Vector2D MinusTip)
    {
        public static FaceEnds Of(ImmutableArray<Vector2D> section, WedgePose pose)
        {
            (int plusTip, int plusRim) = FaceChain.Ends(section, plusSide: true);
            (int minusTip, int minusRim) = FaceChain.Ends(section, plusSide: false);
            return new(pose.Place(section[plusRim]), pose.Place(section[plusTip]), pose.Place(section[minusRim]), pose.Place(section[minusTip]));
        }

        /// <summary>Where each end is and how it moves away from its partner.</summary>
        public (Vector2D At, Vector2D Move)[] Apart(FaceEnds before, FaceEnds after, double factor)
        {
            Vector2D Move(Vector2D own, Vector2D partner) => ((factor - 1) / 2) * (own - partner);
            return
            [
                (PlusRim, Move(PlusRim, after.MinusRim)),
                (PlusTip, Move(PlusTip, after.MinusTip)),
                (MinusRim, Move(MinusRim, before.PlusRim)),
                (MinusTip, Move(MinusTip, before.PlusTip)),
            ];
        }
    }
}
