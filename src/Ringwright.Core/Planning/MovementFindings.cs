using System.Collections.Immutable;
using Ringwright.Core.Measures;
using Ringwright.Core.Timber;

namespace Ringwright.Core.Planning;

/// <summary>Says in words what moisture will do to a ring, and what helps by how much.</summary>
internal static class MovementFindings
{
    public static Finding NotKnown(RingPlan plan, Species wood) => new(Weight.Note, plan.Ring.Name,
        Sentence.Of($"{Sentence.Escape(wood.Name)} is not in the table of woods: its weight and movement are those of a middling hardwood until the shop's own species name it."));

    public static Finding? Of(RingPlan plan, MovementVerdict verdict)
    {
        MovementCase worst = verdict.Worst;
        if (worst.Use < MovementVerdict.WorthSaying) return null;
        var text = new Telling();
        string moves = $"{Wood(worst.Ring.Species)} glued at {text.Moisture(worst.From)} moisture comes to {text.Moisture(worst.To)} at home";
        bool holds = worst.Use <= 1;
        // What holds is said shortly; the figures say the rest.
        text.Say(holds
            ? $"At worst {moves}: {Where(worst)} then carries {text.Put(Measured.Share(worst.Use))} of what it stands."
            : $"At worst {moves}. Cut open, the ring would {(worst.Gap > 0 ? "gape" : "overlap")} by {text.Put(Measured.FineAngle(Math.Abs(worst.Gap)))}; glued, {Where(worst)} carries {text.Stress(worst.Stress)} of the {text.Stress(worst.Strength)} it stands: too much.");
        text.Help(verdict.Advice.Take(holds ? 1 : verdict.Advice.Length).Select(a => (Words(a, worst, text), a.Use)));
        return new(holds ? Weight.Note : Weight.Doubt, plan.Ring.Name, text.Sentence);
    }

    public static Finding? Of(RingPlan plan, LayerVerdict verdict)
    {
        LayerMovement worst = verdict.Worst;
        if (worst.Use < MovementVerdict.WorthSaying) return null;
        var text = new Telling();
        (double stress, double strength) = worst.Splits ? (worst.SplitPull, worst.Species.TensionAcross.Value) : (worst.EdgeShear, worst.RollingStrength);
        string gives = worst.Use > 1 ? ": too much" : "";
        text.Say($"A solid layer of {Wood(worst.Species)}, glued at {text.Moisture(verdict.From)} moisture and coming to {text.Moisture(verdict.To)} at home, wants to be {text.Put(Measured.Fine(Math.Abs(worst.FreeChange)))} {(worst.FreeChange < 0 ? "narrower" : "wider")} across its grain; the ring of segments it is glued to keeps its diameter. {(worst.Splits ? "Its middle is pulled with" : "Its edge is sheared with")} {text.Stress(stress)} of the {text.Stress(strength)} it stands{gives}.");
        text.Help(verdict.Advice.Select(a => (Words(a, text), a.Use)));
        return new(worst.Use > 1 ? Weight.Doubt : Weight.Note, plan.Ring.Name, text.Sentence);
    }

    private static string Where(MovementCase worst) => worst.Weak switch
    {
        WeakPart.Joint => worst.AtHole ? (worst.Ring.Body.Inner > 0 ? "a joint beside the hole" : "a joint at the centre") : "a joint at the rim",
        WeakPart.Split => "the wood across its grain",
        _ => "the wood beside a joint",
    };

    private static string Words(MovementAdvice advice, MovementCase worst, Telling text) => advice.Help switch
    {
        MovementHelp.OtherCut => $"strips from {MovementFigures.CutName(worst.Ring.Cut.Other())} boards",
        MovementHelp.GlueMoisture => GluedAt(advice.Value, worst.From, text),
        _ => (worst.Ring.Body.Inner > 0 ? "a ring no deeper than " : "a ring instead of the disc, no deeper than ") + text.Put(Measured.Length(advice.Value)),
    };

    private static string Words(LayerAdvice advice, Telling text) => advice.Help switch
    {
        LayerHelp.Unglued => $"a floating layer with {text.Put(Measured.Fine(advice.Value))} of room across its grain",
        LayerHelp.Smaller => $"a layer no wider than {text.Put(Measured.Length(advice.Value))}",
        LayerHelp.Segments => "a layer of segments, its grain matched to the ring's",
        _ => GluedAt(advice.Value, double.NaN, text),
    };

    private static string GluedAt(double moisture, double now, Telling text) =>
        $"{(moisture < now ? "dryer wood, " : "")}glued at {text.Moisture(moisture)}";

    private static string Wood(Species species) => Sentence.Escape(species.Name);

    /// <summary>Builds a sentence piece by piece; values get their places in the order they are put.</summary>
    private sealed class Telling
    {
        private readonly ImmutableArray<Measured>.Builder _values = ImmutableArray.CreateBuilder<Measured>();
        private string _text = "";

        public Sentence Sentence => new(_text, _values.ToImmutable());

        public string Put(Measured value)
        {
            _values.Add(value);
            return $"{{{_values.Count - 1}}}";
        }

        public string Moisture(double percent) => Put(Measured.Share(percent / 100));

        public string Stress(double stress) => Put(new(stress, Quantity.Stress));

        public void Say(string text) => _text = text;

        public void Help(IEnumerable<(string Words, double Use)> advice)
        {
            string[] parts = [.. advice.Select(a => $"{a.Words} (then {Put(Measured.Share(a.Use))})")];
            if (parts.Length > 0) _text += " What helps: " + string.Join("; ", parts) + ".";
        }
    }
}
