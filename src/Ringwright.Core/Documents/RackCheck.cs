using System.Collections.Immutable;
using System.Globalization;
using Ringwright.Core.Boards;
using static Ringwright.Core.Documents.ShopCheck;

namespace Ringwright.Core.Documents;

/// <summary>Says whether a rack's boards can be. Each refusal names board, field and value.</summary>
public static class RackCheck
{
    /// <summary>Most boards on one rack: far above any shop, small enough that planning never fills the memory.</summary>
    public const int MostBoards = 10_000;

    private const int LongestName = 40;
    private const int LongestNote = 400;

    /// <summary>Throws for the first thing that cannot be. A rack without boards can be.</summary>
    /// <exception cref="BadInputException">With board, field, value and what would be right.</exception>
    public static void Check(Rack rack)
    {
        ArgumentNullException.ThrowIfNull(rack);
        if (string.IsNullOrWhiteSpace(rack.Name)) throw new BadInputException("name", "the rack has no name", "give it one");
        if (rack.Boards.IsDefault) throw new BadInputException("boards", "the list is missing", "an empty list [] will do");
        if (rack.Boards.Length > MostBoards)
            throw new BadInputException("boards", $"{rack.Boards.Length} are listed", $"at most {MostBoards} can be on one rack");
        var labels = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        for (int i = 0; i < rack.Boards.Length; i++)
        {
            RackBoard board = rack.Boards[i];
            string number = string.Create(CultureInfo.InvariantCulture, $"boards {i + 1}");
            if (board is null) throw new BadInputException(number, "it is null", "a board is a group of fields");
            Named(number, "label", board.Label, "a short label is needed, such as A1");
            if (!labels.Add(board.Label.Trim()))
                throw new BadInputException($"board {board.Label}, label", "another board has the same label", "each board needs its own");
            Check(board);
        }
    }

    /// <summary>Throws for the first thing that cannot be about one board.</summary>
    /// <exception cref="BadInputException">With board, field, value and what would be right.</exception>
    public static void Check(RackBoard board)
    {
        ArgumentNullException.ThrowIfNull(board);
        Named("board", "label", board.Label, "a short label is needed, such as A1");
        string place = $"board {board.Label}";
        Named(place, "wood", board.Wood, "the wood's name is needed, such as maple");
        Between($"{place}, length", board.Length, 1, 10_000);
        Between($"{place}, width", board.Width, 1, 2000);
        Between($"{place}, thickness", board.Thickness, 0.1, 500);
        if (board.Moisture is double moisture) Between($"{place}, moisture", moisture, 1, 100, " percent");
        if (board.Price is double price) Between($"{place}, price", price, 0, 1e9);
        if (board.Note is { Length: > LongestNote }) throw new BadInputException($"{place}, note", $"it has {board.Note.Length} characters", $"at most {LongestNote} can stand there");
        if (board.CameFrom is string from) Named(place, "cameFrom", from, "the label of the board it was sawn from is needed, or no such field");
        CheckDefects(board, place);
    }

    private static void CheckDefects(RackBoard board, string place)
    {
        if (board.Defects is not ImmutableArray<Defect> defects) return;
        if (defects.IsDefault) throw new BadInputException($"{place}, defects", "the list is missing", "leave the field out, or write an empty list []");
        for (int i = 0; i < defects.Length; i++)
        {
            string where = string.Create(CultureInfo.InvariantCulture, $"{place}, defects {i + 1}");
            Defect defect = defects[i] ?? throw new BadInputException(where, "it is null", "a defect is a group of fields");
            Between($"{where}, from", defect.From, 0, board.Length.Millimetres);
            Between($"{where}, to", defect.To, 0, board.Length.Millimetres);
            if (defect.To.Millimetres <= defect.From.Millimetres)
                throw new BadInputException(where, $"it goes from {defect.From} to {defect.To}", "it must end beyond where it begins");
        }
    }

    private static void Named(string place, string field, string? text, string right)
    {
        if (string.IsNullOrWhiteSpace(text) || text.Length > LongestName)
            throw new BadInputException($"{place}, {field}", $"it is empty or longer than {LongestName} characters", right);
    }
}
