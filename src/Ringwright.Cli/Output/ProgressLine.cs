using System.Globalization;
using Spectre.Console;

namespace Ringwright.Cli.Output;

/// <summary>Progress on the error stream, one line that is overwritten; nothing when that stream is no terminal or JSON is asked.</summary>
internal sealed class ProgressLine : IProgress<double>
{
    private readonly Lock _gate = new();
    private int _shown = -1;

    private ProgressLine()
    {
    }

    public static IProgress<double>? On(IAnsiConsole console, bool json) =>
        json || Console.IsErrorRedirected || !console.Profile.Capabilities.Ansi ? null : new ProgressLine();

    public void Report(double value)
    {
        int percent = (int)(100 * value);
        lock (_gate)
        {
            if (percent == _shown) return;
            _shown = percent;
            Console.Error.Write(percent >= 100 ? "\r               \r" : string.Create(CultureInfo.InvariantCulture, $"\r  {percent} % done"));
        }
    }
}
