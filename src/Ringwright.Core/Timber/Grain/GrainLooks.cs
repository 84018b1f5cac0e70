using System.Collections.Frozen;

namespace Ringwright.Core.Timber.Grain;

/// <summary>The looks of the woods in the table of species, alike woods together. Rough guesses, for pictures only.</summary>
internal static class GrainLooks
{
    /// <summary>For a wood that nothing is known of.</summary>
    public static GrainLook Middling { get; } = new(2.6, 0.35, Pores.Diffuse, 0.12, 0.3, 0.5, 0.8, 0.15);

    private static readonly (GrainLook Look, string Names)[] Alike =
    [
        (new(2.8, 0.28, Pores.Diffuse, 0.07, 0.12, 0.35, 0.8, 0.35, Curl: 0.25), "maple, red maple, silver maple, bigleaf maple, black maple"),
        (new(2.2, 0.16, Pores.Diffuse, 0.05, 0.08, 0.28, 0.6, 0.12), "holly, boxwood, pear, apple, magnolia"),
        (new(2.6, 0.30, Pores.Diffuse, 0.10, 0.22, 0.42, 0.5, 0.10, Curl: 0.15), "birch, paper birch, sweet birch, alder, basswood, willow, catalpa"),
        (new(2.4, 0.28, Pores.Diffuse, 0.08, 0.20, 0.40, 1.6, 0.75), "beech, sycamore"),
        (new(2.8, 0.42, Pores.Diffuse, 0.08, 0.22, 0.48, 0.9, 0.28, Curl: 0.10), "cherry, madrone, sweetgum, persimmon, black tupelo, tulipwood"),
        (new(2.3, 0.55, Pores.RingPorous, 0.30, 0.75, 0.55, 14, 0.85), "oak, red oak"),
        (new(2.4, 0.62, Pores.RingPorous, 0.28, 0.70, 0.55, 0.5, 0.06), "ash, black ash, chestnut, sassafras, hackberry"),
        (new(2.2, 0.52, Pores.RingPorous, 0.22, 0.60, 0.50, 0.7, 0.15), "elm, rock elm, honeylocust, black locust, osage orange, hickory, pecan"),
        (new(3.4, 0.45, Pores.Graded, 0.20, 0.55, 0.62, 0.5, 0.05, Curl: 0.12), "walnut, butternut"),
        (new(3.6, 0.22, Pores.Diffuse, 0.18, 0.50, 0.52, 0.6, 0.10, Ribbon: 0.55), "mahogany, African mahogany, sapele, meranti, Spanish-cedar, okoume, canarywood"),
        (new(3.2, 0.30, Pores.Graded, 0.22, 0.50, 0.58, 0.5, 0.06, Ribbon: 0.15), "teak, iroko, limba, afrormosia, greenheart"),
        (new(3.8, 0.26, Pores.Diffuse, 0.26, 0.55, 0.66, 0.4, 0.05, Ribbon: 0.35, Stripe: 0.12), "padauk, jatoba, bubinga, macawood"),
        (new(3.0, 0.16, Pores.Diffuse, 0.14, 0.32, 0.46, 0.4, 0.05, Ribbon: 0.30), "purpleheart, bloodwood, yellowheart"),
        (new(2.6, 0.30, Pores.Diffuse, 0.24, 0.60, 0.72, 0.4, 0.04, Stripe: 0.75), "wenge"),
        (new(3.0, 0.12, Pores.Diffuse, 0.06, 0.12, 0.30, 0.4, 0.03, Stripe: 0.06), "ebony"),
        (new(3.4, 0.26, Pores.Diffuse, 0.20, 0.40, 0.56, 0.4, 0.05, Ribbon: 0.15, Stripe: 0.55), "Indian rosewood, cocobolo, goncalo alves, olive"),
        (new(5.0, 0.14, Pores.Diffuse, 0.20, 0.40, 0.46, 0.4, 0.05, Ribbon: 0.15, Stripe: 0.95), "zebrano"),
    ];

    /// <summary>The looks by the species' names.</summary>
    public static FrozenDictionary<string, GrainLook> ByName { get; } = Alike
        .SelectMany(alike => alike.Names.Split(", ").Select(name => (name, alike.Look)))
        .ToFrozenDictionary(p => p.name, p => p.Look, StringComparer.OrdinalIgnoreCase);
}
