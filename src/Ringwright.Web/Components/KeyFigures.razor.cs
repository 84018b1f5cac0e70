using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;

namespace Ringwright.Web.Components;

/// <summary>What is set at the machines, large enough to be read from a metre away.</summary>
public partial class KeyFigures
{
    private RingPlan Plan => Sheet.Ring;

    private IEnumerable<(string Title, string Name, string More)> Keys()
    {
        bool twoFences = Sheet.Good.Shop.Sled.Kind == SledKind.TwoFences;
        string rule = Sheet.Style.Length(Sheet.Good.Shop.Sled.RuleDistance.Millimetres);
        yield return ("Rip to", "board-width", "width of the strip");
        yield return ("Plane to", "board-thickness", "thickness of the board");
        yield return (twoFences ? "Each fence at" : "Fence at", "mitre", $"from square; {Print("rule-offset")} on the rule at {rule}");
        yield return ("Stop at", "stop", "from the blade, along the fence");
        yield return ("Fence right within", "angle-per-fence", $"read the rule to {Print("rule-accuracy")}");
        foreach (WoodNeed need in Plan.Woods)
            yield return ($"Saw of {need.Wood}", $"{need.Wood}/to-saw", $"{need.Needed} needed, {need.Spares} spare");
    }

    private string Print(string name) => Sheet.Style.Print(Plan[name].Value, Plan[name].Quantity);
}
