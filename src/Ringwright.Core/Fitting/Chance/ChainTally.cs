using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Ringwright.Core.Fitting;

/// <summary>Power sums of the rings of one block, in units of <see cref="ChainScale"/> so that nothing cancels.</summary>
/// <param name="Sum1">Sum of z.</param>
/// <param name="Sum2">Sum of z squared.</param>
/// <param name="Sum3">Sum of z cubed.</param>
/// <param name="Sum4">Sum of z to the fourth.</param>
/// <param name="Within">Rings with |E| within the limit.</param>
/// <param name="Largest">Largest |E|, radians.</param>
/// <param name="Sawn">Wedges sawn.</param>
internal readonly record struct BlockSums(double Sum1, double Sum2, double Sum3, double Sum4, long Within, double Largest, long Sawn)
{
    public static BlockSums operator +(BlockSums a, BlockSums b) => new(
        a.Sum1 + b.Sum1,
        a.Sum2 + b.Sum2,
        a.Sum3 + b.Sum3,
        a.Sum4 + b.Sum4,
        a.Within + b.Within,
        Math.Max(a.Largest, b.Largest),
        a.Sawn + b.Sawn);
}

/// <summary>z = (E - Mean) / Sd: about standardised; exact values do not matter, only that they are fixed beforehand.</summary>
internal readonly record struct ChainScale(double Mean, double Sd);

/// <summary>Adds up the closing errors of blocks. Always in the same order within a block, so to the same bits.</summary>
internal static class ChainTally
{
    internal static BlockSums Sum(ReadOnlySpan<double> closing, ChainScale scale, double limit, long sawn)
    {
        Vector512<double> mean = Vector512.Create(scale.Mean);
        Vector512<double> inverse = Vector512.Create(1 / scale.Sd);
        Vector512<double> bound = Vector512.Create(limit);
        Vector512<double> sum1 = default, sum2 = default, sum3 = default, sum4 = default, largest = default;
        long within = 0;
        ReadOnlySpan<Vector512<double>> whole = MemoryMarshal.Cast<double, Vector512<double>>(closing);
        foreach (Vector512<double> error in whole)
        {
            Vector512<double> z = (error - mean) * inverse;
            Vector512<double> z2 = z * z;
            sum1 += z;
            sum2 += z2;
            sum3 += z2 * z;
            sum4 += z2 * z2;
            Vector512<double> size = Vector512.Abs(error);
            largest = Vector512.Max(largest, size);
            within += Vector512.CountWhereAllBitsSet(Vector512.LessThanOrEqual(size, bound));
        }

        BlockSums sums = new(Total(sum1), Total(sum2), Total(sum3), Total(sum4), within, Greatest(largest), sawn);
        foreach (double error in closing[(whole.Length * Vector512<double>.Count)..])
            sums += One(error, scale, limit);
        return sums;
    }

    private static BlockSums One(double error, ChainScale scale, double limit)
    {
        double z = (error - scale.Mean) * (1 / scale.Sd);
        return new(z, z * z, z * z * z, z * z * z * z, Math.Abs(error) <= limit ? 1 : 0, Math.Abs(error), 0);
    }

    /// <summary>Lane by lane, since the order of the framework's own sum may differ between machines.</summary>
    private static double Total(Vector512<double> lanes)
    {
        double total = 0;
        for (int i = 0; i < Vector512<double>.Count; i++)
            total += lanes[i];
        return total;
    }

    private static double Greatest(Vector512<double> lanes)
    {
        double greatest = 0;
        for (int i = 0; i < Vector512<double>.Count; i++)
            greatest = Math.Max(greatest, lanes[i]);
        return greatest;
    }
}
