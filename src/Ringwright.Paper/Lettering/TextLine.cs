namespace Ringwright.Paper.Lettering;

/// <summary>Characters of one size within a line.</summary>
/// <param name="Text">The characters, clean of control characters.</param>
/// <param name="Em">Em size, mm.</param>
/// <param name="X">Start of the run from the start of the line, mm.</param>
/// <param name="Rise">Height of its baseline above that of the line, mm.</param>
/// <param name="Offsets">Start of each character from the start of the run, mm.</param>
/// <param name="Width">Width, mm.</param>
public sealed record TextRun(string Text, double Em, double X, double Rise, IReadOnlyList<double> Offsets, double Width);

/// <summary>A line of text, measured and ready to be drawn by any writer.</summary>
/// <param name="Text">The whole text as it is read.</param>
/// <param name="Style">How it is set.</param>
/// <param name="Runs">Its runs from left to right.</param>
/// <param name="Width">Width, mm.</param>
public sealed record TextLine(string Text, TextStyle Style, IReadOnlyList<TextRun> Runs, double Width);
