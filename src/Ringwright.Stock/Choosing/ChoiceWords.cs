using System.Globalization;
using Ringwright.Core.Fitting;

namespace Ringwright.Stock.Choosing;

/// <summary>The sentence that says what a choice brought.</summary>
internal static class ChoiceWords
{
    public static string Sentence(WedgeChoiceInput input, RingFigures before, RingFigures after, double gapSd)
    {
        double gain = before.WorstGap - after.WorstGap;
        string which = $"the best {input.Places} of {input.Wedges.Count} wedges";
        string joint = input.Closing == Closing.Halves ? "the worse joint between the halves" : "the last joint";
        string caliper = $"the caliper leaves ±{Mm(2 * gapSd)} (two sd) unknown";
        if (gain <= input.GapStep)
            return $"Taken as they come, the wedges leave {Mm(before.WorstGap)} at {joint}; {which} leave {Mm(after.WorstGap)}, which is no gain, and {caliper}.";
        string told = gain > 2 * gapSd ? $"more than the ±{Mm(2 * gapSd)} (two sd) that the caliper leaves unknown" : $"less than the caliper can tell, for it leaves ±{Mm(2 * gapSd)} (two sd) unknown";
        return $"With {which}, by the readings, {joint} opens by {Mm(after.WorstGap)} instead of {Mm(before.WorstGap)} as they come: {told}.";
    }

    private static string Mm(double value) => string.Create(CultureInfo.InvariantCulture, $"{value:0.000} mm");
}
