using System.Collections.Immutable;
using Ringwright.Core.Fitting;
using Ringwright.Core.Pieces;

namespace Ringwright.Core.Planning;

/// <summary>Decides how a ring is glued: what the open time lets be closed at once, and whether it will close by itself.</summary>
internal static class RingGluer
{
    // A rule of our own: the band's pull reaches about half of this to either side.
    private const double BandEvery = 100;

    public static RingGluing Plan(RingPlan ring, Shop shop) => ring.Ring switch
    {
        SolidLayer => Layer(ring, shop),
        OpenRing => new(ring, GlueWay.PieceByPiece, ring.Ring.Around, [], [], [], [.. RingGlueSteps.PieceByPiece(ring, shop)]),
        _ when ring.Board is not null && ring.Batches.IsEmpty => new(ring, GlueWay.FromDisc, 0, [], [], [], [.. RingGlueSteps.FromDisc(ring)]),
        _ => Closed(ring, shop),
    };

    private static RingGluing Layer(RingPlan ring, Shop shop)
    {
        int across = (int)(ring.Find("boards-across")?.Value ?? 1);
        if (across == 1) return new(ring, GlueWay.OnePiece, 1, [], [], [], []);
        var list = new GlueUpList(GluePace.AtOnce(shop));
        list.Run(0, across, GlueWork.Edges, GlueClamp.Press, 1);
        return new(ring, GlueWay.Edges, across, [], list.All, [], [.. RingGlueSteps.Edges(across)]);
    }

    private static RingGluing Closed(RingPlan ring, Shop shop)
    {
        var course = new GluedCourse(ring);
        var list = new GlueUpList(GluePace.AtOnce(shop));
        int bands = ring.Stave is null ? 1 : Math.Max(2, (int)Math.Ceiling(ring.Ring.Thickness.Millimetres / BandEvery));
        GlueWay way = WayOf(ring, course, shop);
        switch (way)
        {
            case GlueWay.AtOnce: list.Add(Close(course.Pieces, [.. Enumerable.Range(0, course.Pieces)], [], bands)); break;
            case GlueWay.Halves: Halves(course, list, bands, shop); break;
            case GlueWay.FitLast: FitLast(course, list, bands); break;
            default: Runs(course, list, bands); break;
        }

        var gluing = new RingGluing(ring, way, course.Pieces, Boards(ring, shop), list.All, [], []);
        ImmutableArray<Figure> figures = RingGlueFigures.Of(gluing, course, shop);
        gluing = gluing with { Figures = figures };
        return gluing with { Steps = [.. RingGlueSteps.Closed([gluing], shop)] };
    }

    private static GlueWay WayOf(RingPlan ring, GluedCourse course, Shop shop)
    {
        double chance = (ring.Find("chance-after-correction") ?? ring.Find("chance-to-close"))?.Value ?? 1;
        bool closes = chance >= ReachMap.FairChance;
        if (closes && course.Pieces <= GluePace.AtOnce(shop)) return GlueWay.AtOnce;
        if (course.Half is not null) return GlueWay.Halves;
        return closes ? GlueWay.Runs : GlueWay.FitLast;
    }

    // Both halves under one band when there is time for it: each keeps the other in shape, the two joints between them dry.
    private static void Halves(GluedCourse course, GlueUpList list, int bands, Shop shop)
    {
        int half = course.Half!.Value, second = course.Pieces / 2;
        int[] after;
        if (2 * (half - 1) <= GluePace.AtOnce(shop) && half > 1)
        {
            int[] joints = [.. Enumerable.Range(0, half - 1), .. Enumerable.Range(second, half - 1)];
            after = [list.Add(new(GlueWork.Halves, [new(0, half), new(second, half)], [.. joints], [], GlueClamp.Band, bands))];
        }
        else
        {
            after = [.. new[] { list.Run(0, half, GlueWork.Run, GlueClamp.Band, bands), list.Run(second, half, GlueWork.Run, GlueClamp.Band, bands) }.OfType<int>()];
        }

        int[] closing = [.. Enumerable.Range(half - 1, second - half + 1), .. Enumerable.Range(second + half - 1, second - half + 1)];
        list.Add(Close(course.Pieces, [.. closing], [.. after], bands));
    }

    private static void FitLast(GluedCourse course, GlueUpList list, int bands)
    {
        int? run = list.Run(0, course.BeforeLast, GlueWork.Run, GlueClamp.Band, bands);
        list.Add(Close(course.Pieces, [.. Enumerable.Range(course.BeforeLast - 1, course.Pieces - course.BeforeLast + 1)], [.. run is int r ? new[] { r } : []], bands));
    }

    private static void Runs(GluedCourse course, GlueUpList list, int bands)
    {
        List<int> after = [], joints = [];
        int at = 0;
        foreach (int part in GlueUpList.Even(course.Pieces, list.PartsOfRing(course.Pieces)))
        {
            if (list.Run(at, part, GlueWork.Run, GlueClamp.Band, bands) is int made) after.Add(made);
            at += part;
            joints.Add(at - 1);
        }

        list.Add(Close(course.Pieces, [.. joints], [.. after], bands));
    }

    private static GlueUp Close(int pieces, ImmutableArray<int> joints, ImmutableArray<int> after, int bands) =>
        new(GlueWork.Close, [new(0, pieces)], joints, after, GlueClamp.Band, bands);

    // The strips of all laminated boards, numbered through; joints between two boards are none.
    private static ImmutableArray<GlueUp> Boards(RingPlan ring, Shop shop)
    {
        if (ring.Lamination is not Lamination board) return [];
        var list = new GlueUpList(GluePace.AtOnce(shop));
        int first = 0;
        foreach (int repeats in LaminationFigures.RepeatsOfBoards(board, ring))
        {
            list.Run(first, repeats * board.Strips.Length, GlueWork.Lamination, GlueClamp.Press, 1);
            first += repeats * board.Strips.Length;
        }

        return list.All;
    }
}
