using Ringwright.Core;
using Ringwright.Core.Fitting;
using Ringwright.Core.Measures;
using Ringwright.Core.Planning;
using Ringwright.Web.Bench;

namespace Ringwright.Web.Stations;

/// <summary>What the readings say: which fence, which way, how far.</summary>
public partial class SeenAnswer
{
    private (RingPlan Ring, string Seen, UnitChoice Units)? _of;
    private FitDiagnosis? _diagnosis;
    private string? _problem;

    /// <summary>How far each fence moves, with its reason.</summary>
    internal static Figure Move(FitDiagnosis found)
    {
        FenceCorrection c = found.Correction;
        if (c.IsTilt)
        {
            return new("tilt-change", "Change of the blade's tilt", Math.Abs(c.FenceAngle), Quantity.FineAngle, new(
                "E/(2·N·k)", "Geometry; E is the closing error, and each of N staves has two edges", "Correct, saw in scrap, and read again.", false,
                [
                    new("E", "closing error", found.ClosingError.Mean, Quantity.FineAngle),
                    new("k", "part of a change of the tilt that turns a joint", c.Counts, Quantity.Share),
                    new("t", "tilt now", c.FenceAngleNow, Quantity.Angle),
                ]));
        }

        return new("fence-move", "Move each fence on the rule", c.RuleMove, Quantity.FineLength, new(
            "D·(tan(a + c) − tan(a))", "Geometry; c is the closing error over twice the number of wedges, for each wedge has two faces",
            "The rule stands square to the square line, D from the pivot. Correct, saw in scrap, and read again.", false,
            [
                new("D", "distance of the rule from the pivot", c.RuleDistance, Quantity.Length),
                new("a", "each fence now, from square", c.FenceAngleNow, Quantity.Angle),
                new("c", "its change", c.FenceAngle, Quantity.FineAngle),
            ]));
    }

    /// <inheritdoc/>
    protected override void OnParametersSet() => Diagnose();

    /// <inheritdoc/>
    protected override bool ShouldRender()
    {
        Diagnose();
        return true;
    }

    private void Diagnose()
    {
        var desk = new FitDesk(Sheet);
        (RingPlan, string, UnitChoice) of = (Sheet.Ring, string.Join('\n', desk.Seen), Sheet.Units);
        if (_of is { } last && ReferenceEquals(last.Ring, of.Item1) && last.Seen == of.Item2 && last.Units == of.Item3) return;
        _of = of;
        (_diagnosis, _problem) = (null, null);
        try
        {
            if (!desk.Seen.IsEmpty) _diagnosis = FitDiagnosis.Of(Sheet.Ring.Stave is null ? DiagnosedRing.Of(Sheet.Ring, Sheet.Good.Shop.Sled) : DiagnosedRing.Of(Sheet.Ring, Sheet.Good.Shop.Sled, 0), desk.Observations());
        }
        catch (Exception e) when (e is BadInputException or KeyNotFoundException)
        {
            _problem = e.Message;
        }
    }
}
