using System.ComponentModel;
using Spectre.Console.Cli;

namespace Ringwright.Cli.Reference;

/// <summary>Which page of the reference.</summary>
internal sealed class PageSettings : CommandSettings
{
    public const string FileFormat = "file-format";

    [CommandArgument(0, "[PAGE]")]
    [Description("command-line or file-format.")]
    public string Page { get; init; } = "command-line";

    public override Spectre.Console.ValidationResult Validate() => Page is "command-line" or FileFormat
        ? Spectre.Console.ValidationResult.Success()
        : Spectre.Console.ValidationResult.Error($"there is no page {Page}; command-line or file-format is needed");
}
