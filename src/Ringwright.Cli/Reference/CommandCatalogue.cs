using Spectre.Console.Cli;

namespace Ringwright.Cli.Reference;

/// <summary>A command or, without settings, a group of commands.</summary>
/// <param name="Help">What it tells; its name begins with that of its group.</param>
/// <param name="Settings">Where its arguments and options are defined; null for a group.</param>
internal sealed record CommandEntry(CommandHelp Help, Type? Settings);

/// <summary>All commands in the order of the reference, as they are added to the program.</summary>
internal sealed class CommandCatalogue
{
    private readonly List<CommandEntry> _entries = [];

    /// <summary>What was added so far.</summary>
    public IReadOnlyList<CommandEntry> Entries => _entries;

    /// <summary>Adds a command to the program.</summary>
    public void Add<T>(IConfigurator config)
        where T : class, ICommand, IHelped
    {
        Told(config.AddCommand<T>(T.Help.Name), T.Help);
        _entries.Add(new(T.Help, SettingsOf(typeof(T))));
    }

    /// <summary>Tells of a group before its commands.</summary>
    public void AddGroup(IConfigurator<CommandSettings> branch, CommandHelp help)
    {
        branch.SetDescription(help.Does);
        _entries.Add(new(help, null));
    }

    /// <summary>Tells of a command in a group, whose name its own follows.</summary>
    public void AddTo<T>(string group, ICommandConfigurator command, CommandHelp help)
    {
        Told(command, help with { Name = $"{group} {help.Name}" });
        _entries.Add(new(help with { Name = $"{group} {help.Name}" }, typeof(T)));
    }

    private static void Told(ICommandConfigurator command, CommandHelp help)
    {
        command.WithDescription(help.Does);
        foreach (string example in help.Examples) command.WithExample(example);
    }

    private static Type SettingsOf(Type command)
    {
        Type? type = command;
        while (type is not null && !(type.IsGenericType && type.GetGenericTypeDefinition() == typeof(Command<>))) type = type.BaseType;
        return type is null ? typeof(EmptyCommandSettings) : type.GetGenericArguments()[0];
    }
}
