namespace Ringwright.Core.Fitting;

/// <summary>Refuses records that cannot be true, with one sentence that names the entry.</summary>
internal static class RecordCheck
{
    internal static void Check(RunRecord record)
    {
        for (int run = 0; run < record.WedgeErrors.Count; run++)
        {
            for (int wedge = 0; wedge < record.WedgeErrors[run].Count; wedge++)
                Angle($"run {run + 1}, wedge {wedge + 1}, angle error", record.WedgeErrors[run][wedge]);
        }

        for (int ring = 0; ring < record.Closures.Count; ring++)
        {
            record.Closures[ring].Runs.Validate();
            Angle($"ring {ring + 1}, closing error", record.Closures[ring].ClosingError);
        }

        Pieces(record);
        Timed("cuts", record.Cuts, record.CuttingMinutes);
        Timed("sanded faces", record.FacesSanded, record.SandingMinutes);
    }

    private static void Angle(string where, double error)
    {
        // Wider than any misreading of the right quantity, so it catches degrees and whole angles.
        if (!(Math.Abs(error) < 0.35))
            throw new BadInputException(where, $"{error:R} radians cannot be an error", "give measured minus wanted, in radians");
    }

    private static void Pieces(RunRecord record)
    {
        if (record.PiecesSawn < 0)
            throw new BadInputException("pieces sawn", $"there are {record.PiecesSawn}", "give zero or more");
        if (record.PiecesLost < 0 || record.PiecesLost > record.PiecesSawn)
            throw new BadInputException("pieces lost", $"there are {record.PiecesLost} of {record.PiecesSawn} sawn", "give zero up to the number sawn");
    }

    private static void Timed(string what, int count, double minutes)
    {
        if (count < 0)
            throw new BadInputException($"timed {what}", $"there are {count}", "give zero or more");
        ChanceInput.NotNegative($"minutes for the timed {what}", minutes);
        if (count == 0 != (minutes == 0))
            throw new BadInputException($"timed {what}", $"{count} took {minutes:R} minutes", "give both the number and the minutes, or neither");
    }
}
