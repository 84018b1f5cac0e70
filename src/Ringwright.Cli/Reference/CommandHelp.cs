namespace Ringwright.Cli.Reference;

/// <summary>What is told of a command in its help and in the reference.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Does">What it does.</param>
/// <param name="Examples">As typed after the program's name, in the folder of the solution. A test runs each, in the order of the reference.</param>
internal sealed record CommandHelp(string Name, string Does, params string[] Examples);

/// <summary>A command that tells what it does.</summary>
internal interface IHelped
{
    /// <summary>What it tells.</summary>
    static abstract CommandHelp Help { get; }
}
