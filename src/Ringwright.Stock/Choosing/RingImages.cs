using Ringwright.Core.Fitting;

namespace Ringwright.Stock.Choosing;

/// <summary>A ring turned, or turned over and seen from behind, is the same ring; one image of it stands for all.</summary>
internal static class RingImages
{
    /// <summary>Of all images that keep pattern and halves, the one whose wedge numbers read smallest from the first place on.</summary>
    public static int[] Standard(ChoosingProblem problem, int[] ring) =>
        Images(ring).Where(image => Keeps(problem, ring, image)).Select(image => image.Select(k => ring[k]).ToArray())
            .MinBy(r => r, Comparer<int[]>.Create((a, b) => Compare(problem, a, b)))!;

    private static IEnumerable<int[]> Images(int[] ring)
    {
        int n = ring.Length;
        for (int turn = 0; turn < n; turn++)
        {
            yield return [.. Enumerable.Range(0, n).Select(k => (k + turn) % n)];
            yield return [.. Enumerable.Range(0, n).Select(k => (turn - k + n) % n)];
        }
    }

    private static bool Keeps(ChoosingProblem problem, int[] ring, int[] image)
    {
        for (int k = 0; k < image.Length; k++)
            if (problem.PlaceWoods[k] != problem.Wedges[ring[image[k]]].Wood) return false;
        return problem.Input.Closing == Closing.Whole
            || image.Take(problem.PartSize).Select(problem.PartOf).Distinct().Count() == 1;
    }

    private static int Compare(ChoosingProblem problem, int[] a, int[] b)
    {
        for (int k = 0; k < a.Length; k++)
        {
            int order = problem.Wedges[a[k]].Reading.Number.CompareTo(problem.Wedges[b[k]].Reading.Number);
            if (order != 0) return order;
        }

        return 0;
    }
}
