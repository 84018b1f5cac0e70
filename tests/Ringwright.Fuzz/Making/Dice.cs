namespace Ringwright.Fuzz.Making;

/// <summary>Random choices.</summary>
public sealed class Dice(int seed)
{
    private readonly Random _random = new(seed);

    /// <summary>Those of one case of a run.</summary>
    public static Dice For(int seed, int number)
    {
        // Neighbouring seeds and numbers must not look alike (the finaliser of MurmurHash3).
        uint h = unchecked(((uint)seed * 0x9E3779B1u) ^ ((uint)number * 0x85EBCA77u) ^ 0xC2B2AE3Du);
        h = unchecked((h ^ (h >> 16)) * 0x85EBCA6Bu);
        h = unchecked((h ^ (h >> 13)) * 0xC2B2AE35u);
        return new((int)((h ^ (h >> 16)) & 0x7FFFFFFF));
    }

    public int Below(int end) => end <= 1 ? 0 : _random.Next(end);

    public int From(int least, int most) => _random.Next(least, most + 1);

    public double Between(double least, double most) => least + (_random.NextDouble() * (most - least));

    /// <summary>Evenly over the sizes, as lengths in a shop are.</summary>
    public double Scale(double least, double most) => Math.Exp(Between(Math.Log(least), Math.Log(most)));

    public bool Chance(double share) => _random.NextDouble() < share;

    public T One<T>(IReadOnlyList<T> of) => of[Below(of.Count)];

    public void Bytes(Span<byte> bytes) => _random.NextBytes(bytes);

    /// <summary>Digits, the first not 0.</summary>
    public string Digits(int count) => string.Concat(Enumerable.Range(0, count).Select(i => (char)('0' + (i == 0 ? From(1, 9) : Below(10)))));
}
