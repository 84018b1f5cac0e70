using System.Collections.Immutable;
using Ringwright.Core.Geometry;

namespace Ringwright.Core.Sawing;

/// <summary>
/// Saws a board into wedges as the jig, the blade and the stop would: every piece is what two cuts leave of the board,
/// clipped exactly. Nothing is assumed of the wedges' shape.
/// </summary>
public sealed class SawSimulator
{
    private readonly SawJob _job;
    private readonly Draws _draws;
    private readonly Draws _finish;
    private readonly BoardOnSaw _board;
    private readonly Truing? _truing;
    private readonly HandSanding _sanding = new();
    private readonly ImmutableArray<Cut>.Builder _cuts = ImmutableArray.CreateBuilder<Cut>();
    private readonly ImmutableArray<SawnWedge>.Builder _wedges = ImmutableArray.CreateBuilder<SawnWedge>();
    private readonly ImmutableArray<ConvexSolid>.Builder _offcuts = ImmutableArray.CreateBuilder<ConvexSolid>(2);
    private StopReason _reason = StopReason.AllSawn;
    private double _missing;
    private SawVolumes _volumes;

    private SawSimulator(SawJob job)
    {
        _job = job;
        _draws = new(job.Seed);
        _finish = new(job.FinishSeed ?? job.Seed);
        _board = new(job.Board);
        if (job.Sander is { } sander) _truing = new(sander, sander.RimEdge ?? job.Saw.StopDistance, _finish);
    }

    /// <summary>Runs the job. Throws <see cref="BadInputException"/> for values that cannot be used.</summary>
    public static SawRun Run(SawJob job)
    {
        ArgumentNullException.ThrowIfNull(job);
        job.Check();
        return new SawSimulator(job).Run();
    }

    private SawRun Run()
    {
        if (Square() && FirstOffcut())
        {
            for (int number = 1; number <= _job.Wanted; number++)
                if (!Wedge(number)) break;
        }

        _volumes = _volumes with { Remainder = _board.Rest.Volume };
        return new(_job, _cuts.ToImmutable(), _wedges.ToImmutable(), _offcuts.ToImmutable(), _board.Rest,
            _board.ShortestEdge, _reason, Explanation(), _volumes);
    }

    private bool Square()
    {
        if (_job.Saw.SquaringTrim == 0) return true;
        double kerf = Kerf(0);
        Cut cut = _board.SetUp(0, BoardEdge.Edge1, BoardSide.Bottom, 0, _job.Saw.BladeLean, _job.Saw.SquaringTrim, kerf);
        if (!HasLengthFor(cut)) return false;
        _offcuts.Add(Make(cut));
        _volumes = _volumes with { Squaring = _offcuts[^1].Volume };
        return true;
    }

    // Set so that the piece keeps the stated tip at the far edge when the end is square.
    private bool FirstOffcut()
    {
        double span = _job.Board.Width * Math.Tan(_job.Saw.Jig.FenceAt(BoardEdge.Edge1).Angle);
        Cut cut = SetUp(1, span + _job.Saw.FirstOffcutTip);
        if (!HasLengthFor(cut)) return false;
        _offcuts.Add(Make(cut));
        _volumes = _volumes with { FirstOffcut = _offcuts[^1].Volume };
        return true;
    }

    private bool Wedge(int number)
    {
        int cutNumber = number + 1;
        double length = _draws.Normal(Draws.Source.Stop, cutNumber, RoughLength() + _job.Variation.StopMean, _job.Variation.StopDeviation);
        Cut cut = SetUp(cutNumber, length);
        if (!HasLengthFor(cut)) return false;
        if (_board.IsMissedBy(cut))
        {
            _reason = StopReason.BladeMissesBoard;
            return false;
        }

        Cut before = _cuts[^1];
        Finish(number, before, cut, Make(cut));
        return true;
    }

    private double RoughLength()
    {
        double length = _job.Saw.StopDistance;
        if (_job.Sander is not { Oversize: > 0 } sander) return length;
        Jig jig = _job.Saw.Jig;
        return length + (sander.Oversize * ((1 / Math.Cos(jig.FenceAt(BoardEdge.Edge1).Angle)) + (1 / Math.Cos(jig.FenceAt(BoardEdge.Edge2).Angle))));
    }

