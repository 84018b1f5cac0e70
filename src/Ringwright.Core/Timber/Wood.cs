using System.Collections.Immutable;
using Ringwright.Core.Timber.Colour;

namespace Ringwright.Core.Timber;

/// <summary>
/// How a wood is drawn. Colours are rough guesses from memory, good for a picture and for nothing else: colour differs from
/// tree to tree and with light and finish. The mark tells woods apart without colour.
/// </summary>
/// <param name="Name">The wood's name, lower case.</param>
/// <param name="Hex">sRGB colour as #rrggbb.</param>
/// <param name="Mark">Number of the line pattern on paper, 0 (blank) to <see cref="Marks"/> − 1.</param>
public sealed record Wood(string Name, string Hex, int Mark)
{
    /// <summary>Number of different line patterns.</summary>
    public const int Marks = 6;

    private static readonly ImmutableArray<Wood> Known =
    [
        new("maple", "#e3c9a5", 0), new("padauk", "#a8452c", 1), new("walnut", "#6d5140", 2), new("cherry", "#b98257", 3),
        new("oak", "#c6a57c", 4), new("beech", "#d3ab83", 5), new("ash", "#d9bf98", 4), new("wenge", "#4a3b31", 2),
        new("purpleheart", "#6f4460", 1), new("ebony", "#35302d", 3), new("holly", "#ece4d2", 0), new("birch", "#dfc49c", 5),
        new("mahogany", "#94563c", 3), new("yellowheart", "#d8b24d", 5), new("bloodwood", "#8c2f26", 1), new("sycamore", "#d5b592", 4),
    ];

    /// <summary>The swatch in CIELAB; as rough as <see cref="Hex"/>, from which it is computed.</summary>
    public Lab Lab => Srgb.Parse(Hex).Lab;

    /// <summary>The woods with a swatch of their own.</summary>
    public static ImmutableArray<Wood> All => Known;

    /// <summary>The swatch of <paramref name="name"/> (case does not matter); an unknown wood gets a steady one of its own.</summary>
    public static Wood Named(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        string lower = name.Trim().ToLowerInvariant();
        return Known.FirstOrDefault(w => w.Name == lower) ?? Unknown(lower);
    }

    // FNV-1a, so that the same name looks the same on every machine and in every run.
    private static Wood Unknown(string lower)
    {
        uint hash = 2166136261;
        foreach (char c in lower) hash = unchecked((hash ^ c) * 16777619);
        int shade = 90 + (int)(hash % 100);
        return new(lower, $"#{Math.Min(255, shade + 40):x2}{shade:x2}{shade * 2 / 3:x2}", (int)(hash / 100 % Marks));
    }
}
