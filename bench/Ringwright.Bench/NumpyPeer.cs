using System.ComponentModel;
using System.Diagnostics;
using System.Globalization;

namespace Ringwright.Bench;

/// <summary>Runs a numpy script in whatever Python on this machine has numpy; many have several.</summary>
internal static class NumpyPeer
{
    private static readonly string[] Interpreters = ["python3", "python", "/usr/bin/python3"];

    /// <summary>
    /// Median of the times, ms, that the script prints one a line; null when no Python here has numpy.
    /// </summary>
    internal static double? MedianMs(string script) => Interpreters.Select(python => TryRun(python, script)).FirstOrDefault(ms => ms is not null);

    private static double? TryRun(string python, string script)
    {
        ProcessStartInfo start = new(python, ["-c", script]) { RedirectStandardOutput = true, RedirectStandardError = true };
        try
        {
            using Process process = Process.Start(start)!;
            process.ErrorDataReceived += (_, _) => { };
            process.BeginErrorReadLine();
            string output = process.StandardOutput.ReadToEnd();
            process.WaitForExit();
            return process.ExitCode == 0 ? Stopclock.MedianOf(Times(output)) : null;
        }
        catch (Win32Exception)
        {
            return null; // no such interpreter
        }
    }

    private static IEnumerable<double> Times(string output) =>
        output.Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)
            .Select(line => double.Parse(line, CultureInfo.InvariantCulture));
}
