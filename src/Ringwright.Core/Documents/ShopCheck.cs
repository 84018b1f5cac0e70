using System.Globalization;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;

namespace Ringwright.Core.Documents;

/// <summary>Says whether a shop's values can be. Each refusal names field and value.</summary>
public static class ShopCheck
{
    /// <summary>Throws for the first thing that cannot be.</summary>
    /// <exception cref="BadInputException">With field, value and what would be right.</exception>
    public static void Check(Shop shop)
    {
        ArgumentNullException.ThrowIfNull(shop);
        if (string.IsNullOrWhiteSpace(shop.Name)) throw new BadInputException("name", "the shop has no name", "give it one");
        Between("saw.kerf", shop.Saw.Kerf, 0.1, 12);
        Between("saw.lean", shop.Saw.Lean, -10, 10);
        Between("saw.kerfSd", shop.Saw.KerfSd, 0, 1);
        Between("saw.endTrim", shop.Saw.EndTrim, 0, 500);
        Between("saw.holdingLength", shop.Saw.HoldingLength, 0, 1000);
        Between("sled.ruleDistance", shop.Sled.RuleDistance, 10, 3000);
        Between("sled.sineBar", shop.Sled.SineBar, 10, 1000);
        if (shop.Saw.NarrowBlade is Length blade) Between("saw.narrowBlade", blade, 0.3, 30);
        Between("boards.length", shop.Boards.Length, 20, 10000);
        if (shop.Boards.Width is Length width) Between("boards.width", width, 5, 2000);
        Between("sanding.perFace", shop.Sanding.PerFace, 0, 3);
        Between("sanding.unevenness", shop.Sanding.Unevenness, 0, 1);
        Between("sanding.flattening", shop.Sanding.Flattening, 0, 10);
        Between("wanted.jointGap", shop.Wanted.JointGap, 0.001, 2);
        Between("wanted.allowance", shop.Wanted.Allowance, 0, 100);
        Between("wanted.leastRimEdge", shop.Wanted.LeastRimEdge, 0, 100);
        Between("wanted.boreWander", shop.Wanted.BoreWander, 0, 20);
        Between("hands.angleSd", shop.Hands.AngleSd, 0, 0.5);
        Between("hands.angleBias", shop.Hands.AngleBias, -5, 5);
        Between("hands.stopSd", shop.Hands.StopSd, 0, 2);
        Between("hands.settingSd", shop.Hands.SettingSd, 0, 5);
        Between("hands.loss", shop.Hands.Loss, 0, 0.9);
        if (shop.Hands.LossWorth is double worth) Between("hands.lossWorth", worth, 0.001, 1e9);
        if (shop.Hands.CutsWorth is double cuts) Between("hands.cutsWorth", cuts, 0.001, 1e9);
        if (shop.Hands.FacesWorth is double faces) Between("hands.facesWorth", faces, 0.001, 1e9);
        Between("hands.minutesPerCut", shop.Hands.MinutesPerCut, 0, 60);
        Between("hands.minutesPerFace", shop.Hands.MinutesPerFace, 0, 60);
        Between("wanted.confidence", shop.Wanted.Confidence, 0.5, 0.9999);
        TimberCheck.Check(shop);
        LatheCheck.Check(shop.Lathe);
        CostCheck.Check(shop);
        GlueCheck.Check(shop);
    }

    internal static void Between(string field, Length length, double least, double most)
    {
        if (!(length.Millimetres >= least && length.Millimetres <= most)) throw Refuse(field, length.Written, least, most, " mm");
    }

    internal static void Between(string field, Angle angle, double least, double most)
    {
        if (!(angle.Degrees >= least && angle.Degrees <= most)) throw Refuse(field, angle.Written, least, most, "°");
    }

    internal static void Between(string field, double value, double least, double most, string unit = "")
    {
        if (!(value >= least && value <= most)) throw Refuse(field, value.ToString("R", CultureInfo.InvariantCulture) + unit, least, most, unit);
    }

    private static BadInputException Refuse(string field, string value, double least, double most, string unit) =>
        new(field, $"{value} cannot be", string.Create(CultureInfo.InvariantCulture, $"{least}{unit} to {most}{unit} can"));
}
