using Ringwright.Stock.Boards;

namespace Ringwright.Bench;

/// <summary>Random jobs: twelve lengths of pieces, about 600 to 900 of them, from boards of 400 and 600 mm; kerf 0.9 mm, 75 mm that cannot be sawn. In tenths of a mm; a board costs its length in mm.</summary>
internal static class StickJobs
{
    internal const int Count = 5;
    private const int Kinds = 12, Kerf = 9, Holding = 750;

    internal static StripProblem Random(int seed)
    {
        var random = new Random(7_000 + seed);
        StripItem[] items = [.. Enumerable.Range(0, Kinds).Select(_ => new StripItem(random.Next(350, 1_800) + Kerf, random.Next(35, 90)))];
        return new([.. items], [new(4_000 - Holding, 400), new(6_000 - Holding, 600)]);
    }
}
