using System.Collections.Immutable;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Timber;

namespace Ringwright.Core.Planning;

/// <summary>Whether tenon or recess holds the work while the inside is turned.</summary>
internal static class HoldingCheck
{
    private const string Beam = "beam bending, σ = 32·F·L/(π·d³) (Machinery's Handbook, section modulus of a round, from memory)";
    private const string Lip = "balance of moments about the far edge of the jaws; the pull shared by a quarter of the lip";
    private const double LeastLip = 6; // mm of wood around a recess; common practice, no source

    /// <summary>The figures of the holding; empty when the shape tells of none.</summary>
    public static ImmutableArray<Figure> Figures(Plan plan, SpeciesTable species)
    {
        if (plan.Piece.Shape?.Holding is not Holding holding) return [];
        var book = new FigureBook();
        bool tenon = holding.Kind == HoldingKind.Tenon;
        double d = book.Know("d", tenon ? "diameter of the tenon" : "diameter of the recess", holding.Diameter.Millimetres, Quantity.Length);
        double length = book.Know("h", tenon ? "its length" : "its depth", holding.Length.Millimetres, Quantity.Length);
        book.Add("holding", tenon ? "Turn the tenon to Ø" : "Turn the recess to Ø", d, Quantity.Length, "d", "d", "Square shoulders, and the wall at the angle of the jaws: the shoulder carries, the wall only keeps.", "the shape's own value");
        book.Add("holding-length", tenon ? "Length of the tenon" : "Depth of the recess", length, Quantity.Length, "h", "h", "A tenon must not touch the bottom of the jaws.", "the shape's own value");
        double reach = book.Know("L", "from the shoulder to the rim", plan.Rings.Sum(r => r.Ring.Thickness.Millimetres) - Shoulder(plan), Quantity.Length);
        Species weakest = Weakest(plan, species, tenon);
        if (tenon)
        {
            book.Know("σt", $"tension across the grain of {weakest.Name}", weakest.TensionAcross.Value, Quantity.Stress);
            book.Add("holding-bears", "It bears a push at the rim of", weakest.TensionAcross.Value * Math.PI * d * d * d / (32 * reach), Quantity.Force, "σt·π·d^3/(32·L)", "σt d L", Reason, Beam);
        }
        else
        {
            book.Know("τ", $"shear strength of {weakest.Name}", weakest.Shear.Value, Quantity.Stress);
            book.Add("holding-bears", "It bears a push at the rim of", weakest.Shear.Value * Math.PI * d * length / 4 * d / reach, Quantity.Force, "τ·π·d·h/4·d/L", "τ d h L", Reason, Lip);
        }

        return book.Figures;
    }

    /// <summary>What is wrong with the holding; each belongs to the lowest ring.</summary>
    public static IEnumerable<(Weight Weight, Sentence Sentence)> Find(Plan plan, ImmutableArray<Figure> figures)
    {
        if (plan.Piece.Shape?.Holding is not Holding holding) yield break;
        bool tenon = holding.Kind == HoldingKind.Tenon;
        string name = tenon ? "tenon" : "recess";
        double d = holding.Diameter.Millimetres, length = holding.Length.Millimetres;
        if (tenon && plan.Form!.Bottom < length - 1e-9)
            yield return (Weight.Note, Sentence.Of("The tenon of {0} needs wood below the foot, and the stack has {1}: glue a block of waste wood below the lowest ring, grain across the axis, and turn the tenon on it.", Measured.Length(length), Measured.Length(plan.Form.Bottom)));
        double foot = plan.Form!.Outer(plan.Form.Bottom);
        if (!tenon && foot - (d / 2) < LeastLip)
            yield return (Weight.Doubt, Sentence.Of("Only {0} of wood stand around the recess; opening jaws split less than {1}. Make the recess smaller or the foot wider.", Measured.Length(foot - (d / 2)), Measured.Length(LeastLip)));
        if (plan.Shop.Lathe.Jaws is Jaws jaws)
        {
            (Length from, Length to) = tenon ? (jaws.TenonFrom, jaws.TenonTo) : (jaws.RecessFrom, jaws.RecessTo);
            if (d < from.Millimetres || d > to.Millimetres)
                yield return (Weight.Doubt, Sentence.Of($"The {name} of {{0}} does not fit the jaws: they grip {{1}} to {{2}}.", Measured.Length(d), Measured.Length(from.Millimetres), Measured.Length(to.Millimetres)));
        }

        double bears = figures.First(f => f.Name == "holding-bears").Value;
        if (bears < plan.Shop.Lathe.ToolForce)
            yield return (Weight.Doubt, Sentence.Of($"A push of {{0}} at the rim breaks the {name}, and a catch may push {{1}}: make it {(tenon ? "wider" : "wider or deeper")}, or bring up the tailstock while the wall is roughed.",
                new(bears, Quantity.Force), new(plan.Shop.Lathe.ToolForce, Quantity.Force)));
    }

    private const string Reason = "Sideways at the top of the stack, where a catch has the longest lever; sound wood, a good fit in the jaws. Compare it with the lathe's toolForce in the shop file.";

    private static double Shoulder(Plan plan) => plan.Form?.Bottom ?? 0;

    // In the lowest ring that is turned; a mixed one is as weak as its weakest wood.
    private static Species Weakest(Plan plan, SpeciesTable species, bool tenon)
    {
        RingPlan lowest = plan.Rings[0];
        IEnumerable<Species> woods = lowest.Ring.Cycle.Distinct(StringComparer.OrdinalIgnoreCase).Select(species.FindOrAssume);
        return woods.MinBy(w => tenon ? w.TensionAcross.Value : w.Shear.Value)!;
    }
}
