using System.Globalization;
using NetTopologySuite.Geometries;
using Ringwright.Core.Geometry;
using Ringwright.Core.Sawing;

namespace Ringwright.Bench;

/// <summary>A board sawn into 36 wedges in simulation, every solid clipped exactly, against plainer ways to clip the same cuts.</summary>
internal sealed class SawBench : IBench
{
    private const int Wedges = 36;
    private const int Times = 40;
    private const double PromisedMs = 1;
    private const double Half = Math.PI / Wedges;
    private const double Width = 30;

    public string Name => "saw";

    public string Title => "one board sawn into 36 wedges, every piece an exact solid";

    private static SawJob Job { get; } = new(
        new(400, Width, 20), new(new TwoFenceSled(new(Half), new(Half)), 0.5 + (2 * Width * Math.Tan(Half)), 1.1) { SquaringTrim = 3 }, Wedges)
    {
        Variation = new() { SeatingDeviation = 0.001, StopDeviation = 0.05, KerfDeviation = 0.02 },
        Seed = 1,
    };

    private static SawJob Finished { get; } = Job with
    {
        Sander = new(new Fence(Half), 0.5) { SeatingDeviation = 0.0005 },
        Sanding = Sanding.Both(new(0.05, 0.05) { RimRadius = 0.3, TipRadius = 0.1 }),
    };

    public void Run(TextWriter output)
    {
        SawRun run = SawSimulator.Run(Job);
        output.WriteLine("From the saw:");
        output.WriteLine();
        Contest.Write(output,
        [
            Way.Short("ours", Times, () => SawSimulator.Run(Job)) with { MostMs = PromisedMs },
            Way.Short("plain clipper, the same cuts", Times, () => PlainVolume(run, finish: false)),
            Way.Short("NetTopologySuite, the same cuts in plan", 5, () => PlanArea(run), "two dimensions only"),
        ]);
        SawRun finished = SawSimulator.Run(Finished);
        output.WriteLine();
        output.WriteLine("Trued on the sander, sanded by hand, edges rounded:");
        output.WriteLine();
        Contest.Write(output,
        [
            Way.Short("ours", Times, () => SawSimulator.Run(Finished)) with { MostMs = PromisedMs },
            Way.Short("plain clipper, the same planes", Times / 4, () => PlainVolume(finished, finish: true)),
        ]);
        output.WriteLine();
        Check(output, run, finished);
        output.WriteLine();
        Growth.Write(output, "wedges", [9, 18, 36, 72, 144], wedges =>
        {
            SawJob job = Job with { Board = Job.Board with { Length = 2000 }, Wanted = wedges };
            return () => SawSimulator.Run(job);
        });
    }

    private static void Check(TextWriter output, SawRun run, SawRun finished)
    {
        double sawn = run.Wedges.Sum(w => w.AsSawn.Volume);
        output.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"All wedges together: {sawn:0.000000} mm³, plain clipper {PlainVolume(run, finish: false):0.000000}, plan area times thickness {PlanArea(run) * Job.Board.Thickness:0.000000}."));
        output.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"Finished: {finished.Wedges.Sum(w => w.Solid.Volume):0.000000} mm³, plain clipper {PlainVolume(finished, finish: true):0.000000}."));
    }

    /// <summary>Volume of all wedges by the plain clipper, mm³.</summary>
    private static double PlainVolume(SawRun run, bool finish)
    {
        var rest = PlainSolid.Of(run.Job.Board.Solid());
        int first = run.Cuts.Length - run.Wedges.Length;
        double volume = 0;
        for (int c = 0; c < run.Cuts.Length; c++)
        {
            Cut cut = run.Cuts[c];
            PlainSolid piece = rest.Clip(cut.Piece);
            PlainSolid beyond = rest.Clip(cut.Piece.Complement);
            rest = beyond.Clip(cut.Rest);
            if (c < first) continue;
            if (finish) piece = Finish(piece, run.Wedges[c - first]);
            volume += piece.Volume();
        }

        return volume;
    }

    /// <summary>The planes that are not the saw's or the board's.</summary>
    private static PlainSolid Finish(PlainSolid piece, SawnWedge wedge)
    {
        for (int f = 0; f < wedge.Solid.FaceCount; f++)
            if (wedge.Solid.Tags[f] is FaceTag.Trued or FaceTag.Sanded or FaceTag.Rounded) piece = piece.Clip(wedge.InBoard.ToOuter(wedge.Solid.Planes[f]));
        return piece;
    }

    /// <summary>Area of all wedges in plan, mm²: from the board, each kerf's strip is taken away, and the piece before it falls.</summary>
    private static double PlanArea(SawRun run)
    {
        NetTopologySuite.Geometries.Geometry rest = Rectangle(run.Job.Board.Length, run.Job.Board.Width);
        int first = run.Cuts.Length - run.Wedges.Length;
        double area = 0;
        for (int c = 0; c < run.Cuts.Length; c++)
        {
            Cut cut = run.Cuts[c];
            if (c >= first) area += rest.Intersection(Beyond(cut.Piece)).Area;
            rest = rest.Intersection(Beyond(cut.Rest));
        }

        return area;
    }

    private static Polygon Rectangle(double length, double width) =>
        new(new LinearRing([new(0, 0), new(length, 0), new(length, width), new(0, width), new(0, 0)]));

    /// <summary>A half-space of an upright blade, as a rectangle far larger than the board.</summary>
    private static Polygon Beyond(HalfSpace half)
    {
        const double Far = 1000;
        HalfPlane line = half.Trace(0);
        Vector2D foot = line.Offset * line.Normal;
        Vector2D along = Far * line.Normal.Perpendicular();
        Vector2D back = -Far * line.Normal;
        Coordinate At(Vector2D p) => new(p.X, p.Y);
        return new(new LinearRing([At(foot - along), At(foot + along), At(foot + along + back), At(foot - along + back), At(foot - along)]));
    }
}
