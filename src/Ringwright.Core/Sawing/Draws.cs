namespace Ringwright.Core.Sawing;

/// <summary>
/// Normal draws by place instead of by order: each is a pure function of seed, kind and number, so leaving one source of
/// variation out changes no other draw. SplitMix64 (Steele, Lea and Flood 2014) read at any position, then the transform
/// of Box and Muller (1958). No draw is farther out than sqrt(2 · 53 · ln 2) = 8.58 standard deviations.
/// </summary>
internal readonly struct Draws(ulong seed)
{
    private const ulong Golden = 0x9E3779B97F4A7C15;
    private readonly ulong _start = Mix(seed + Golden);

    /// <summary>Sources of variation, each with draws of its own.</summary>
    public enum Source
    {
        /// <summary>Seating angle of a cut.</summary>
        Seating,

        /// <summary>Length at the stop.</summary>
        Stop,

        /// <summary>Width of the kerf.</summary>
        Kerf,

        /// <summary>Seating angle of a -y face on the sander.</summary>
        MinusSeating,

        /// <summary>Seating angle of a +y face on the sander.</summary>
        PlusSeating,

        /// <summary>Size of a -y face on the sander.</summary>
        MinusSize,

        /// <summary>Size of a +y face on the sander.</summary>
        PlusSize,

        /// <summary>Setting of a fence, once for a ring.</summary>
        Setting,

        /// <summary>Unevenness of sanding a -y face.</summary>
        MinusSanding,

        /// <summary>Unevenness of sanding a +y face.</summary>
        PlusSanding,

        /// <summary>Lean of the blade in a cut.</summary>
        Lean,

        /// <summary>Lean of a -y face on the sander.</summary>
        MinusLean,

        /// <summary>Lean of a +y face on the sander.</summary>
        PlusLean,

        /// <summary>Unevenness of sanding a -y face, from its lower to its upper side.</summary>
        MinusAcross,

        /// <summary>Unevenness of sanding a +y face, from its lower to its upper side.</summary>
        PlusAcross,
    }

    /// <summary>A normal draw with this mean and deviation, in their unit (mm or rad); <paramref name="number"/> is the cut's or the wedge's.</summary>
    public double Normal(Source source, int number, double mean, double deviation)
    {
        if (deviation == 0) return mean;
        ulong place = ((ulong)(uint)number << 5) | ((ulong)source << 1);
        double radius = Math.Sqrt(-2 * Math.Log(Uniform(place)));
        return mean + (deviation * radius * Math.Cos(2 * Math.PI * Uniform(place + 1)));
    }

    // In (0, 1], in steps of 2^-53.
    private double Uniform(ulong place) => ((Mix(_start + (place * Golden)) >> 11) + 1) * (1.0 / (1ul << 53));

    private static ulong Mix(ulong z)
    {
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
        return z ^ (z >> 31);
    }
}
