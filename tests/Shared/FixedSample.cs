using CsCheck;

namespace Ringwright;

/// <summary>
/// Property tests with a fixed stream of random cases, so that a test run is the same today and tomorrow. The methods have
/// the names of CsCheck's, and win over them because they live in a namespace around every test. A case that fails is handed to
/// CsCheck with its seed, which shrinks it.
/// </summary>
internal static class FixedSample
{
    private const int Stream = 20_260;

    public static void Sample<T>(this Gen<T> gen, Func<T, bool> holds, long iter = 100)
    {
        var random = new PCG(Stream, 1); // without a seed it starts from the clock
        for (long i = 0; i < iter; i++)
        {
            string seed = random.ToString();
            if (Holds(holds, gen.Generate(random, null, out _))) continue;
            Check.Sample(gen, holds, seed: seed, iter: iter);
            throw new InvalidOperationException($"Failed for the case of seed {seed}, and held when repeated.");
        }
    }

    public static void Sample<T>(this Gen<T> gen, Action<T> check, long iter = 100) =>
        gen.Sample(
            value =>
            {
                check(value);
                return true;
            },
            iter);

    public static void Sample<T1, T2>(this Gen<(T1, T2)> gen, Func<T1, T2, bool> holds, long iter = 100) =>
        gen.Sample(t => holds(t.Item1, t.Item2), iter);

    public static void Sample<T1, T2>(this Gen<(T1, T2)> gen, Action<T1, T2> check, long iter = 100) =>
        gen.Sample(t => check(t.Item1, t.Item2), iter);

    public static void Sample<T1, T2, T3>(this Gen<(T1, T2, T3)> gen, Func<T1, T2, T3, bool> holds, long iter = 100) =>
        gen.Sample(t => holds(t.Item1, t.Item2, t.Item3), iter);

    public static void Sample<T1, T2, T3>(this Gen<(T1, T2, T3)> gen, Action<T1, T2, T3> check, long iter = 100) =>
        gen.Sample(t => check(t.Item1, t.Item2, t.Item3), iter);

    // A check that throws fails like one that returns false; CsCheck repeats it and shows the exception.
    private static bool Holds<T>(Func<T, bool> holds, T value)
    {
        try
        {
            return holds(value);
        }
#pragma warning disable CA1031
        catch (Exception)
#pragma warning restore CA1031
        {
            return false;
        }
    }
}
