namespace Ringwright.Core.Fitting;

/// <summary>
/// What is believed before anything is read: each cause normal about none, with these standard deviations. They are
/// wide (common practice, no source); a reading by a feeler gauge outweighs them.
/// </summary>
/// <param name="WedgeAngleSd">Common error of the wedge angle, radians (0.25 degrees).</param>
/// <param name="TaperSd">Top less bottom opening of a joint from leaning faces, mm.</param>
/// <param name="ShapeSd">Height of a belly (or depth of a hollow) between two faces, mm.</param>
/// <param name="ScatterSd">Scatter of single wedge angles about the common one, radians (0.05 degrees).</param>
/// <param name="UnevenSd">What one joint opens by itself, mm: a chip, dust, a wedge badly seated in the sled.</param>
public sealed record DiagnosisPriors(
    double WedgeAngleSd = 0.25 * Math.PI / 180,
    double TaperSd = 0.1,
    double ShapeSd = 0.05,
    double ScatterSd = 0.05 * Math.PI / 180,
    double UnevenSd = 0.05);
