namespace Ringwright.Stock.Choosing;

/// <summary>Turns classes at places into wedges at places, each class giving its wedges in turn.</summary>
internal sealed class RingFiller(ChoosingProblem problem)
{
    public int[] Fill(int[] classAt)
    {
        int[] given = new int[problem.Classes.Length];
        return [.. classAt.Select(c => problem.Classes[c].Members[given[c]++])];
    }

    /// <summary>The wedges counted, at places of their wood and part, in no particular order.</summary>
    public int[] InAnyOrder(ClassCounts counts)
    {
        int[,] placed = new int[problem.Parts, problem.Classes.Length];
        int[] classAt = new int[problem.Places];
        for (int k = 0; k < problem.Places; k++)
        {
            int part = problem.PartOf(k);
            int c = 0;
            while (problem.Classes[c].Wood != problem.PlaceWoods[k] || placed[part, c] == counts[part, c]) c++;
            placed[part, c]++;
            classAt[k] = c;
        }

        return Fill(classAt);
    }
}
