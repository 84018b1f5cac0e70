using Ringwright.Core.Documents;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;

namespace Ringwright.Docs;

/// <summary>The plans of every example piece, in the order of their file names, each for the starting shop and for the example's own.</summary>
public static class ExamplePlans
{
    private const string PieceMark = "\"ringwright/piece\"", ShopMark = "\"ringwright/shop\"";

    /// <summary>Plans all pieces of a folder for all its shops.</summary>
    public static IReadOnlyList<Plan> In(string folder)
    {
        string[] texts = [.. Directory.GetFiles(folder, "*.json").Order(StringComparer.Ordinal).Select(File.ReadAllText)];
        Shop[] shops = [Shop.Starting, .. texts.Where(t => t.Contains(ShopMark, StringComparison.Ordinal)).Select(DocumentJson.ReadShop)];
        Piece[] pieces = [.. texts.Where(t => t.Contains(PieceMark, StringComparison.Ordinal)).Select(DocumentJson.ReadPiece)];
        return [.. pieces.SelectMany(piece => shops.Select(shop => Planner.Plan(piece, shop)))];
    }

    /// <summary>Every figure of a plan: of the piece, its rings, milling, gluing and the lathe.</summary>
    public static IEnumerable<Figure> Figures(Plan plan)
    {
        GluePlan glue = GluePlan.Of(plan);
        return [.. plan.Figures, .. plan.Rings.SelectMany(r => r.Figures), .. MillingPlan.Of(plan).Figures,
            .. glue.Rings.SelectMany(r => r.Figures), .. glue.Figures, .. LathePlan.Of(plan).Figures];
    }
}
