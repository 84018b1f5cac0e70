using Microsoft.AspNetCore.Components;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;

namespace Ringwright.Web.Stations;

/// <summary>What is set at the machines, large enough to be read from a metre away. Constructions have their figures; those a ring lacks are left out.</summary>
public partial class KeyFigures
{
    /// <summary>The ring's plan, one batch of its wedges alone.</summary>
    [Parameter, EditorRequired]
    public required RingPlan Plan { get; set; }

    private IEnumerable<(string Title, Figure Figure, string? More)> Keys()
    {
        foreach ((string title, string name, string? more) in Wanted())
            if (Plan.Find(name) is Figure figure) yield return (title, figure, more);
    }

    private IEnumerable<(string Title, string Name, string? More)> Wanted()
    {
        bool twoFences = Sheet.Good.Shop.Sled.Kind == SledKind.TwoFences;
        string rule = Sheet.Style.Length(Sheet.Good.Shop.Sled.RuleDistance.Millimetres);
        yield return ("Rip to", "board-width", "width of the strip");
        yield return ("Plane to", "board-thickness", "thickness of the board");
        yield return (twoFences ? "Each fence at" : "Fence at", "mitre", Plan.Find("rule-offset") is null ? "from square" : $"from square; {Print("rule-offset")} on the rule at {rule}");
        yield return ("Tilt the blade to", "blade-tilt", "from upright");
        yield return ("Tilt the blade to", "tilt", "from upright");
        yield return ("Stop at", "stop", "from the blade, along the fence");
        yield return ("Fence right within", "angle-per-fence", Plan.Find("rule-accuracy") is null ? null : $"read the rule to {Print("rule-accuracy")}");
        foreach (WoodNeed need in Plan.Woods)
            yield return ($"Saw of {need.Wood}", $"{need.Wood}/to-saw", $"{need.Needed} needed, {need.Spares} spare");
    }

    private string Print(string name) => Sheet.Style.Print(Plan[name].Value, Plan[name].Quantity);
}
