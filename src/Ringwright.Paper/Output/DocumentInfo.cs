namespace Ringwright.Paper.Output;

/// <summary>What a file says about itself. Nothing is read from a clock, so that the same input gives the same bytes.</summary>
/// <param name="Title">Title of the document.</param>
/// <param name="Subject">What it is about, in a few words.</param>
/// <param name="Date">The date to write into it, as printed on the sheets.</param>
public sealed record DocumentInfo(string Title, string Subject, DateOnly Date);
