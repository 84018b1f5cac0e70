using System.ComponentModel;
using System.Globalization;
using System.Reflection;
using System.Text;
using Ringwright.Cli.Commands;
using Ringwright.Paper.Pictures;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Ringwright.Cli.Reference;

/// <summary>The reference of the command line as Markdown, from the definitions of the commands and the texts beside this file.</summary>
internal sealed class ReferencePage
{
    // Told once for all commands.
    private static readonly Type[] Shared = [typeof(UnitSettings), typeof(ShopSettings)];

    private readonly StringBuilder _page = new();

    private ReferencePage()
    {
    }

    /// <summary>The whole page, ending with a line feed.</summary>
    public static string Write(CommandCatalogue catalogue)
    {
        var page = new ReferencePage();
        page.Head(catalogue);
        foreach (CommandEntry entry in catalogue.Entries) page.Command(entry);
        page.Line("\n" + Text("exit-codes"));
        return page._page.ToString().TrimEnd('\n') + "\n";
    }

    private void Head(CommandCatalogue catalogue)
    {
        Line("# The command line\n");
        Line("<!-- Written by `dotnet run --project src/Ringwright.Cli -- reference`; a test compares. Change the commands or src/Ringwright.Cli/Reference. -->\n");
        Line(Text("intro")!);
        Line("| command | does |\n|---|---|");
        foreach (CommandEntry entry in catalogue.Entries.Where(e => !IsOfGroup(e)))
            Line($"| [`{entry.Help.Name}`](#{entry.Help.Name}) | {Cell(entry.Help.Does)} |");
        Line("\nOptions of many commands:\n");
        Options(Shared.SelectMany(Own));
    }

    private void Command(CommandEntry entry)
    {
        Line($"\n{(IsOfGroup(entry) ? "###" : "##")} {entry.Help.Name}\n");
        Line(Plain(entry.Help.Does));
        if (entry.Settings is Type settings) Usage(entry.Help.Name, settings);
        if (Text(entry.Help.Name) is string more) Line("\n" + Filled(more).TrimEnd('\n'));
        if (entry.Help.Examples.Length == 0) return;
        Line("\n```sh");
        foreach (string example in entry.Help.Examples) Line("ringwright " + example);
        Line("```");
    }

    private void Usage(string name, Type settings)
    {
        PropertyInfo[] all = [.. Family(settings).SelectMany(Own)];
        var arguments = all.Select(p => (Property: p, Argument: p.GetCustomAttribute<CommandArgumentAttribute>())).Where(p => p.Argument is not null).OrderBy(p => p.Argument!.Position).ToArray();
        PropertyInfo[] options = [.. all.Where(p => p.GetCustomAttribute<CommandOptionAttribute>() is not null)];
        PropertyInfo[] own = [.. options.Where(p => !Shared.Contains(p.DeclaringType))];
        string words = string.Concat(arguments.Select(a => a.Argument!.IsRequired ? $" {a.Argument.ValueName}" : $" [{a.Argument.ValueName}]"));
        Line($"\n`ringwright {name}{words}{(options.Length > 0 ? " [options]" : "")}`");
        if (arguments.Length + own.Length > 0)
        {
            Line("");
            Options([.. arguments.Select(a => a.Property), .. own], settings);
        }

        string[] shared = [.. options.Where(p => Shared.Contains(p.DeclaringType)).Select(p => $"`--{p.GetCustomAttribute<CommandOptionAttribute>()!.LongNames[0]}`")];
        if (shared.Length > 0) Line($"\nAlso {string.Join(", ", shared)}.");
    }

    private void Options(IEnumerable<PropertyInfo> properties, Type? settings = null)
    {
        object? fresh = settings is null ? null : Activator.CreateInstance(settings);
        Line("| | means |\n|---|---|");
        foreach (PropertyInfo property in properties) Line($"| {Name(property)} | {Cell(Means(property, fresh))} |");
    }

    private static string Name(PropertyInfo property)
    {
        if (property.GetCustomAttribute<CommandArgumentAttribute>() is { } argument) return $"`{argument.ValueName}`";
        CommandOptionAttribute option = property.GetCustomAttribute<CommandOptionAttribute>()!;
        string names = string.Join(", ", option.ShortNames.Select(n => "-" + n).Concat(option.LongNames.Select(n => "--" + n)));
        return Cell($"`{names}{(option.ValueName is null ? "" : $" {option.ValueName}")}`");
    }

    private static string Means(PropertyInfo property, object? fresh)
    {
        string means = Plain(property.GetCustomAttribute<DescriptionAttribute>()?.Description ?? throw new InvalidOperationException($"{property.DeclaringType} {property.Name} has no description."));
        if (property.GetCustomAttribute<CommandOptionAttribute>() is { IsRequired: true }) means += " Needed.";
        string otherwise = fresh is null ? "" : property.GetValue(fresh) switch
        {
            string text => text,
            int or long or double => Convert.ToString(property.GetValue(fresh), CultureInfo.InvariantCulture)!,
            _ => "",
        };
        return otherwise is "" or "0" || means.Contains("otherwise", StringComparison.OrdinalIgnoreCase) ? means : $"{means} Otherwise {otherwise}.";
    }

    // Base classes last: what is a command's own comes first.
    private static IEnumerable<Type> Family(Type settings)
    {
        for (Type? type = settings; type is not null && type != typeof(CommandSettings); type = type.BaseType) yield return type;
    }

    private static IEnumerable<PropertyInfo> Own(Type type) => type
        .GetProperties(BindingFlags.Public | BindingFlags.Instance | BindingFlags.DeclaredOnly)
        .Where(p => p.IsDefined(typeof(CommandOptionAttribute)) || p.IsDefined(typeof(CommandArgumentAttribute)))
        .OrderBy(p => p.MetadataToken);

    private static bool IsOfGroup(CommandEntry entry) => entry.Help.Name.Contains(' ', StringComparison.Ordinal);

    private static string Filled(string text) => text.Replace(
        "{views}\n", string.Concat(PlanView.All.Select(v => $"| `{v.Name}` | {v.Shows} | {(v.OfRing ? "one ring" : "the piece")} |\n")), StringComparison.Ordinal);

    // Descriptions are written for the help, which takes [[ for [.
    private static string Plain(string description) => Markup.Remove(description);

    private static string Cell(string text) => ReferenceText.Cell(text);

    private static string? Text(string name) => ReferenceText.Read($"reference/{name}.md");

    private void Line(string text) => _page.Append(text).Append('\n');
}
