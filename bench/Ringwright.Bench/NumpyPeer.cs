using System.ComponentModel;
using System.Diagnostics;
using System.Globalization;

namespace Ringwright.Bench;

/// <summary>Runs numpy scripts in whatever Python on this machine has numpy; many machines have several.</summary>
internal static class NumpyPeer
{
    private static readonly string[] Interpreters = ["python3", "python", "/usr/bin/python3"];

    /// <summary>The first Python that has numpy, or null.</summary>
    internal static string? FindPython() => Interpreters.FirstOrDefault(python => Run(python, "import numpy") is not null);

    /// <summary>The time in ms that the script measures and prints; null without a Python.</summary>
    internal static double? Ms(string? python, string script) =>
        python is not null && Run(python, script) is { } output ? double.Parse(output, CultureInfo.InvariantCulture) : null;

    private static string? Run(string python, string script)
    {
        ProcessStartInfo start = new(python, ["-c", script]) { RedirectStandardOutput = true, RedirectStandardError = true };
        try
        {
            using Process process = Process.Start(start)!;
            process.BeginErrorReadLine();
            string output = process.StandardOutput.ReadToEnd();
            process.WaitForExit();
            return process.ExitCode == 0 ? output : null;
        }
        catch (Win32Exception)
        {
            return null; // no such interpreter
        }
    }
}
