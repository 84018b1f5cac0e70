using Ringwright.Core.Boards;
using Ringwright.Core.Fitting;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Turning;

namespace Ringwright.Core.Planning;

/// <summary>How long each kind of work takes: from the record where it was timed, otherwise from the shop's stated values.</summary>
internal static class WorkTimes
{
    private const string Guess = "the shop's stated pace", Timed = "the record: gamma distribution of the pace (see learn)", NotTimed = "starting value, not timed yet";
    private const double CubicMillimetresPerLitre = 1e6, SquareMillimetresPerSquareDecimetre = 1e4;

    public static IEnumerable<WorkTime> Of(Plan plan)
    {
        Pace pace = plan.Shop.Pace;
        MillingPlan milling = MillingPlan.Of(plan);
        int settings = milling.Planer.Length + milling.Rip.Length, strips = milling.Strips.Sum(s => Math.Max(1, s.Boards));
        if (strips > 0)
            yield return new("milling", "Plane and rip", Sentence.Of("{0} settings at {1}, {2} strips at {3}", Measured.Count(settings), Measured.Time(pace.MinutesPerSetting), Measured.Count(strips), Measured.Time(pace.MinutesPerStrip)),
                Estimate.Within((settings * pace.MinutesPerSetting) + (strips * pace.MinutesPerStrip), pace.Spread), Guess);
        foreach (WorkTime work in AtSaw(plan, pace)) yield return work;
        var glue = GluePlan.Of(plan);
        if (glue.HasWork)
        {
            int hands = GlueSchedule.Quick(glue).Hands;
            yield return new("gluing", "Glue, true and flatten", Sentence.Of("{0} glue-ups; clamp and cure times are not counted", Measured.Count((int)(glue.Find("glue-ups")?.Value ?? 0))), Estimate.Within(hands, pace.Spread), Guess);
        }

        foreach (WorkTime work in AtLathe(plan, pace)) yield return work;
    }

    private static IEnumerable<WorkTime> AtSaw(Plan plan, Pace pace)
    {
        Hands hands = plan.Shop.Hands;
        // Rings of one angle share the setting of the fences; each kind of wedge has its own stop.
        int angles = plan.Rings.SelectMany(r => r.Batches.Select(b => (Math.Round(b.Glued.HalfAngle, 9), r.Stave?.Lean))).Distinct().Count(), stops = plan.Rings.Sum(r => r.Batches.Length);
        if (stops > 0)
            yield return new("setting", "Set fences and stops", Sentence.Of("{0} angles at {1}, {2} stops at {3}", Measured.Count(angles), Measured.Time(pace.MinutesPerFenceSetting), Measured.Count(stops), Measured.Time(pace.MinutesPerSetting)),
                Estimate.Within((angles * pace.MinutesPerFenceSetting) + (stops * pace.MinutesPerSetting), pace.Spread), Guess);
        // One cut frees a piece; the first of each strip only begins it.
        int pieces = StripDemands.Of(plan).Sum(d => d.ToSaw), cuts = pieces + plan.Rings.Sum(r => r.Woods.Sum(w => w.Boards));
        if (cuts > 0) yield return Recorded("sawing", "Saw", "{0} cuts at {1}", cuts, hands.MinutesPerCut, hands.CutsWorth);
        int faces = plan.Shop.Sanding.PerFace.Millimetres > 0 ? 2 * plan.Rings.Sum(r => r.Batches.Sum(b => b.Places.Length)) : 0;
        if (faces > 0) yield return Recorded("sanding", "Sand the joint faces", "{0} faces at {1}", faces, hands.MinutesPerFace, hands.FacesWorth);
    }

    private static WorkTime Recorded(string name, string label, string what, int count, double minutes, double? worth)
    {
        Sentence counted = Sentence.Of(what, Measured.Count(count), Measured.Time(minutes));
        if (minutes <= 0) return new(name, label, counted, Estimate.Exactly(0), NotTimed);
        CredibleInterval range = new PaceBelief(minutes, worth ?? HandBelief.Unrecorded.Cutting.PriorWorth).NextMinutes(count, Estimate.Level);
        return new(name, label, counted, new(range.Low, Math.Clamp(count * minutes, range.Low, range.High), range.High), worth is null ? NotTimed : Timed);
    }

    private static IEnumerable<WorkTime> AtLathe(Plan plan, Pace pace)
    {
        if (plan.Weighed is not MassProperties turned) yield break;
        double litres = Math.Max(0, plan.Rings.Sum(r => r.BlankVolume) - turned.Volume) / CubicMillimetresPerLitre, surface = (turned.OuterArea + turned.InnerArea) / SquareMillimetresPerSquareDecimetre;
        int mountings = plan.Piece.Shape?.Holding is null ? 1 : 3;
        double minutes = (mountings * pace.MinutesPerMounting) + (litres * pace.MinutesPerLitre) + (surface * pace.MinutesPerSquareDecimetre);
        yield return new("turning", "Turn and sand", Sentence.Of("{0} mountings, {1} of wood away, {2} of surface", Measured.Count(mountings), new(litres * CubicMillimetresPerLitre, Quantity.Volume), new(surface * SquareMillimetresPerSquareDecimetre, Quantity.Area)), Estimate.Within(minutes, pace.Spread), Guess);
    }
}
