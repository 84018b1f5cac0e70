namespace Ringwright.Paper.Sheets;

/// <summary>What every sheet of a packet says about itself.</summary>
/// <param name="Piece">Name of the piece.</param>
/// <param name="Units">Units of the numbers on the sheets, as a person reads them.</param>
/// <param name="Date">Date printed; passed in, never read from a clock.</param>
/// <param name="Version">Version of the program.</param>
public sealed record PacketTitle(string Piece, string Units, DateOnly Date, string Version);

/// <summary>What is told apart from sheet to sheet.</summary>
/// <param name="Name">Name of the sheet.</param>
/// <param name="Scale">Scale of its main picture, or a dash.</param>
/// <param name="Number">Its number, from 1.</param>
/// <param name="Count">How many sheets there are.</param>
internal sealed record SheetTitle(string Name, string Scale, int Number, int Count);
