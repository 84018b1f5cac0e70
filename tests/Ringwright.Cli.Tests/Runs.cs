using System.Runtime.CompilerServices;
using System.Text.Json;

namespace Ringwright.Cli.Tests;

/// <summary>Runs the command line in this process, in a folder of its own.</summary>
internal sealed class Runs : IDisposable
{
    public Runs()
    {
        Folder = Path.Combine(Path.GetTempPath(), "ringwright-cli-" + Path.GetRandomFileName());
        Directory.CreateDirectory(Folder);
    }

    public string Folder { get; }

    public static string Examples { get; } = Path.Combine(SolutionFolder.Path, "examples");

    /// <summary>Nothing is kept there: what the developer keeps is none of the tests' business.</summary>
    public static string NoData { get; } = Path.Combine(Path.GetTempPath(), "ringwright-cli-no-data");

    /// <summary>Keeps every test away from the developer's own data.</summary>
    [ModuleInitializer]
    public static void KeepNothing() => Environment.SetEnvironmentVariable("RINGWRIGHT_DATA", NoData);

    public static (int Code, string Output, string Complaints) Run(params string[] args)
    {
        using var output = new StringWriter();
        using var complaints = new StringWriter();
        int code = CommandLine.Run(args, output, complaints);
        return (code, output.ToString(), complaints.ToString());
    }

    /// <summary>Runs a command with <c>--json</c>; it must go well.</summary>
    public static JsonElement Json(params string[] args)
    {
        (int code, string output, string complaints) = Run([.. args, "--json"]);
        Assert.Equal("", complaints);
        Assert.Equal(0, code);
        using JsonDocument document = JsonDocument.Parse(output);
        return document.RootElement.Clone();
    }

    public string At(string name) => Path.Combine(Folder, name);

    public string Write(string name, string text)
    {
        File.WriteAllText(At(name), text);
        return At(name);
    }

    public void Dispose() => Directory.Delete(Folder, recursive: true);
}
