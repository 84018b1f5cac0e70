using System.ComponentModel;
using System.Globalization;
using Ringwright.Cli.Output;
using Ringwright.Core.Documents;
using Ringwright.Core.Pieces;
using Ringwright.Store;
using Spectre.Console.Cli;

namespace Ringwright.Cli.Commands.Kept;

/// <summary><c>ringwright pieces …</c>: the library of pieces, the same that the app opens.</summary>
internal static class PieceCommands
{
    internal sealed class ListSettings : RemovedSettings
    {
        [CommandArgument(0, "[WORDS]")]
        [Description("Only pieces with these words, or words that begin so, in name, notes, kind, construction or woods.")]
        public string[] Words { get; init; } = [];
    }

    internal sealed class StateSettings : WriteSettings
    {
        [CommandOption("--version-number <NUMBER>")]
        [Description("The piece as it was in this version; otherwise as it is.")]
        public long? Version { get; init; }
    }

    internal sealed class VersionSettings : NumberSettings
    {
        [CommandArgument(1, "<VERSION>")]
        [Description("The version's number, as 'pieces versions' shows it.")]
        public long Version { get; init; }
    }

    internal sealed class NameSettings : NumberSettings
    {
        [CommandArgument(1, "<NAME>")]
        [Description("The name.")]
        public string Name { get; init; } = "";
    }

    internal sealed class CopySettings : NumberSettings
    {
        [CommandOption("--name <NAME>")]
        [Description("The new piece's name.")]
        public string? Name { get; init; }
    }

    public static void AddTo(KeptData data)
    {
        data.Describe("The library of pieces in your data folder: list, search, take in, write out, versions.");
        data.Add<ListSettings>(new("list", "The pieces, the last changed first; with words, those that have them.", "pieces list", "pieces list maple"), List);
        data.Add<TakeSettings>(new("take", "Take a piece's file into the library.", "pieces take examples/two-wood-disc.json"), Take);
        data.Add<StateSettings>(new("write", "Write a piece to a file.", "pieces write 1 disc.json"), Write);
        data.Add<NameSettings>(new("rename", "Give a piece another name.", "pieces rename 1 \"Two-wood coaster\""), (store, s) =>
        {
            store.Pieces.Rename(s.Number, s.Name);
            return Answer.Of($"Piece {s.Number} is now “{s.Name}”.", s.Number);
        });
        data.Add<CopySettings>(new("duplicate", "Add a piece like another.", "pieces duplicate 1 --name \"Coaster, dark\""), (store, s) =>
        {
            long copy = store.Pieces.Duplicate(s.Number, s.Name);
            return Answer.Of($"Piece {copy} added, “{store.Pieces.Find(copy).Name}”.", copy);
        });
        data.AddRemoval("piece", (store, number) => store.Pieces.Remove(number), (store, number) => store.Pieces.PutBack(number));
        data.Add<NumberSettings>(new("versions", "The states of a piece that can be gone back to, the newest first.", "pieces versions 1"), Versions);
        data.Add<NameSettings>(new("keep", "Name the state a piece is in, so that it is kept for good.", "pieces keep 1 \"as drawn\""), (store, s) =>
        {
            store.History.Keep(s.Number, s.Name);
            return Answer.Of($"Piece {s.Number} as it is now is kept as “{s.Name}”.", s.Number);
        });
        data.Add<VersionSettings>(new("restore", "Take a piece back to a version; the state before stays as a version.", "pieces restore 1 1"), (store, s) =>
        {
            store.History.Restore(s.Number, s.Version);
            return Answer.Of($"Piece {s.Number} is again as in version {s.Version}.", s.Number);
        });
    }

    private static Answer List(DataStore store, ListSettings settings) => Answer.List(
        "pieces",
        settings.Words.Length > 0 ? "No piece has these words." : settings.Removed ? "No piece was removed." : "No pieces yet; 'ringwright pieces take FILE' adds one.",
        settings.Removed ? store.Pieces.Removed() : store.Pieces.List(string.Join(' ', settings.Words)),
        p => [p.Id.ToString(CultureInfo.InvariantCulture), p.Name, p.Kind ?? "", p.Rings == 1 ? "1 ring" : $"{p.Rings} rings", KeptData.Day(p.Changed), string.Join(", ", p.Woods)],
        (json, p) =>
        {
            json.WriteNumber("number", p.Id);
            json.WriteString("name", p.Name);
            if (p.Kind is not null) json.WriteString("kind", p.Kind);
            json.WriteNumber("rings", p.Rings);
            json.WriteTexts("woods", p.Woods);
            json.WriteString("created", p.Created);
            json.WriteString("changed", p.Changed);
        });

    private static Answer Take(DataStore store, TakeSettings settings)
    {
        Piece piece = DocumentFile.Read(settings.File, DocumentJson.ReadPiece);
        if (settings.Into is long number)
        {
            store.Pieces.Save(number, piece);
            return Answer.Of($"Piece {number} is now as in {settings.File}; the state before is a version.", number);
        }

        long added = store.Pieces.Add(piece);
        return Answer.Of($"Piece {added} added, “{piece.Name}”.", added);
    }

    private static Answer Write(DataStore store, StateSettings settings)
    {
        PieceState state = settings.Version is long version ? store.History.Read(settings.Number, version) : store.Pieces.Read(settings.Number);
        SafeFile.Write(settings.File, DocumentJson.Write(state.Piece));
        return Answer.Of($"{settings.File} written.");
    }

    private static Answer Versions(DataStore store, NumberSettings settings) => Answer.List(
        "versions", "", store.History.List(settings.Number),
        v => [v.Id.ToString(CultureInfo.InvariantCulture), KeptData.Day(v.Saved), v.Name ?? ""],
        (json, v) =>
        {
            json.WriteNumber("version", v.Id);
            json.WriteString("saved", v.Saved);
            if (v.Name is not null) json.WriteString("name", v.Name);
        });
}
