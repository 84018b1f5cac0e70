namespace Ringwright.Fuzz.Running;

/// <summary>Simpler inputs, tried in turn until none fails any more.</summary>
public static class Simplify
{
    /// <summary>The text without a stretch of it: halves first, then ever smaller stretches.</summary>
    public static IEnumerable<string> Text(string input)
    {
        for (int size = input.Length; size >= 1; size /= 2)
        {
            for (int at = 0; at < input.Length; at += size)
                yield return input.Remove(at, Math.Min(size, input.Length - at));
            if (size == 1) break;
        }
    }
}
