using System.Text.Json;
using Ringwright.Core.Boards;
using Ringwright.Core.Documents;
using Ringwright.Core.Measures;

namespace Ringwright.Cli.Output;

/// <summary>Which board gives which strip, and what to buy, as JSON: lengths in mm.</summary>
internal static class BoardsJson
{
    public static void Write(Utf8JsonWriter json, CuttingPlan plan, MeasureStyle style)
    {
        json.WriteString("says", CuttingSteps.Answer(plan));
        Proof(json, "short", plan.Lacking);
        Proof(json, "boardsForRings", plan.Colours);
        Proof(json, "wood", plan.Wood);
        json.WriteObjects("shortages", plan.Shortages, s =>
        {
            json.WriteString("ring", s.Demand.Ring);
            json.WriteString("wood", s.Demand.Wood);
            json.WriteNumber("missing", s.Missing);
            json.WriteNumber("spares", s.Spares);
            json.WriteString("cause", JsonNamingPolicy.CamelCase.ConvertName(s.Cause.ToString()));
            json.WriteNumber("moreLength", s.MoreLength);
            json.WriteString("says", s.Sentence.In(style));
            json.WriteString("buy", s.Buy.Sentence.In(style));
        });
        json.WriteObjects("boards", CuttingSteps.Of(plan).Zip(plan.Boards), b =>
        {
            json.WriteString("label", b.First.Board.Label);
            json.WriteString("wood", b.First.Board.Wood);
            json.WriteObjects("stretches", b.Second.Stretches, s => Stretch(json, s, plan));
            json.WriteTexts("steps", b.First.Steps.Select(s => s.In(style)));
        });
        json.WriteTexts("notes", CuttingSteps.Notes(plan).Select(n => n.In(style)));
        json.WriteObjects("back", RackAfter.Rests(plan), r =>
        {
            json.WriteString("label", r.Board.Label);
            json.WriteString("wood", r.Board.Wood);
            json.WriteString("cameFrom", r.Board.CameFrom);
            json.WriteNumber("length", r.Board.Length.Millimetres);
            json.WriteNumber("width", r.Board.Width.Millimetres);
            json.WriteNumber("thickness", r.Board.Thickness.Millimetres);
        });
    }

    public static void Write(Utf8JsonWriter json, BuyingList list, MeasureStyle style) => json.WriteObjects("woods", list.Woods, w =>
    {
        json.WriteString("wood", w.Wood);
        json.WriteNumber("rough", w.Rough);
        json.WriteNumber("planed", w.Planed);
        json.WriteNumber("length", w.Length);
        json.WriteNumber("allAcross", w.AllAcross);
        if (w.BoardWidth is double width) json.WriteNumber("boardWidth", width);
        if (w.Boards is CuttingProof boards) Proof(json, "boards", boards);
        json.WriteString("says", w.Sentence.In(style));
        json.WriteObjects("strips", w.Strips, s =>
        {
            json.WriteNumber("width", s.Width);
            Proof(json, "count", s.Proof);
            json.WriteObjects("alike", s.Alike, a =>
            {
                json.WriteNumber("times", a.Times);
                Runs(json, a.Runs, list.Demands);
            });
        });
    });

    private static void Stretch(Utf8JsonWriter json, StretchCut stretch, CuttingPlan plan)
    {
        json.WriteNumber("from", stretch.From);
        json.WriteNumber("to", stretch.To);
        json.WriteNumber("restWidth", stretch.RestWidth);
        json.WriteObjects("strips", stretch.Strips, s =>
        {
            json.WriteNumber("width", s.Width);
            json.WriteNumber("thickness", s.Thickness);
            json.WriteNumber("rest", s.Rest);
            Runs(json, s.Runs, plan.Demands);
        });
    }

    private static void Runs(Utf8JsonWriter json, IEnumerable<PieceRun> runs, IReadOnlyList<StripDemand> demands) => json.WriteObjects("pieces", runs, r =>
    {
        json.WriteString("ring", demands[r.Demand].Ring);
        json.WriteString("piece", JsonNamingPolicy.CamelCase.ConvertName(demands[r.Demand].Piece.ToString()));
        json.WriteNumber("count", r.Count);
    });

    private static void Proof(Utf8JsonWriter json, string name, CuttingProof proof)
    {
        json.WriteStartObject(name);
        json.WriteNumber("value", proof.Value);
        json.WriteNumber("bound", proof.Bound);
        json.WriteBoolean("proved", proof.IsProved);
        json.WriteEndObject();
    }
}