    private Cut SetUp(int number, double length)
    {
        BoardEdge edge = number % 2 == 1 ? BoardEdge.Edge1 : BoardEdge.Edge2;
        Jig jig = _job.Saw.Jig;
        double seating = _draws.Normal(Draws.Source.Seating, number, _job.Variation.SeatingMean, _job.Variation.SeatingDeviation);
        double lean = _draws.Normal(Draws.Source.Lean, number, _job.Saw.BladeLean - _job.Saw.BladeTilt, _job.Variation.LeanDeviation);
        return _board.SetUp(number, edge, jig.DownAt(edge), jig.FenceAt(edge).True + seating, lean, length, Kerf(number));
    }

    private double Kerf(int number) =>
        _draws.Normal(Draws.Source.Kerf, number, _job.Saw.Kerf, _job.Variation.KerfDeviation);

    private bool HasLengthFor(Cut cut)
    {
        _missing = _job.Saw.HoldingLength - _board.ShortestEdgeAfter(cut);
        if (_missing <= 0) return true;
        _reason = StopReason.LengthUsedUp;
        return false;
    }

    private ConvexSolid Make(Cut cut)
    {
        (ConvexSolid piece, ConvexSolid kerf) = _board.Make(cut);
        _volumes = _volumes with { Kerf = _volumes.Kerf + kerf.Volume };
        _cuts.Add(cut);
        return piece;
    }

    private void Finish(int number, Cut before, Cut cut, ConvexSolid piece)
    {
        WedgeShape shape = Shape(before, cut, piece, out bool plusIsNew);
        if (_truing is { } truing) shape = truing.True(shape, number);
        shape = _sanding.Sand(shape, SandingOf(number));
        double sawn = piece.Volume;
        double dust = ReferenceEquals(shape.Solid, piece) ? 0 : sawn - shape.Solid.Volume;
        _volumes = _volumes with { Wedges = _volumes.Wedges + sawn, SandingDust = _volumes.SandingDust + dust };
        var marks = new PieceMarks(number, cut.Up, cut.Edge, plusIsNew ? before.Number : cut.Number, plusIsNew ? cut.Number : before.Number);
        _wedges.Add(new(marks, piece, shape, _job.Board.Thickness / 2));
    }

    private Sanding SandingOf(int number) => _job.Variation is { SandingUnevenness: 0, SandingUnevennessAcross: 0 }
        ? _job.Sanding
        : new(
            Uneven(_job.Sanding.Minus, Draws.Source.MinusSanding, Draws.Source.MinusAcross, number),
            Uneven(_job.Sanding.Plus, Draws.Source.PlusSanding, Draws.Source.PlusAcross, number));

    private FaceSanding Uneven(FaceSanding face, Draws.Source along, Draws.Source across, int number)
    {
        if (face.AtRim == 0 && face.AtTip == 0) return face;
        double half = _finish.Normal(along, number, 0, _job.Variation.SandingUnevenness) / 2;
        double rim = Math.Max(0, face.AtRim + half), tip = Math.Max(0, face.AtTip - half), most = 2 * Math.Min(rim, tip);
        double above = _finish.Normal(across, number, face.MoreAbove, _job.Variation.SandingUnevennessAcross);
        return face with { AtRim = rim, AtTip = tip, MoreAbove = Math.Clamp(above, -most, most) };
    }

    // Seen from above with the rim ahead, +y is to the left; which cut made that face depends on the edge and the side down.
    private WedgeShape Shape(Cut before, Cut cut, ConvexSolid piece, out bool plusIsNew)
    {
        BoardBlank blank = _job.Board;
        HalfSpace down = blank.Plane(cut.Down);
        HalfSpace rim = blank.Plane(cut.Edge);
        HalfSpace old = before.Rest;
        plusIsNew = (-down.Normal).Cross(rim.Normal).X > 0;
        HalfSpace plus = plusIsNew ? cut.Piece : old;
        HalfSpace minus = plusIsNew ? old : cut.Piece;
        return new(piece, minus, plus, rim, blank.Plane(cut.Edge.Opposite()), down, blank.Plane(cut.Up));
    }

    private string Explanation() => _reason switch
    {
        StopReason.AllSawn => $"All {_job.Wanted} wedges are sawn; {Require.Text(Math.Round(_board.ShortestEdge, 2))} mm are left on the shortest edge.",
        StopReason.LengthUsedUp => $"{_wedges.Count} of {_job.Wanted} wedges are sawn: one more cut would leave {Require.Text(Math.Round(_missing, 2))} mm less than the {Require.Text(_job.Saw.HoldingLength)} mm needed to hold the board.",
        _ => $"{_wedges.Count} of {_job.Wanted} wedges are sawn: with the stop at {Require.Text(_job.Saw.StopDistance)} mm the blade passes in front of the board's end; the stop must stand farther from the blade or the board be narrower.",
    };
}
