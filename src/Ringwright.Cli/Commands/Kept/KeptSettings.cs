using System.ComponentModel;
using Spectre.Console.Cli;

namespace Ringwright.Cli.Commands.Kept;

/// <summary>Options of all commands on what is kept in the user's data folder.</summary>
internal class KeptSettings : CommandSettings
{
    [CommandOption("--json")]
    [Description("The answer as JSON.")]
    public bool Json { get; init; }
}

/// <summary>A command on the entry with a number.</summary>
internal class NumberSettings : KeptSettings
{
    [CommandArgument(0, "<NUMBER>")]
    [Description("Its number, as the list shows it.")]
    public long Number { get; init; }
}

/// <summary>A command that reads or writes a file.</summary>
internal class FileSettings : KeptSettings
{
    [CommandArgument(0, "<FILE>")]
    [Description("The file.")]
    public string File { get; init; } = "";
}

/// <summary>A list, of what is there or of what was removed.</summary>
internal class RemovedSettings : KeptSettings
{
    [CommandOption("--removed")]
    [Description("What was removed and can be put back.")]
    public bool Removed { get; init; }
}

/// <summary>A file that is taken in.</summary>
internal sealed class TakeSettings : FileSettings
{
    [CommandOption("--into <NUMBER>")]
    [Description("As the new state of the one with this number; otherwise as a new one.")]
    public long? Into { get; init; }
}

/// <summary>A file that the entry with a number is written to.</summary>
internal class WriteSettings : NumberSettings
{
    [CommandArgument(1, "<FILE>")]
    [Description("The file to write.")]
    public string File { get; init; } = "";
}
