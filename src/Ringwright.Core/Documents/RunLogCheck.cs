using System.Collections.Immutable;
using System.Globalization;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;

namespace Ringwright.Core.Documents;

/// <summary>Says whether a record can be. Each refusal names run, field and value.</summary>
public static class RunLogCheck
{
    private const int MostPieces = 1_000_000;

    /// <summary>Throws for the first thing that cannot be.</summary>
    /// <exception cref="BadInputException">With run, field, value and what would be right.</exception>
    public static void Check(RunLog log)
    {
        ArgumentNullException.ThrowIfNull(log);
        if (log.Runs.IsDefault) throw new BadInputException("runs", "the list is missing", "an empty list [] will do");
        for (int i = 0; i < log.Runs.Length; i++) CheckRun(log.Runs[i], string.Create(CultureInfo.InvariantCulture, $"run {i + 1}"));
    }

    private static void CheckRun(LoggedRun run, string place)
    {
        if (run is null) throw new BadInputException(place, "it is null", "a run is a group of fields");
        Count(place, "sawn", run.Sawn);
        Count(place, "lost", run.Lost);
        Count(place, "cuts", run.Cuts);
        Count(place, "facesSanded", run.FacesSanded);
        if (run.Lost > run.Sawn) throw new BadInputException($"{place}, lost", $"{run.Lost} lost of {run.Sawn} sawn cannot be", "at most all can be lost");
        Minutes(place, "cuttingMinutes", run.CuttingMinutes, run.Cuts);
        Minutes(place, "sandingMinutes", run.SandingMinutes, run.FacesSanded);
        CheckMeasured(run, place);
        foreach (LoggedClosure closure in run.Closures.IsDefault ? [] : run.Closures) CheckClosure(closure, place);
    }

    private static void CheckMeasured(LoggedRun run, string place)
    {
        if (run.Measured.IsDefaultOrEmpty) return;
        if (run.WedgeAngle is not Angle wanted) throw new BadInputException($"{place}, wedgeAngle", "angles are measured but the wanted one is missing", "give it, such as \"15°\"");
        foreach (ImmutableArray<Angle> row in run.Measured)
            foreach (Angle angle in row)
                if (Math.Abs(angle.Degrees - wanted.Degrees) > 5)
                    throw new BadInputException($"{place}, measured", $"{angle} is more than 5° from the wanted {wanted}", "leave out wedges that are scrap, and check the wanted angle");
    }

    private static void CheckClosure(LoggedClosure closure, string place)
    {
        if (closure is null) throw new BadInputException($"{place}, closures", "one is null", "a closure is a group of fields");
        if (closure.Wedges is < PieceCheck.FewestSegments or > PieceCheck.MostSegments)
            throw new BadInputException($"{place}, closures, wedges", $"{closure.Wedges} cannot make a ring", $"{PieceCheck.FewestSegments} to {PieceCheck.MostSegments} can");
        if (closure.Boards < 1 || closure.Boards > closure.Wedges)
            throw new BadInputException($"{place}, closures, boards", $"{closure.Boards} boards for {closure.Wedges} wedges cannot be", "1 up to one for each wedge can");
        if (closure.Reach.Millimetres is not (> 0.5 and <= 3000)) throw new BadInputException($"{place}, closures, reach", $"{closure.Reach} cannot be", "0.5 mm to 3000 mm can");
        if (closure.Gap.Millimetres < 0 || closure.Gap.Millimetres > closure.Reach.Millimetres)
            throw new BadInputException($"{place}, closures, gap", $"{closure.Gap} cannot be", "0 up to the reach can");
    }

    private static void Count(string place, string field, int value)
    {
        if (value is < 0 or > MostPieces) throw new BadInputException($"{place}, {field}", $"{value} cannot be", "0 or more can");
    }

    private static void Minutes(string place, string field, double minutes, int pieces)
    {
        if (!(minutes is >= 0 and < 1e6)) throw new BadInputException($"{place}, {field}", $"{minutes} minutes cannot be", "0 or more can");
        if (minutes > 0 != pieces > 0) throw new BadInputException($"{place}, {field}", $"{minutes} minutes for {pieces} pieces cannot be", "give both or neither");
    }
}
