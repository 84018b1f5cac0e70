using System.Diagnostics.CodeAnalysis;
using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using System.Runtime.Intrinsics.X86;

namespace Ringwright.Core.Fitting;

/// <summary>
/// Eight xoshiro256++ generators side by side (Blackman and Vigna, 2021), one per vector lane. A generator belongs to
/// one (seed, block) pair and is seeded from its own stretch of a SplitMix64 sequence, so a block's numbers do not
/// depend on who computes it or when. Always eight lanes, whatever the machine's vector width: same numbers everywhere.
/// </summary>
internal struct LaneRandom
{
    internal const int Lanes = 8;

    private const int WordsPerLane = 4;
    private const ulong SplitMixStep = 0x9E3779B97F4A7C15;

    private Vector512<ulong> _s0;
    private Vector512<ulong> _s1;
    private Vector512<ulong> _s2;
    private Vector512<ulong> _s3;

    internal LaneRandom(ulong seed, ulong block)
    {
        // Mixing the seed first keeps neighbouring seeds from sharing shifted stretches of the sequence.
        ulong position = Mix(seed) + block * (WordsPerLane * Lanes) * SplitMixStep;
        _s0 = NextWords(ref position);
        _s1 = NextWords(ref position);
        _s2 = NextWords(ref position);
        _s3 = NextWords(ref position);
    }

    /// <summary>64 random bits in every lane.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)] // keeps the state in registers
    internal Vector512<ulong> Next()
    {
        Vector512<ulong> result = RotateLeft(_s0 + _s3, 23) + _s0;
        Vector512<ulong> shifted = _s1 << 17;
        _s2 ^= _s0;
        _s3 ^= _s1;
        _s1 ^= _s2;
        _s0 ^= _s3;
        _s2 ^= shifted;
        _s3 = RotateLeft(_s3, 45);
        return result;
    }

    private static Vector512<ulong> RotateLeft(Vector512<ulong> value, [ConstantExpected] byte count) =>
        Avx512F.IsSupported ? Avx512F.RotateLeft(value, count) : (value << count) | (value >>> (64 - count));

    private static Vector512<ulong> NextWords(ref ulong position)
    {
        Span<ulong> words = stackalloc ulong[Lanes];
        foreach (ref ulong word in words)
        {
            position += SplitMixStep;
            word = Mix(position);
        }

        return Vector512.Create<ulong>(words);
    }

    /// <summary>The output function of SplitMix64 (Steele, Lea and Flood, 2014).</summary>
    private static ulong Mix(ulong value)
    {
        value = (value ^ (value >> 30)) * 0xBF58476D1CE4E5B9;
        value = (value ^ (value >> 27)) * 0x94D049BB133111EB;
        return value ^ (value >> 31);
    }
}
