using System.Globalization;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using static Ringwright.Core.Documents.ShopCheck;

namespace Ringwright.Core.Documents;

/// <summary>Says whether a shop's glue, clamps and milling can be. Each refusal names field and value.</summary>
internal static class GlueCheck
{
    private const double Day = 24 * 60;

    /// <summary>Throws for the first thing that cannot be.</summary>
    /// <exception cref="BadInputException">With field, value and what would be right.</exception>
    public static void Check(Shop shop)
    {
        CheckGlue(shop.Adhesive);
        CheckWork(shop.Gluing, shop.Adhesive);
        CheckMilling(shop.Milling);
    }

    private static void CheckGlue(Adhesive glue)
    {
        if (string.IsNullOrWhiteSpace(glue.Name)) throw new BadInputException("adhesive.name", "the glue has no name", "give it one");
        Times("adhesive.openTime", glue.OpenTime, 0.1, Day);
        Times("adhesive.clampTime", glue.ClampTime, 0, 30 * Day);
        Times("adhesive.cureTime", glue.CureTime, 0, 90 * Day);
        if (glue.CureTime.Minutes < glue.ClampTime.Minutes)
            throw new BadInputException("adhesive.cureTime", $"{glue.CureTime} is shorter than the clamp time of {glue.ClampTime}", "both are counted from closing, so a longer one is needed");
    }

    private static void CheckWork(Gluing gluing, Adhesive glue)
    {
        Between("gluing.bandClamps", gluing.BandClamps, 1, 100);
        Between("gluing.presses", gluing.Presses, 1, 100);
        Between("gluing.minutesPerJoint", gluing.MinutesPerJoint, 0.01, 60);
        Between("gluing.minutesPerGlueUp", gluing.MinutesPerGlueUp, 0, 60);
        Between("gluing.minutesPerTruing", gluing.MinutesPerTruing, 0, 240);
        Between("gluing.minutesPerFlattening", gluing.MinutesPerFlattening, 0, 240);
        if (gluing.Session is Duration session) Times("gluing.session", session, 15, Day);
        Between("gluing.hollowingReach", gluing.HollowingReach, 1, 3000);
        double least = gluing.MinutesPerJoint + gluing.MinutesPerGlueUp;
        if (glue.OpenTime.Minutes < least)
            throw new BadInputException("adhesive.openTime", $"{glue.OpenTime} is over before one joint is spread and closed", string.Create(CultureInfo.InvariantCulture, $"at least the {least} min of gluing.minutesPerJoint and gluing.minutesPerGlueUp are needed"));
    }

    private static void CheckMilling(Milling milling)
    {
        if (milling.RoughThicknesses.IsDefaultOrEmpty) throw new BadInputException("milling.roughThicknesses", "there is none", "at least one is needed, such as \"27 mm\"");
        foreach (Length rough in milling.RoughThicknesses) Between("milling.roughThicknesses", rough, 1, 500);
        for (int i = 1; i < milling.RoughThicknesses.Length; i++)
            if (milling.RoughThicknesses[i].Millimetres <= milling.RoughThicknesses[i - 1].Millimetres)
                throw new BadInputException("milling.roughThicknesses", $"{milling.RoughThicknesses[i]} follows {milling.RoughThicknesses[i - 1]}", "each must be thicker than the one before");
        Between("milling.thicknessAllowance", milling.ThicknessAllowance, 0, 50);
        Between("milling.widthAllowance", milling.WidthAllowance, 0, 50);
        Between("milling.perPass", milling.PerPass, 0.05, 10);
        Between("milling.leastPlanerLength", milling.LeastPlanerLength, 50, 2000);
    }

    private static void Times(string field, Duration time, double least, double most)
    {
        if (time.Minutes < least || time.Minutes > most) throw new BadInputException(field, $"{time.Written} cannot be", $"{Duration.Print(least)} to {Duration.Print(most)} can");
    }
}
