namespace Ringwright.Docs;

/// <summary>A chapter of the page on the science.</summary>
/// <param name="Title">Its heading.</param>
/// <param name="Text">What it says before its figures.</param>
/// <param name="Figures">The names of its figures, in order.</param>
internal sealed record Chapter(string Title, string Text, string[] Figures);
