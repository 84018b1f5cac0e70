using System.ComponentModel;
using System.Diagnostics;
using System.Globalization;

namespace Ringwright.Bench;

/// <summary>
/// manifold-3d from npm, in one node process that stays warm and times itself, so that neither its start nor the pipe counts.
/// </summary>
internal sealed class ManifoldPeer : IDisposable
{
    private readonly Process _node;

    private ManifoldPeer(Process node) => _node = node;

    /// <summary>Installs the package where it is missing, and starts; null on a machine without node or without its package.</summary>
    internal static ManifoldPeer? Start()
    {
        string folder = Path.Combine(AppContext.BaseDirectory, "manifold");
        if (!Directory.Exists(Path.Combine(folder, "node_modules")) && !Install(folder)) return null;
        return Start("node", "solid.mjs", folder) is { } node ? new(node) : null;
    }

    /// <summary>Makes the vase once.</summary>
    internal (double Ms, double Volume, int Triangles) Run(string way)
    {
        _node.StandardInput.WriteLine(way);
        _node.StandardInput.Flush();
        string line = _node.StandardOutput.ReadLine() ?? throw new InvalidOperationException($"node ended while making the vase by {way}.");
        double[] numbers = [.. line.Split(' ').Select(word => double.Parse(word, CultureInfo.InvariantCulture))];
        return (numbers[0], numbers[1], (int)numbers[2]);
    }

    public void Dispose()
    {
        _node.StandardInput.Close(); // ends its loop
        _node.WaitForExit();
        _node.Dispose();
    }

    private static bool Install(string folder)
    {
        string npm = OperatingSystem.IsWindows() ? "npm.cmd" : "npm";
        using Process? install = Start(npm, "ci --omit=optional --ignore-scripts", folder);
        if (install is null) return false;
        install.StandardOutput.ReadToEnd();
        install.WaitForExit();
        return install.ExitCode == 0;
    }

    private static Process? Start(string program, string arguments, string folder)
    {
        try
        {
            return Process.Start(new ProcessStartInfo(program, arguments) { WorkingDirectory = folder, RedirectStandardInput = true, RedirectStandardOutput = true });
        }
        catch (Win32Exception)
        {
            return null; // no such program
        }
    }
}
