namespace Ringwright.Core;

/// <summary>
/// Input that cannot be used, told in one sentence: where it is, what is wrong, and what would be right.
/// The only exception the library throws on purpose for values a person typed or measured.
/// </summary>
public sealed class BadInputException : Exception
{
    // A value as long as a file would bury the sentence that quotes it.
    private const int Longest = 600;

    /// <summary>Makes the sentence "<paramref name="where"/>: <paramref name="problem"/>; <paramref name="right"/>."</summary>
    /// <param name="where">The place a person can find: a field path, a ring's name, a command's option.</param>
    /// <param name="problem">What is wrong, with the value as it was given.</param>
    /// <param name="right">What would be right.</param>
    public BadInputException(string where, string problem, string right)
        : base($"{OneLine.Of(where, Longest)}: {OneLine.Of(problem, Longest)}; {OneLine.Of(right)}.")
    {
        Where = OneLine.Of(where, Longest);
        Problem = OneLine.Of(problem, Longest);
        Right = OneLine.Of(right);
    }

    /// <summary>The place a person can find.</summary>
    public string Where { get; }

    /// <summary>What is wrong.</summary>
    public string Problem { get; }

    /// <summary>What would be right.</summary>
    public string Right { get; }
}
