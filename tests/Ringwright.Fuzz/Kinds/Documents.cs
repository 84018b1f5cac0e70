using Ringwright.Core.Boards;
using Ringwright.Core.Documents;
using Ringwright.Core.Fitting;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Ringwright.Fuzz.Making;
using Ringwright.Fuzz.Running;

namespace Ringwright.Fuzz.Kinds;

/// <summary>Files of pieces, shops, racks and records: the examples and random ones, mutated. What is read is written again, and planned.</summary>
public sealed class Documents : Kind
{
    // More rings are planned by the kind "plans".
    private const int MostRings = 60;
    private static readonly Piece Small = DocumentJson.ReadPiece(Examples.Text("two-wood-disc.json"));

    public override string Name => "documents";

    public override string Ending => ".json";

    public override string Make(Dice dice)
    {
        string json = dice.Below(4) switch
        {
            0 => DocumentJson.Write(PieceMaker.Piece(dice)),
            1 => DocumentJson.Write(ShopMaker.Shop(dice)),
            _ => dice.One(Examples.Documents),
        };
        return JsonMutator.Mutate(dice, json);
    }

    public override void Check(string input)
    {
        if (Names(input, Shop.FormatName)) OfShop(input);
        else if (Names(input, Rack.FormatName)) OfRack(input);
        else if (Names(input, RunLog.FormatName)) OfRecord(input);
        else OfPiece(input);
    }

    public override IEnumerable<string> Simpler(string input) => JsonMutator.Without(input).Concat(Simplify.Text(input));

    private static void OfPiece(string input)
    {
        Piece piece = DocumentJson.ReadPiece(input);
        Same(DocumentJson.Write(piece), text => DocumentJson.Write(DocumentJson.ReadPiece(text)));
        if (piece.Rings.Length <= MostRings) PlanPromises.Check(Planner.Plan(piece, Shop.StartingIn(piece.Units)));
    }

    private static void OfShop(string input)
    {
        Shop shop = DocumentJson.ReadShop(input);
        Same(DocumentJson.Write(shop), text => DocumentJson.Write(DocumentJson.ReadShop(text)));
        PlanPromises.Check(Planner.Plan(Small, shop));
    }

    private static void OfRack(string input)
    {
        Rack rack = DocumentJson.ReadRack(input);
        Same(DocumentJson.Write(rack), text => DocumentJson.Write(DocumentJson.ReadRack(text)));
        foreach (RackBoard board in rack.Boards)
            foreach ((double from, double to) in SoundStretches.Of(board, 1.2))
                Promise.That(from >= 0 && to >= from && to <= board.Length.Millimetres, "sound stretches lie in the board", $"{from} to {to} of {board.Length}");
    }

    private static void OfRecord(string input)
    {
        RunLog log = DocumentJson.ReadRunLog(input);
        Same(DocumentJson.Write(log), text => DocumentJson.Write(DocumentJson.ReadRunLog(text)));
        Shop learned = ShopLearning.Learn(Shop.Starting, log);
        string written = DocumentJson.Write(learned);
        Promise.That(!written.Contains("NaN", StringComparison.Ordinal), "what is learned are numbers", $"{written}");
        foreach (string sentence in LearnedSentences.Of(ShopLearning.Believe(log, SledKind.TwoFences))) Promise.That(Sentences.Fault(sentence, input) is null, "what is learned is told in sentences", $"{sentence}");
    }

    private static bool Names(string input, string format) => input.Contains($"\"{format}\"", StringComparison.Ordinal);

    private static void Same(string written, Func<string, string> again)
    {
        string second = again(written);
        int at = written.Zip(second).TakeWhile(pair => pair.First == pair.Second).Count();
        Promise.That(written == second, "what is written reads back as the same", $"…{written[Math.Max(0, at - 40)..Math.Min(written.Length, at + 40)]}… became …{second[Math.Max(0, at - 40)..Math.Min(second.Length, at + 40)]}…");
    }
}
