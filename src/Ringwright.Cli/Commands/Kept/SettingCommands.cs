using System.ComponentModel;
using Ringwright.Core;
using Ringwright.Paper.Sheets;
using Ringwright.Store;
using Spectre.Console.Cli;

namespace Ringwright.Cli.Commands.Kept;

/// <summary>The setting of a name.</summary>
internal class SettingSettings : KeptSettings
{
    [CommandArgument(0, "<NAME>")]
    [Description("Its name, as the list shows it.")]
    public string Name { get; init; } = "";
}

/// <summary>The setting of a name, and its value.</summary>
internal sealed class SetSettings : SettingSettings
{
    [CommandArgument(1, "[VALUE]")]
    [Description("Its value; without one, or with no, it is as usual again.")]
    public string? Value { get; init; }
}

/// <summary><c>ringwright settings …</c>: how one prints, kept for app and command line.</summary>
internal static class SettingCommands
{
    private const string AsUsual = "as usual";

    public static void AddTo(KeptData data)
    {
        data.Describe("How you print, kept for the app and for commands that print: list, get, set.");
        data.Add<KeptSettings>(new("list", "All settings and their values.", "settings list"), (store, _) => All(store));
        data.Add<SettingSettings>(new("get", "The value of a setting.", "settings get print.paper"), (store, s) => Said(PrintSettings.Named(s.Name), store.Settings[s.Name], store.Settings[s.Name] ?? AsUsual));
        data.Add<SetSettings>(new("set", "Give a setting a value; without one it is as usual again.", "settings set print.paper letter", "settings set print.correction \"99.7 mm,100.2 mm\""), Set);
    }

    private static Answer All(DataStore store)
    {
        Answer all = Answer.List(
            "settings", "", PrintSettings.All,
            s => [s.Name, store.Settings[s.Name] ?? AsUsual, s.Says],
            (json, s) =>
            {
                json.WriteString("name", s.Name);
                json.WriteString("value", store.Settings[s.Name]);
                json.WriteString("says", s.Says);
            });
        return all with { RightAligned = [] };
    }

    private static Answer Set(DataStore store, SetSettings settings)
    {
        var setting = PrintSettings.Named(settings.Name);
        string? value = string.IsNullOrWhiteSpace(settings.Value) || settings.Value.Trim() is "no" ? null : settings.Value.Trim();
        if (value is not null)
        {
            try
            {
                setting.Check(value);
            }
            catch (BadInputException e)
            {
                throw new BadInputException(setting.Name, e.Problem, $"{e.Right}; such as {setting.Example}");
            }
        }

        store.Settings[setting.Name] = value;
        return Said(setting, value, value is null ? $"{setting.Name} is as usual." : $"{setting.Name} is {value}.");
    }

    private static Answer Said(PrintSetting setting, string? value, string sentence) => new(sentence, json =>
    {
        json.WriteString("name", setting.Name);
        json.WriteString("value", value);
    });
}
