namespace Ringwright.Cli;

/// <summary>What the program's exit code says. Documented in docs/command-line.md.</summary>
internal static class ExitCode
{
    /// <summary>Done.</summary>
    public const int Done = 0;

    /// <summary>Done, and something found will probably go wrong as it stands (only <c>check</c>).</summary>
    public const int Doubt = 1;

    /// <summary>The input or the command's words cannot be used; nothing was written.</summary>
    public const int BadInput = 2;

    /// <summary>A file cannot be read or written.</summary>
    public const int FileFault = 3;

    /// <summary>A fault of Ringwright's own.</summary>
    public const int OwnFault = 70;

    /// <summary>Stopped by Ctrl+C.</summary>
    public const int Cancelled = 130;
}
