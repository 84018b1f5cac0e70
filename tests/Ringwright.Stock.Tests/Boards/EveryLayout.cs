using Ringwright.Core.Boards;

namespace Ringwright.Stock.Tests.Boards;

/// <summary>What is short at least, found by trying every way to rip and crosscut sound boards of one wood: for small racks only.</summary>
internal static class EveryLayout
{
    /// <summary>A needed piece weighs one more than all pieces to saw, a spare one, as the plan counts them.</summary>
    public static long LeastShort(CuttingRequest request)
    {
        HashSet<string> had = [Key(new int[request.Demands.Length])];
        foreach (RackBoard board in request.Rack.Boards)
            had = [.. had.SelectMany(before => Board(request, board.Width.Millimetres - request.Rules.EdgeTrim, board.Length.Millimetres - request.Rules.StripLoss).Select(more => Key(Sum(request, Counts(before), more))))];
        long needed = 1 + request.Demands.Sum(d => (long)d.ToSaw);
        return had.Select(Counts).Min(given => request.Demands.Select((d, i) => (Math.Max(0, d.Needed - given[i]) * needed) + d.ToSaw - given[i]).Sum());
    }

    // Strip by strip across what is left of the board; a strip is charged a kerf only when another follows.
    private static List<int[]> Board(CuttingRequest request, double across, double length)
    {
        Dictionary<string, int[]> found = [];
        void Rip(double left, int[] given, int fromClass)
        {
            found.TryAdd(Key(given), given);
            double[] widths = [.. request.Demands.Select(d => d.Width).Distinct().Order()];
            for (int c = fromClass; c < widths.Length; c++)
                if (widths[c] <= left + 1e-9)
                    foreach (int[] strip in Strip(request, widths[c], length))
                        if (Sum(request, given, strip) is int[] with && Key(with) != Key(given)) Rip(left - widths[c] - request.Rules.Kerf, with, c);
        }

        Rip(across, new int[request.Demands.Length], 0);
        return [.. found.Values];
    }

    private static List<int[]> Strip(CuttingRequest request, double width, double length)
    {
        List<int[]> all = [new int[request.Demands.Length]];
        for (int d = 0; d < request.Demands.Length; d++)
        {
            if (request.Demands[d].Width != width) continue;
            all = [.. all.SelectMany(counts => Enumerable.Range(0, request.Demands[d].ToSaw + 1).Select(n =>
            {
                int[] with = [.. counts];
                with[d] = n;
                return with;
            }).Where(with => with.Select((n, i) => n == 0 ? 0 : request.Demands[i].Start + (n * request.Demands[i].Pitch)).Sum() <= length + 1e-9))];
        }

        return all;
    }

    private static int[] Sum(CuttingRequest request, int[] one, int[] other) => [.. request.Demands.Select((d, i) => Math.Min(d.ToSaw, one[i] + other[i]))];

    private static string Key(int[] counts) => string.Join(',', counts);

    private static int[] Counts(string key) => [.. key.Split(',').Select(n => int.Parse(n, System.Globalization.CultureInfo.InvariantCulture))];
}
