using System.Runtime.Intrinsics;

namespace Ringwright.Core.Fitting;

/// <summary>Draws cut errors for eight rings at a time: one number per ring and cut, radians.</summary>
internal struct CutErrorSource(CutError cut, ulong seed, ulong block)
{
    /// <summary>Cuts drawn at once; small enough to stay in the first-level cache, even as Box and Muller need.</summary>
    internal const int BatchLength = 64;

    private LaneRandom _random = new(seed, block);

    /// <summary>Fills a buffer of even length with independent cut errors.</summary>
    internal void Fill(Span<Vector512<double>> errors)
    {
        if (cut.MisSeating is { Probability: > 0 } bad)
            FillMixed(errors, bad);
        else
            LaneNormals.Fill(ref _random, errors, cut.Bias, cut.Sd);
    }

    /// <summary>Fills a buffer of even length with standard normals, for errors other than those of cuts.</summary>
    internal void FillStandard(Span<Vector512<double>> normals) => LaneNormals.Fill(ref _random, normals);

    private void FillMixed(Span<Vector512<double>> errors, MisSeating bad)
    {
        LaneNormals.Fill(ref _random, errors);

        // 53 uniform bits against p: the chance is met to 1e-16.
        Vector512<ulong> threshold = Vector512.Create((ulong)(bad.Probability * (1L << 53)));
        Vector512<double> bias = Vector512.Create(cut.Bias);
        Vector512<double> badBias = Vector512.Create(cut.Bias + bad.Shift);
        Vector512<double> sd = Vector512.Create(cut.Sd);
        Vector512<double> badSd = Vector512.Create(bad.Sd);
        foreach (ref Vector512<double> error in errors)
        {
            Vector512<double> isBad = Vector512.LessThan(_random.Next() >>> 11, threshold).AsDouble();
            error = Vector512.FusedMultiplyAdd(
                error,
                Vector512.ConditionalSelect(isBad, badSd, sd),
                Vector512.ConditionalSelect(isBad, badBias, bias));
        }
    }
}
