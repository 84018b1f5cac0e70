using System.Globalization;
using Ringwright.Cli.Output;
using Ringwright.Core;
using Ringwright.Core.Boards;
using Ringwright.Core.Documents;
using Ringwright.Core.Measures;
using Ringwright.Store;

namespace Ringwright.Cli.Commands.Kept;

/// <summary><c>ringwright rack …</c>: the boards at hand.</summary>
internal static class RackCommands
{
    public static void AddTo(KeptData data)
    {
        data.Describe("The boards at hand in your data folder: list, add, change, remove, take in, write out, undo.");
        data.Add<KeptSettings>(new("list", "The boards as they stand.", "rack list"), List);
        data.Add<BoardSettings>(new("add", "Put a board on the rack.", "rack add A1 --wood maple --length \"600 mm\" --width \"3 1/2 in\" --thickness \"25 mm\""), (store, s) =>
        {
            store.Rack.Add(s.NewBoard(store.Rack.Read().Units));
            return Answer.Of($"Board {s.Label} added.");
        });
        data.Add<BoardSettings>(new("change", "Change what is told, and leave the rest of a board as it is.", "rack change A1 --moisture 9 --defect \"120 mm to 150 mm, knot\""), (store, s) =>
        {
            Rack rack = store.Rack.Read();
            RackBoard before = rack.Boards.FirstOrDefault(b => string.Equals(b.Label, s.Label, StringComparison.OrdinalIgnoreCase))
                ?? throw new BadInputException("rack", $"no board has the label {s.Label}", "'ringwright rack list' shows the labels");
            store.Rack.Change(before.Label, s.Changed(before, rack.Units));
            return Answer.Of($"Board {before.Label} changed.");
        });
        data.Add<LabelSettings>(new("remove", "Take a board off the rack.", "rack remove A1"), (store, s) =>
        {
            store.Rack.Remove(s.Label);
            return Answer.Of($"Board {s.Label} removed; 'ringwright rack undo' brings it back.");
        });
        data.Add<FileSettings>(new("take", "Put a rack's file in the place of the whole rack.", "rack take examples/small-rack.json"), (store, s) =>
        {
            Rack rack = DocumentFile.Read(s.File, DocumentJson.ReadRack);
            store.Rack.Take(rack);
            return Answer.Of($"The rack is now as in {s.File}, {rack.Boards.Length} boards; 'ringwright rack undo' brings the old one back.");
        });
        data.Add<FileSettings>(new("write", "Write the whole rack to a file.", "rack write rack.json"), (store, s) =>
        {
            SafeFile.Write(s.File, DocumentJson.Write(store.Rack.Read()));
            return Answer.Of($"{s.File} written.");
        });
        data.Add<KeptSettings>(new("changes", "What changed the rack, the newest first.", "rack changes"), Changes);
        data.Add<KeptSettings>(new("undo", "Undo the newest change.", "rack undo"), (store, _) =>
            Answer.Of(store.Rack.Undo() is RackChange change ? $"Undone: {change.What}." : "There is nothing to undo."));
        data.Add<KeptSettings>(new("redo", "Make again what was undone last.", "rack redo"), (store, _) =>
            Answer.Of(store.Rack.Redo() is RackChange change ? $"Made again: {change.What}." : "There is nothing to make again."));
    }

    private static Answer List(DataStore store, KeptSettings settings)
    {
        Rack rack = store.Rack.Read();
        MeasureStyle style = MeasureStyle.For(rack.Units);
        return Answer.List(
            "boards", "The rack is empty; 'ringwright rack add' or 'rack take FILE' fills it.", rack.Boards,
            b =>
            [
                b.Label, b.Wood, style.Length(b.Length.Millimetres), "x " + style.Length(b.Width.Millimetres), "x " + style.Length(b.Thickness.Millimetres),
                b.Moisture is double moisture ? string.Create(CultureInfo.InvariantCulture, $"{moisture:0.#} %") : "",
                b.Defects is { Length: > 0 } defects ? $"{defects.Length} defect{(defects.Length == 1 ? "" : "s")}" : "",
                b.CameFrom is string from ? $"from {from}" : "", b.Note ?? "",
            ],
            (json, b) =>
            {
                json.WriteString("label", b.Label);
                json.WriteString("wood", b.Wood);
                json.WriteNumber("length", b.Length.Millimetres);
                json.WriteNumber("width", b.Width.Millimetres);
                json.WriteNumber("thickness", b.Thickness.Millimetres);
                if (b.Moisture is double moisture) json.WriteNumber("moisture", moisture);
                if (b.Price is double price) json.WriteNumber("price", price);
                if (b.CameFrom is not null) json.WriteString("cameFrom", b.CameFrom);
                if (b.Note is not null) json.WriteString("note", b.Note);
            }) with
        {
            RightAligned = [2, 3, 4, 5],
        };
    }

    private static Answer Changes(DataStore store, KeptSettings settings) => Answer.List(
        "changes", "Nothing has changed the rack yet.", store.Rack.Changes(),
        c => [c.Id.ToString(CultureInfo.InvariantCulture), KeptData.Day(c.Made), c.What, c.IsUndone ? "undone" : ""],
        (json, c) =>
        {
            json.WriteNumber("number", c.Id);
            json.WriteString("made", c.Made);
            json.WriteString("what", c.What);
            json.WriteBoolean("undone", c.IsUndone);
        });
}
