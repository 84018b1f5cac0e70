using System.Globalization;
using System.Text.Json;
using Ringwright.Cli.Output;
using Ringwright.Cli.Reference;
using Ringwright.Core.Documents;
using Ringwright.Store;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Ringwright.Cli.Commands.Kept;

/// <summary>Opens the user's data and prints answers about it.</summary>
internal sealed class KeptData(IAnsiConsole console, string group, IConfigurator<CommandSettings> branch, CommandCatalogue catalogue)
{
    /// <summary>Says what the group of commands is for, before its commands are added.</summary>
    public void Describe(string does) => catalogue.AddGroup(branch, new(group, does));

    /// <summary>Adds a command that answers in words and as JSON.</summary>
    public void Add<T>(CommandHelp help, Func<DataStore, T, Answer> answer)
        where T : KeptSettings => catalogue.AddTo<T>(group, branch.AddDelegate<T>(help.Name, (_, settings, _) => Run(settings, answer)), help);

    /// <summary>Adds the two commands that take an entry off its list and bring it back.</summary>
    public void AddRemoval(string what, Action<DataStore, long> remove, Action<DataStore, long> putBack)
    {
        string name = char.ToUpperInvariant(what[0]) + what[1..];
        Add<NumberSettings>(new("remove", $"Take a {what} off the list; 'put-back' undoes it.", $"{group} remove 1"), (store, s) =>
        {
            remove(store, s.Number);
            return Answer.Of($"{name} {s.Number} removed; 'ringwright {group} put-back {s.Number}' brings it back.", s.Number);
        });
        Add<NumberSettings>(new("put-back", $"Put a removed {what} back.", $"{group} put-back 1"), (store, s) =>
        {
            putBack(store, s.Number);
            return Answer.Of($"{name} {s.Number} is back.", s.Number);
        });
    }

    /// <summary>Reads something from the user's data.</summary>
    public static T Read<T>(Func<DataStore, T> read)
    {
        using DataStore store = DataStore.Open(UserFolder.Usual(), TimeProvider.System);
        return read(store);
    }

    /// <summary>Day and minute where the user is.</summary>
    public static string Day(DateTimeOffset time) => time.ToLocalTime().ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture);

    private int Run<T>(T settings, Func<DataStore, T, Answer> answer)
        where T : KeptSettings
    {
        using DataStore store = DataStore.Open(UserFolder.Usual(), TimeProvider.System);
        Answer said = answer(store, settings);
        if (settings.Json)
        {
            JsonOut.Write(console, json =>
            {
                if (store.Told is string told) json.WriteString("told", told);
                said.Json(json);
            });
            return ExitCode.Done;
        }

        if (store.Told is string first) console.WriteLine(first);
        console.WriteLine(said.Sentence);
        AlignedText.Write(console, said.Rows, said.RightAligned);
        return ExitCode.Done;
    }
}

/// <summary>What a command says.</summary>
/// <param name="Sentence">The answer in a sentence.</param>
/// <param name="Json">The same as fields of an object.</param>
internal sealed record Answer(string Sentence, Action<Utf8JsonWriter> Json)
{
    /// <summary>Rows below the sentence.</summary>
    public IReadOnlyList<string[]> Rows { get; init; } = [];

    /// <summary>The columns of numbers.</summary>
    public int[] RightAligned { get; init; } = [0];

    /// <summary>Says what was done to the entry with a number.</summary>
    public static Answer Of(string sentence, long number) => new(sentence, json => json.WriteNumber("number", number));

    /// <summary>Says what was done.</summary>
    public static Answer Of(string sentence) => new(sentence, json => json.WriteString("says", sentence));

    /// <summary>A list.</summary>
    public static Answer List<T>(string name, string empty, IReadOnlyList<T> entries, Func<T, string[]> row, Action<Utf8JsonWriter, T> json) =>
        new(entries.Count == 0 ? empty : $"{entries.Count} {(entries.Count == 1 ? name.TrimEnd('s') : name)}", writer =>
        {
            writer.WriteObjects(name, entries, entry =>
            {
                json(writer, entry);
            });
        })
        {
            Rows = [.. entries.Select(row)],
        };
}
