using System.Text.Json;
using Ringwright.Core.Documents;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Ringwright.Fuzz.Running;

namespace Ringwright.Fuzz.Kinds;

/// <summary>What must hold for every plan.</summary>
internal static class PlanPromises
{
    private const double Tiny = 1e-9;
    private static readonly MeasureStyle[] Styles = [MeasureStyle.Millimetres, MeasureStyle.InchFractions, MeasureStyle.InchDecimals];

    /// <summary>Figures, sentences, the sum of the angles, and the plan as text for other programs.</summary>
    public static void Check(Plan plan)
    {
        Figures(plan.Figures, plan.Piece.Name);
        foreach (RingPlan ring in plan.Rings)
        {
            Figures(ring.Figures, ring.Ring.Name);
            Around(ring);
            Needs(ring);
        }

        MeasureStyle style = MeasureStyle.For(plan.Piece.Units);
        Texts(Told(plan, style), plan);
        Promise.That(double.IsFinite(plan.Rings.Sum(r => r.BlankVolume)) && plan.Rings.All(r => r.BlankVolume >= 0) && plan.Rings.Sum(r => r.BlankVolume) > 0, "the blank has a volume", $"{string.Join(", ", plan.Rings.Select(r => r.BlankVolume))}");
        Numbers(PlanJson.Write(plan, style), plan);
        string table = CutListCsv.Write(plan, style);
        Promise.That(!table.Contains("NaN", StringComparison.Ordinal) && !table.Contains("Infinity", StringComparison.Ordinal) && !table.Contains('∞', StringComparison.Ordinal) || Odd(plan), "the cut list holds numbers", $"{table}");
    }

    /// <summary>No word that is not for people.</summary>
    public static void Texts(IEnumerable<string> texts, Plan plan)
    {
        foreach (string text in texts)
            foreach (string word in (string[])["NaN", "∞", "Infinity", "E+", "{0}"])
                Promise.That(!text.Contains(word, StringComparison.Ordinal) || Odd(plan), $"no text says {word}", $"{text}");
    }

    /// <summary>Whether the plan's own names are strange, so that its texts may be.</summary>
    public static bool Odd(Plan plan)
    {
        string names = string.Join(' ', plan.Rings.Select(r => $"{r.Ring.Name} {string.Join(' ', r.Layout.Select(s => s.Wood).Distinct())}").Append(plan.Piece.Name).Append(plan.Piece.Notes).Append(plan.Shop.Name).Append(plan.Shop.Hands.Basis).Append(plan.Shop.Adhesive.Name).Append(plan.Shop.Adhesive.Note).Append(plan.Shop.Money?.Currency));
        return names.Contains("NaN", StringComparison.Ordinal) || names.Contains('∞', StringComparison.Ordinal) || names.Contains("{0}", StringComparison.Ordinal) || names.Contains("E+", StringComparison.Ordinal) || names.Contains("Infinity", StringComparison.Ordinal);
    }

    private static IEnumerable<string> Told(Plan plan, MeasureStyle style) =>
        plan.Rings.SelectMany(r => r.Steps.Concat(r.Findings.Select(f => f.Sentence)).Append(r.Verdict)).Append(plan.Verdict).Concat(plan.Findings.Select(f => f.Sentence)).Select(s => s.In(style));

    private static void Figures(IEnumerable<Figure> figures, string of)
    {
        foreach (Figure figure in figures)
        {
            Promise.Finite(figure.Value, $"{figure.Name} of {of}");
            foreach (Input input in figure.Why.Inputs) Promise.Finite(input.Value, $"{input.Symbol} in {figure.Name} of {of}");
            bool negative = figure.Quantity is Quantity.Volume or Quantity.Area or Quantity.Mass or Quantity.Density or Quantity.Count or Quantity.Turns or Quantity.Time && figure.Value < 0;
            Promise.That(!negative, "volumes, areas, masses, counts, speeds and times are not negative", $"{figure.Name} of {of} is {figure.Value}");
            Promise.That(figure.Quantity != Quantity.Share || figure.Value <= 1 + Tiny || figure.Name.StartsWith("movement-use", StringComparison.Ordinal), "a share is at most 1", $"{figure.Name} of {of} is {figure.Value}");
            foreach (MeasureStyle style in Styles)
            {
                string text = style.Print(figure.Value, figure.Quantity);
                Promise.That(Sentences.Fault(text + ".", "") is null, "a figure's text can be read", $"{figure.Name} of {of}: {text}");
            }
        }
    }

    // Wedges, spacers and open gaps go once around.
    private static void Around(RingPlan ring)
    {
        if (ring.Batches.IsEmpty || ring.Board is not null && ring.Ring is not BoardRing) return;
        int pieces = ring.Batches.Sum(b => b.Places.Length);
        foreach (WedgeBatch batch in ring.Batches)
        {
            Promise.That(batch.Glued.HalfAngle > 0 && batch.Glued.HalfAngle < Math.PI / 2, "a wedge has an angle", $"{ring.Ring.Name}: {batch.Glued.HalfAngle}");
            Promise.That(batch.Glued.OuterApothem > batch.Glued.InnerApothem && batch.Glued.InnerApothem >= -Tiny, "a wedge has a depth", $"{ring.Ring.Name}: {batch.Glued.InnerApothem} to {batch.Glued.OuterApothem}");
            Promise.That(batch.Places.Length > 0, "no batch is empty", $"{ring.Ring.Name}");
        }

        double sum = ring.Batches.Sum(b => b.Places.Length * b.Glued.WedgeAngle);
        if (ring.Ring is OpenRing open) sum += open.Segments * open.Gap.Radians;
        if (ring.Stave is null && ring.Lamination is null) Promise.That(Math.Abs(sum - (2 * Math.PI)) < 1e-9, "the wedges go once around", $"{ring.Ring.Name}: {pieces} wedges make {sum} rad");
    }

    private static void Needs(RingPlan ring)
    {
        foreach (WoodNeed need in ring.Woods)
        {
            Promise.That(need.Needed >= 0 && need.ToSaw >= need.Needed && need.Boards >= 1, "what is needed is sawn", $"{ring.Ring.Name}: {need}");
            Promise.That(double.IsFinite(need.Length) && need.Length > 0 && double.IsFinite(need.LeftOver) && need.LeftOver >= -1e-6, "boards have lengths", $"{ring.Ring.Name}: {need}");
        }

        if (!ring.Batches.IsEmpty && ring.Lamination is null) Promise.Same(ring.Batches.Sum(b => b.Places.Length), ring.Woods.Sum(w => w.Needed), "each wedge of a ring is needed once");
    }

    private static void Numbers(string json, Plan plan)
    {
        using JsonDocument document = JsonDocument.Parse(json);
        Promise.Same(plan.Rings.Length, document.RootElement.GetProperty("rings").GetArrayLength(), "the plan as JSON has every ring");
    }
}
