using System.Collections.Immutable;
using Ringwright.Core.Profiles;

namespace Ringwright.Core.Tests.Profiles;

/// <summary>The inner wall straight from its definition: slow, and sharing nothing with the library but the curve.</summary>
internal static class BruteForce
{
    private const int Parts = 200;

    public static double Inner(ProfileCurve curve, ImmutableArray<ThicknessStretch> thickness, double z)
    {
        double best = double.PositiveInfinity;
        foreach (CurveSpan span in curve.Spans)
        {
            double[] values = [.. Enumerable.Range(0, Parts + 1).Select(i => Reach(span, thickness, z, i / (double)Parts))];
            best = Math.Min(best, values.Min());
            for (int i = 0; i <= Parts; i++)
                if (values[i] < best + 5) best = Math.Min(best, Ternary(span, thickness, z, Math.Max(0, i - 1) / (double)Parts, Math.Min(Parts, i + 1) / (double)Parts));
        }

        return best;
    }

    private static double Reach(CurveSpan span, ImmutableArray<ThicknessStretch> thickness, double z, double u)
    {
        double height = span.At(u).Y, t = Thickness(thickness, height), above = z - height;
        return Math.Abs(above) > t ? double.PositiveInfinity : span.At(u).X - Math.Sqrt((t * t) - (above * above));
    }

    private static double Thickness(ImmutableArray<ThicknessStretch> thickness, double height)
    {
        foreach (ThicknessStretch stretch in thickness)
            if (height <= stretch.To) return stretch.At(height);
        return double.NaN;
    }

    private static double Ternary(CurveSpan span, ImmutableArray<ThicknessStretch> thickness, double z, double low, double high)
    {
        while (high - low > 1e-12)
        {
            double a = low + ((high - low) / 3), b = high - ((high - low) / 3);
            double atA = Reach(span, thickness, z, a), atB = Reach(span, thickness, z, b);
            if (double.IsPositiveInfinity(atA) && double.IsPositiveInfinity(atB)) return atA;
            if (atA < atB) high = b;
            else low = a;
        }

        return Reach(span, thickness, z, (low + high) / 2);
    }
}
