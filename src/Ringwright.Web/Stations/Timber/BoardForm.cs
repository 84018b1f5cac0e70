using Ringwright.Core;
using Ringwright.Core.Boards;
using Ringwright.Core.Measures;
using Ringwright.Web.Bench;

namespace Ringwright.Web.Stations;

/// <summary>The form of one board, as texts on the desk.</summary>
internal static class BoardForm
{
    /// <summary>Label of the board that is being changed; empty while a new one is typed.</summary>
    public const string Changing = "rack.changing";

    private const string Between = " to ";

    private static readonly string[] Names = ["label", "wood", "length", "width", "thickness", "moisture", "price", "defects", "note"];

    /// <summary>The desk with the form empty.</summary>
    public static DeskTexts Cleared(DeskTexts desk) => Names.Aggregate(desk.With(Changing, ""), (d, name) => d.With("rack." + name, ""));

    /// <summary>The desk with a board in the form.</summary>
    public static DeskTexts Filled(DeskTexts desk, RackBoard board)
    {
        string[] texts =
        [
            board.Label, board.Wood, board.Length.Written, board.Width.Written, board.Thickness.Written, Number(board.Moisture), Number(board.Price),
            string.Join(", ", (board.Defects ?? []).Select(d => d.From.Written + Between + d.To.Written)), board.Note ?? "",
        ];
        return Names.Zip(texts).Aggregate(desk.With(Changing, board.Label), (d, field) => d.With("rack." + field.First, field.Second));
    }

    /// <summary>The board that stands in the form; what the form does not ask for is as <paramref name="before"/> has it.</summary>
    /// <exception cref="BadInputException">A text cannot be read.</exception>
    public static RackBoard Read(Sheet sheet, RackBoard? before)
    {
        DeskTexts desk = sheet.Desk;
        LengthUnit unit = sheet.Units.Unit();
        Length Size(string name) => desk.Length("rack." + name, unit) ?? throw new BadInputException("board, " + name, "it is missing", "a length is needed, such as 900 mm");
        RackBoard board = before ?? new() { Label = "", Wood = "", Length = default, Width = default, Thickness = default };
        return board with
        {
            Label = desk["rack.label"].Trim(),
            Wood = desk["rack.wood"].Trim(),
            Length = Size("length"),
            Width = Size("width"),
            Thickness = Size("thickness"),
            Moisture = desk.Number("rack.moisture"),
            Price = desk.Number("rack.price"),
            Defects = Defects(desk, unit, before?.Defects ?? []),
            Note = string.IsNullOrWhiteSpace(desk["rack.note"]) ? null : desk["rack.note"].Trim(),
        };
    }

    private static ImmutableArray<Defect>? Defects(DeskTexts desk, LengthUnit unit, ImmutableArray<Defect> before)
    {
        ImmutableArray<Defect> read = [.. desk.List("rack.defects").Select((text, i) =>
        {
            string[] ends = text.Split(Between, StringSplitOptions.TrimEntries);
            if (ends.Length != 2) throw new BadInputException("board, defects", $"“{text}” is no stretch", "from the labelled end, such as 120 mm to 160 mm");
            Defect defect = i < before.Length ? before[i] : new() { From = default, To = default };
            return defect with { From = DeskTexts.Length("board, defects", ends[0], unit), To = DeskTexts.Length("board, defects", ends[1], unit) };
        })];
        return read.IsEmpty ? null : read;
    }

    private static string Number(double? value) => value is double number ? FormattableString.Invariant($"{number}") : "";
}
