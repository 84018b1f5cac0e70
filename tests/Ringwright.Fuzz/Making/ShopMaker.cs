using System.Collections.Immutable;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;

namespace Ringwright.Fuzz.Making;

/// <summary>Random shops within what a shop may be.</summary>
public static class ShopMaker
{
    public static Shop Shop(Dice dice)
    {
        Shop shop = dice.Chance(0.5) ? Core.Pieces.Shop.Starting : Core.Pieces.Shop.StartingIn(LengthUnit.Inch);
        if (dice.Chance(0.3)) return shop with { Species = Own(dice) };
        return shop with
        {
            Saw = new() { Kerf = Mm(dice.Scale(0.1, 12)), Lean = Angle.FromDegrees(dice.Chance(0.5) ? 0 : dice.Between(-10, 10)), KerfSd = Mm(dice.Chance(0.2) ? 0 : dice.Between(0, 1)), EndTrim = Mm(dice.Between(0, 50)), HoldingLength = Mm(dice.Chance(0.1) ? dice.Between(0, 1000) : dice.Between(0, 120)) },
            Sled = new() { Kind = dice.One(Enum.GetValues<SledKind>()), RuleDistance = Mm(dice.Scale(10, 3000)), SineBar = Mm(dice.Scale(10, 1000)) },
            Boards = new() { Length = Mm(dice.Chance(0.1) ? dice.Scale(20, 10_000) : dice.Between(250, 2500)), Width = dice.Chance(0.3) ? Mm(dice.Scale(5, 2000)) : null },
            Sanding = new() { PerFace = Mm(dice.Chance(0.2) ? 0 : dice.Scale(0.001, 3)), Unevenness = Mm(dice.Scale(0.0001, 1)), Flattening = Mm(dice.Chance(0.2) ? 0 : dice.Scale(0.001, 10)) },
            Hands = new() { AngleSd = Angle.FromDegrees(dice.Chance(0.2) ? 0 : dice.Scale(0.0001, 0.5)), AngleBias = Angle.FromDegrees(dice.Chance(0.3) ? 0 : dice.Between(-5, 5)), SettingSd = Angle.FromDegrees(dice.Chance(0.2) ? 0 : dice.Scale(0.001, 5)), StopSd = Mm(dice.Chance(0.2) ? 0 : dice.Scale(0.001, 2)), Loss = dice.Chance(0.2) ? 0 : dice.Between(0, 0.9), LossWorth = dice.Chance(0.3) ? dice.Scale(0.001, 1e9) : null, MinutesPerCut = dice.Between(0, 60) },
            Wanted = new() { JointGap = Mm(dice.Scale(0.001, 2)), Confidence = dice.Between(0.5, 0.9999), Allowance = Mm(dice.Chance(0.2) ? 0 : dice.Scale(0.01, 20)), LeastRimEdge = Mm(dice.Between(0, 10)), BoreWander = Mm(dice.Between(0, 5)) },
            Joint = new() { Tension = dice.Scale(0.5, 50), StressKept = dice.Between(0.05, 1), SpeedSafety = dice.Scale(1, 50) },
            Lathe = dice.Chance(0.5) ? shop.Lathe : new() { Swing = Mm(dice.Scale(20, 5000)), Between = Mm(dice.Scale(20, 10_000)), SlowestTurns = dice.Scale(10, 2000), RoughCut = Mm(dice.Scale(0.05, 50)), FinishAllowance = Mm(dice.Between(0, 20)), ToolForce = dice.Scale(1, 1000) },
            Money = dice.Chance(0.5) ? null : new() { Hour = dice.Scale(0.01, 1e6), Markup = dice.Between(0, 5), Supplies = dice.Between(0, 100), Woods = [new() { Wood = "maple", Price = dice.Scale(0.001, 1e6), Per = dice.One(Enum.GetValues<WoodMeasure>()) }] },
            Species = Own(dice),
        };
    }

    private static ImmutableArray<OwnWood>? Own(Dice dice) => dice.Chance(0.03) ? null :
        [new() { Name = "my own wood", Density = dice.Between(120, 1400), ShrinkageRadial = dice.Between(1, 8), ShrinkageTangential = dice.Between(8, 15), Source = "invented" }];

    private static Length Mm(double millimetres) => Length.FromMillimetres(millimetres);
}
