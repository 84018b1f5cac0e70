using System.Collections.Immutable;
using Ringwright.Core.Pieces;
using Ringwright.Core.Profiles;

namespace Ringwright.Core.Planning;

/// <summary>The work at the lathe in order. Common practice, no source; the numbers are the plan's.</summary>
internal static class LatheSteps
{
    private const double ThinWall = 6;  // mm; thinner walls are finished in steps. Common practice, no source.
    private const double StepDown = 25; // mm of height finished at a time. Common practice, no source.

    public static ImmutableArray<Sentence> Of(Plan plan, ImmutableArray<RingPasses> rings, ImmutableArray<Figure> figures, Sentence? boring, bool held)
    {
        if (rings.IsEmpty) return [];
        Measured Of(string name) => figures.First(f => f.Name == name).Measured;
        bool Has(string name) => figures.Any(f => f.Name == name);
        bool hollow = plan.Form is TurnedForm form && !form.IsSolid, floor = hollow && BoringPlan.Floor(plan.Form!) is not null;
        bool tube = plan.Piece.Shape?.Inside is Bore { Tube: not null };
        List<Sentence> steps = [];
        if (tube)
        {
            steps.Add(boring!);
            steps.Add(Sentence.Of("Glue in the tube, and when the glue is hard trim both ends flush and square to it."));
            steps.Add(Sentence.Of("Mount it on a mandrel or between cones; turn by hand: nothing may touch the rest."));
        }
        else
        {
            steps.Add(Mount(plan));
            steps.Add(Sentence.Of("Turn it by hand once around, stand out of the line of the rim, and start slowly: no faster than {0} until it is round.", Of("speed-blank")));
        }

        if (Has("cuts-outside"))
            steps.Add(Sentence.Of("Rough the outside in cuts of {1}, {0} at most, to {2} above the line. Stop and look at every joint once it is round; a joint that shows a gap ends the work here.", Of("cuts-outside"), Measured.Length(plan.Shop.Lathe.RoughCut.Millimetres), Measured.Length(plan.Shop.Lathe.FinishAllowance.Millimetres)));
        if (held)
            steps.Add(Sentence.Of(plan.Piece.Shape!.Holding!.Kind == HoldingKind.Tenon
                ? "Turn the tenon, {0} wide and {1} long, its shoulder square. Turn the work around into the chuck."
                : "Turn the recess, {0} wide and {1} deep, its rim square. Turn the work around onto the jaws.", Of("holding"), Of("holding-length")));
        if (!tube && boring is not null) steps.Add(boring);
        if (floor && Has("wall-roughed"))
            steps.Add(Sentence.Of("Rough the inside from the middle outward, to {0} inside the line; the wall is then {1} at its thinnest.", Measured.Length(plan.Shop.Lathe.FinishAllowance.Millimetres), Of("wall-roughed")));
        steps.Add(Finish(floor, Has("wall-finished") ? Of("wall-finished") : null, Of("speed-round")));
        if (held) steps.Add(Sentence.Of("Hold the rim in a jam chuck or between padded jaws, tailstock up, and finish the foot."));
        return [.. steps];
    }

    private static Sentence Mount(Plan plan)
    {
        bool solid = plan.Form?.IsSolid ?? plan.Rings.All(r => r.Ring is WedgeDisc or SolidLayer);
        if (plan.Piece.Kind == PieceKind.Spindle) return Sentence.Of("Mark the centre of both ends and mount it between centres, the tailstock locked.");
        return plan.Form is null && plan.Rings.Length == 1
            ? Sentence.Of(solid ? "Glue it to a flat waste block on a faceplate, its centre on the axis." : "Hold it from inside on jaws with wooden pads, or glue it to a flat waste block on a faceplate; centre it by its inner corners.")
            : Sentence.Of("Hold the stack by a waste block glued to it, on a faceplate or in the chuck, and bring up the tailstock.");
    }

    private static Sentence Finish(bool floor, Measured? wall, Measured speed)
    {
        if (wall is not Measured thin || !floor) return Sentence.Of("Finish to the line and sand with the lathe slow; no faster than {0} at any time.", speed);
        return thin.Value < ThinWall
            ? Sentence.Of("Finish outside and inside together from the rim down, {0} of height at a time, the wall {1} at its thinnest: once the wood below is thin, do not go back up. No faster than {2}.", Measured.Length(StepDown), thin, speed)
            : Sentence.Of("Finish the outside, then the inside, the wall {0} at its thinnest; sand with the lathe slow. No faster than {1}.", thin, speed);
    }
}
