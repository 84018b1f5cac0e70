using System.Diagnostics;
using System.Globalization;
using System.Reflection;

namespace Ringwright.Store.Tests;

/// <summary>Another process on a data folder.</summary>
internal sealed class OtherProcess : IDisposable
{
    private static readonly string Path = System.IO.Path.GetFullPath(typeof(OtherProcess).Assembly.GetCustomAttributes<AssemblyMetadataAttribute>().First(a => a.Key == "WriterPath").Value!);
    private readonly Process _process;
    private readonly List<string> _lines = [];

    public OtherProcess(string mode, string folder)
    {
        _process = Process.Start(new ProcessStartInfo("dotnet", [Path, mode, folder]) { RedirectStandardOutput = true, RedirectStandardInput = true, RedirectStandardError = true })!;
    }

    /// <summary>The greatest number it said it began, and the greatest it said was saved; 0 when none.</summary>
    public (int Begun, int Done) Reached => (Greatest("begin "), Greatest("done "));

    public string Errors { get; private set; } = "";

    /// <summary>Waits for a line that starts so.</summary>
    public void WaitFor(string start)
    {
        while (_process.StandardOutput.ReadLine() is string line)
        {
            _lines.Add(line);
            if (line.StartsWith(start, StringComparison.Ordinal)) return;
        }

        throw new InvalidOperationException($"It ended without saying “{start}”: {_process.StandardError.ReadToEnd()}");
    }

    /// <summary>Kills it at once (SIGKILL), and hears what it had still said.</summary>
    public void Kill()
    {
        _process.Kill();
        Finish();
    }

    /// <summary>Lets it end by itself.</summary>
    public void End()
    {
        _process.StandardInput.Close();
        Finish();
    }

    public void Dispose()
    {
        if (!_process.HasExited) _process.Kill();
        _process.Dispose();
    }

    private void Finish()
    {
        while (_process.StandardOutput.ReadLine() is string line) _lines.Add(line);
        Errors = _process.StandardError.ReadToEnd();
        _process.WaitForExit();
    }

    private int Greatest(string start) => _lines.Where(l => l.StartsWith(start, StringComparison.Ordinal)).Select(l => int.Parse(l.AsSpan(start.Length), CultureInfo.InvariantCulture)).DefaultIfEmpty().Max();
}
