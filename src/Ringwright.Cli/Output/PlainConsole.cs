using Spectre.Console;

namespace Ringwright.Cli.Output;

/// <summary>A console that is calm everywhere: no colour and no wrapping when it is not a terminal.</summary>
internal static class PlainConsole
{
    // Wider than any line of ours, so that nothing wraps in a file or pipe.
    private const int Unwrapped = 10_000;

    public static IAnsiConsole On(TextWriter output)
    {
        bool terminal = ReferenceEquals(output, Console.Out) && !Console.IsOutputRedirected;
        IAnsiConsole console = AnsiConsole.Create(new AnsiConsoleSettings
        {
            Ansi = terminal ? AnsiSupport.Detect : AnsiSupport.No,
            ColorSystem = terminal ? ColorSystemSupport.Detect : ColorSystemSupport.NoColors,
            Interactive = InteractionSupport.No,
            Out = new AnsiConsoleOutput(output),
        });
        if (!terminal) console.Profile.Width = Unwrapped;
        return console;
    }
}
