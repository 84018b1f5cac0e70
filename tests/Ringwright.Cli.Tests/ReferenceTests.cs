using System.Text.RegularExpressions;
using Ringwright.Paper.Pictures;
using Ringwright.Paper.Templates;

namespace Ringwright.Cli.Tests;

/// <summary>The reference of the command line: that it is what the commands say, and that its examples work.</summary>
[Collection(nameof(KeptDataTests))]
public sealed partial class ReferenceTests : IDisposable
{
    private static readonly string Page = File.ReadAllText(Path.Combine(SolutionFolder.Path, "docs", "command-line.md")).ReplaceLineEndings("\n");

    private readonly Runs _runs = new();

    public ReferenceTests() => Environment.SetEnvironmentVariable("RINGWRIGHT_DATA", _runs.At("data"));

    public void Dispose()
    {
        Environment.SetEnvironmentVariable("RINGWRIGHT_DATA", Runs.NoData);
        _runs.Dispose();
    }

    // To mend it: dotnet run --project src/Ringwright.Cli -- reference > docs/command-line.md
    [Fact]
    public void The_page_is_what_the_commands_say()
    {
        (int code, string output, string complaints) = Runs.Run("reference");
        Assert.Equal((0, ""), (code, complaints));
        Assert.Equal(output, Page);
    }

    // To mend it: dotnet run --project src/Ringwright.Cli -- reference file-format > docs/file-format.md
    [Fact]
    public void The_page_about_files_is_what_their_schemas_say()
    {
        (int code, string output, string complaints) = Runs.Run("reference", "file-format");
        Assert.Equal((0, ""), (code, complaints));
        Assert.Equal(output, File.ReadAllText(Path.Combine(SolutionFolder.Path, "docs", "file-format.md")).ReplaceLineEndings("\n"));
    }

    [Fact]
    public void Every_example_works_in_the_order_of_the_page()
    {
        string[] examples = [.. Page.Split("\n```sh\n").Skip(1).SelectMany(block => block[..block.IndexOf("\n```", StringComparison.Ordinal)].Split('\n'))];
        Assert.True(examples.Length > 50, $"{examples.Length} examples");
        foreach (string example in examples)
        {
            string[] words = [.. Words().Matches(example).Select(m => m.Groups[1].Success ? m.Groups[1].Value : m.Value)];
            Assert.Equal("ringwright", words[0]);
            (int code, string output, string complaints) = Runs.Run([.. words.Skip(1).Select(Placed)]);
            // A kept shop is named beside the answer once the examples have taken one in.
            bool calm = complaints.Length == 0 || (complaints.StartsWith("Shop: “", StringComparison.Ordinal) && complaints.Count(c => c == '\n') == 1);
            Assert.True(calm && code == 0, $"{example}\n{code} {complaints}");
            Assert.False(string.IsNullOrWhiteSpace(output), example);
        }
    }

    [Fact]
    public void Every_command_has_an_example()
    {
        string[] sections = [.. Heading().Split(Page).Skip(1).Where(s => Usage().IsMatch(s))];
        Assert.True(sections.Length > 45, $"{sections.Length} commands");
        Assert.All(sections, section => Assert.Contains("\n```sh\nringwright ", section, StringComparison.Ordinal));
    }

    [Fact]
    public void Views_and_kinds_of_templates_are_listed()
    {
        Assert.All(PlanView.All, view => Assert.Contains($"| `{view.Name}` | {view.Shows} |", Page, StringComparison.Ordinal));
        Assert.All(Enum.GetNames<TemplateKind>(), kind => Assert.Contains($"`{kind.ToLowerInvariant()}`", Page, StringComparison.Ordinal));
    }

    // Examples stay where they are; what is written goes to a folder of the test.
    private string Placed(string word) => word.StartsWith("examples/", StringComparison.Ordinal)
        ? Path.Combine(SolutionFolder.Path, word)
        : word == "out" || FileName().IsMatch(word) ? _runs.At(word) : word;

    [GeneratedRegex("\"([^\"]*)\"|\\S+")]
    private static partial Regex Words();

    [GeneratedRegex(@"^[\w-]+\.(json|csv|svg|png|pdf|glb)$")]
    private static partial Regex FileName();

    [GeneratedRegex(@"^##+ (?=[a-z])", RegexOptions.Multiline)]
    private static partial Regex Heading();

    [GeneratedRegex(@"^`ringwright ", RegexOptions.Multiline)]
    private static partial Regex Usage();
}
