using System.Collections.Immutable;
using System.Globalization;

namespace Ringwright.Core.Turning;

/// <summary>
/// Volume, mass, balance and surfaces of the turned solid, without facets. Exact for joints through the axis (the integrands over
/// the height are polynomials there); for moved and leaning sides exact across the wall and by Gauss' rule over the height.
/// </summary>
public sealed class TurnedMass
{
    private const double GramsPerMm3 = 1e-6; // of 1 kg/m³

    private TurnedMass(ImmutableArray<ImmutableArray<MassProperties>> segments)
    {
        Segments = segments;
        Rings = [.. segments.Select(Sum)];
        Whole = Sum(Rings);
    }

    /// <summary>Ring by ring, segment by segment, in the order of the rings given.</summary>
    public ImmutableArray<ImmutableArray<MassProperties>> Segments { get; }

    /// <summary>The rings.</summary>
    public ImmutableArray<MassProperties> Rings { get; }

    /// <summary>Everything.</summary>
    public MassProperties Whole { get; }

    /// <summary>Weighs <paramref name="rings"/>.</summary>
    /// <param name="rings">The turned rings.</param>
    /// <param name="densities">Density of each wood by its number, kg/m³.</param>
    /// <exception cref="BadInputException">A ring cannot be used, or a wood has no density above zero.</exception>
    public static TurnedMass Of(IReadOnlyList<TurnedRing> rings, params ReadOnlySpan<double> densities)
    {
        SolidCheck.Check(rings);
        var all = ImmutableArray.CreateBuilder<ImmutableArray<MassProperties>>(rings.Count);
        for (int ring = 0; ring < rings.Count; ring++)
        {
            WallIntegrals wall = new(SolidCheck.Tidy(rings[ring].Section));
            var segments = ImmutableArray.CreateBuilder<MassProperties>(rings[ring].Segments.Length);
            foreach (TurnedSegment segment in rings[ring].Segments)
                segments.Add(wall.Over(segment).OfDensity(GramsPerMm3 * Density(densities, segment.Wood, $"ring {ring + 1}, segment {segments.Count + 1}")));
            all.Add(segments.MoveToImmutable());
        }

        return new(all.MoveToImmutable());
    }

    /// <summary>
    /// The volume turned away from each ring, mm³, given the volumes of their glued blanks.
    /// </summary>
    /// <param name="blanks">One volume for each ring, mm³.</param>
    /// <exception cref="BadInputException">Not one for each ring, or a blank smaller than what is turned from it.</exception>
    public ImmutableArray<double> TurnedAway(IReadOnlyList<double> blanks)
    {
        ArgumentNullException.ThrowIfNull(blanks);
        if (blanks.Count != Rings.Length) throw new BadInputException("blanks", $"there are {blanks.Count} for {Rings.Length} rings", "give one volume for each ring");
        var away = ImmutableArray.CreateBuilder<double>(blanks.Count);
        for (int i = 0; i < blanks.Count; i++)
        {
            double rest = blanks[i] - Rings[i].Volume;
            // A blank that is turned nowhere may be short by rounding.
            if (!(rest >= -1e-9 * Rings[i].Volume)) throw new BadInputException($"ring {i + 1}", Short(blanks[i], Rings[i].Volume), "the blank must hold what is turned from it");
            away.Add(Math.Max(0, rest));
        }

        return away.MoveToImmutable();
    }

    private static string Short(double blank, double turned) =>
        string.Create(CultureInfo.InvariantCulture, $"its blank has {blank:0} mm³ and the turned ring {turned:0} mm³");

    private static double Density(ReadOnlySpan<double> densities, int wood, string where)
    {
        if (wood >= densities.Length) throw new BadInputException(where, $"its wood {wood} has no density", "give one density for each wood");
        if (densities[wood] > 0 && double.IsFinite(densities[wood])) return densities[wood];
        throw new BadInputException(where, string.Create(CultureInfo.InvariantCulture, $"its wood {wood} has the density {densities[wood]}"), "a density is above 0 kg/m³");
    }

    private static MassProperties Sum(ImmutableArray<MassProperties> parts)
    {
        MassProperties sum = default;
        foreach (MassProperties part in parts) sum += part;
        return sum;
    }
}
