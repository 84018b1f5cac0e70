using System.Globalization;
using Ringwright.Cli.Output;
using Ringwright.Core.Documents;
using Ringwright.Core.Pieces;
using Ringwright.Store;

namespace Ringwright.Cli.Commands.Kept;

/// <summary><c>ringwright record …</c>: real runs, which <c>learn</c> works from.</summary>
internal static class RecordCommands
{
    public static void AddTo(KeptData data)
    {
        data.Describe("The record of real runs in your data folder: list, add, take in, write out as JSON or CSV.");
        data.Add<RemovedSettings>(new("list", "The runs in the order they were added.", "record list"), List);
        data.Add<RunSettings>(new("add", "Add a run.", "record add --sawn 26 --lost 1", "record add --wedge-angle 15° --measured \"15.02°, 14.97°, 15.01°\""), (store, s) =>
        {
            long number = store.Record.Add(s.Run());
            return Answer.Of($"Run {number} added; 'ringwright record remove {number}' takes it out again.", number);
        });
        data.Add<DryRingSettings>(new("dry-ring", "Add how a ring of a piece closed that was laid dry.", "record dry-ring examples/two-wood-disc.json --read \"gathered rim 0.4 mm\""), (store, s) =>
        {
            long number = store.Record.Add(s.Run());
            return Answer.Of($"Run {number} added; 'ringwright record remove {number}' takes it out again.", number);
        });
        data.Add<FileSettings>(new("take", "Add the runs of a record's file, JSON or CSV, that are not there yet.", "record take examples/bench-record.json"), (store, s) =>
        {
            RunLog log = DocumentFile.Read<RunLog>(s.File, IsCsv(s.File) ? text => RunLogCsv.Read(text, Path.GetFileNameWithoutExtension(s.File)) : DocumentJson.ReadRunLog);
            int added = store.Record.Take(log);
            int there = log.Runs.Length - added;
            return new($"{added} of {log.Runs.Length} runs added{(there > 0 ? $"; {there} {(there == 1 ? "was" : "were")} there already" : "")}.", json =>
            {
                json.WriteNumber("added", added);
                json.WriteNumber("thereAlready", there);
            });
        });
        data.Add<FileSettings>(new("write", "Write the record to a file, JSON or, with a name that ends in .csv, CSV.", "record write runs.csv"), (store, s) =>
        {
            RunLog log = store.Record.Read();
            SafeFile.Write(s.File, IsCsv(s.File) ? RunLogCsv.Write(log) : DocumentJson.Write(log));
            return Answer.Of($"{s.File} written, {log.Runs.Length} runs.");
        });
        data.AddRemoval("run", (store, number) => store.Record.Remove(number), (store, number) => store.Record.PutBack(number));
    }

    private static bool IsCsv(string file) => file.EndsWith(".csv", StringComparison.OrdinalIgnoreCase);

    private static Answer List(DataStore store, RemovedSettings settings) => Answer.List(
        "runs", settings.Removed ? "No run was removed." : "No runs yet; 'ringwright record add' or 'record take FILE' adds some.",
        settings.Removed ? store.Record.Removed() : store.Record.List(),
        r =>
        [
            r.Id.ToString(CultureInfo.InvariantCulture), KeptData.Day(r.Added), Sled(r.Run.Sled), $"{r.Run.Sawn} sawn, {r.Run.Lost} lost",
            Measured(r.Run) is > 0 and int wedges ? $"{wedges} measured" : "", r.Run.Note ?? "",
        ],
        (json, r) =>
        {
            json.WriteNumber("number", r.Id);
            json.WriteString("added", r.Added);
            json.WriteString("sled", Sled(r.Run.Sled));
            json.WriteNumber("sawn", r.Run.Sawn);
            json.WriteNumber("lost", r.Run.Lost);
            json.WriteNumber("measured", Measured(r.Run));
            if (r.Run.Note is not null) json.WriteString("note", r.Run.Note);
        });

    private static int Measured(LoggedRun run) => run.Measured.IsDefault ? 0 : run.Measured.Sum(row => row.Length);

    private static string Sled(SledKind kind) => RunSettings.Sleds.First(s => s.Value == kind).Key;
}
