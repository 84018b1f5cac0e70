using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using static Ringwright.Core.Documents.ShopCheck;

namespace Ringwright.Core.Documents;

/// <summary>Says whether a shop's lathe can be. Each refusal names field and value.</summary>
internal static class LatheCheck
{
    private const int MostDrills = 200;

    public static void Check(Lathe lathe)
    {
        if (lathe.Swing is Length swing) Between("lathe.swing", swing, 20, 5000);
        if (lathe.Between is Length between) Between("lathe.between", between, 20, 10_000);
        if (lathe.SlowestTurns is double slowest) Between("lathe.slowestTurns", slowest, 1, 20_000, " rpm");
        Between("lathe.roughCut", lathe.RoughCut, 0.05, 50);
        Between("lathe.finishAllowance", lathe.FinishAllowance, 0, 50);
        Between("lathe.toolForce", lathe.ToolForce, 1, 10_000, " N");
        Between("lathe.drillPoint", lathe.DrillPoint, 30, 180);
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
}
