using System.Diagnostics;
using System.Text.Json;

namespace Ringwright.Paper.Tests.Readers;

/// <summary>Runs an independent reader of this folder under node; installs its packages where they are missing.</summary>
internal static class NodeReader
{
    private static readonly string Folder = Path.Combine(SolutionFolder.Path, "tests", "Ringwright.Paper.Tests", "Readers");
    private static readonly Lazy<bool> Installed = new(Install);

    /// <summary>What the script prints, as JSON, when it is given a text.</summary>
    public static JsonElement Read(string script, string text)
    {
        Assert.True(Installed.Value, "The readers could not be installed: node and npm are needed.");
        using Process node = Start("node", script);
        node.StandardInput.Write(text);
        node.StandardInput.Close();
        string answer = node.StandardOutput.ReadToEnd();
        node.WaitForExit();
        Assert.Equal(0, node.ExitCode);
        using JsonDocument document = JsonDocument.Parse(answer);
        return document.RootElement.Clone();
    }

    private static bool Install()
    {
        if (Directory.Exists(Path.Combine(Folder, "node_modules", "dxf-parser"))) return true;
        using Process npm = Start(OperatingSystem.IsWindows() ? "npm.cmd" : "npm", "ci --ignore-scripts");
        npm.StandardInput.Close();
        npm.StandardOutput.ReadToEnd();
        npm.WaitForExit();
        return npm.ExitCode == 0;
    }

    private static Process Start(string program, string arguments) =>
        Process.Start(new ProcessStartInfo(program, arguments) { WorkingDirectory = Folder, RedirectStandardInput = true, RedirectStandardOutput = true })!;
}
