using System.Globalization;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;

namespace Ringwright.Core.Documents;

/// <summary>Says whether a shop's lathe can be. Each refusal names field and value.</summary>
internal static class LatheCheck
{
    private const int MostDrills = 200;

    public static void Check(Lathe lathe)
    {
        Between("lathe.swing", lathe.Swing, 20, 5000);
        Between("lathe.between", lathe.Between, 20, 10_000);
        if (lathe.SlowestTurns is double slowest) Number("lathe.slowestTurns", slowest, 1, 20_000, " rpm");
        Between("lathe.roughCut", lathe.RoughCut, 0.05, 50);
        Between("lathe.finishAllowance", lathe.FinishAllowance, 0, 50);
        Number("lathe.toolForce", lathe.ToolForce, 1, 10_000, " N");
        if (lathe.DrillPoint.Degrees is not (>= 30 and <= 180)) throw new BadInputException("lathe.drillPoint", $"{lathe.DrillPoint.Written} cannot be", "30° to 180° can");
        if (lathe.Jaws is Jaws jaws) Check(jaws);
        if (lathe.Drills is not { IsDefault: false } drills) return;
        if (drills.Length > MostDrills) throw new BadInputException("lathe.drills", $"there are {drills.Length}", $"at most {MostDrills} can be");
        foreach (Length drill in drills) Between("lathe.drills", drill, 0.5, 200);
    }

    private static void Check(Jaws jaws)
    {
        Range("lathe.jaws.tenon", jaws.TenonFrom, jaws.TenonTo);
        Range("lathe.jaws.recess", jaws.RecessFrom, jaws.RecessTo);
    }

    private static void Range(string field, Length from, Length to)
    {
        Between(field + "From", from, 1, 2000);
        Between(field + "To", to, 1, 2000);
        if (to.Millimetres < from.Millimetres) throw new BadInputException(field + "To", $"{to.Written} is less than the smallest, {from.Written}", "the largest that is gripped is needed");
    }

    private static void Between(string field, Length? given, double least, double most)
    {
        if (given is Length length && !(length.Millimetres >= least && length.Millimetres <= most))
            throw new BadInputException(field, $"{length.Written} cannot be", string.Create(CultureInfo.InvariantCulture, $"{least} mm to {most} mm can"));
    }

    private static void Number(string field, double value, double least, double most, string unit)
    {
        if (!(value >= least && value <= most))
            throw new BadInputException(field, string.Create(CultureInfo.InvariantCulture, $"{value}{unit} cannot be"), string.Create(CultureInfo.InvariantCulture, $"{least}{unit} to {most}{unit} can"));
    }
}
