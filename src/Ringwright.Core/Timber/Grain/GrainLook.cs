namespace Ringwright.Core.Timber.Grain;

/// <summary>
/// How a wood's grain is drawn. All values are rough guesses from memory, good for pictures and for nothing else: a tree differs
/// from another of its kind by far more than these differ among kinds. Lengths in mm; strengths from 0, none, to 1, as strong as
/// any wood shows it.
/// </summary>
/// <param name="RingWidth">From one growth ring to the next.</param>
/// <param name="RingContrast">How much darker a ring ends than it starts.</param>
/// <param name="Pores">How the pores lie in the ring.</param>
/// <param name="PoreSize">Diameter of the largest pores; they are drawn a little larger than they are.</param>
/// <param name="PoreShare">How thick they stand.</param>
/// <param name="Fibre">Streaks along the fibres.</param>
/// <param name="RayHeight">Height of the rays along the grain.</param>
/// <param name="Rays">How clearly rays show.</param>
/// <param name="Curl">Waves of the fibres across the board.</param>
/// <param name="Ribbon">Bands of light and shade from fibres that lean by turns.</param>
/// <param name="Stripe">Dark stripes that follow the rings.</param>
public sealed record GrainLook(
    double RingWidth,
    double RingContrast,
    Pores Pores,
    double PoreSize,
    double PoreShare,
    double Fibre,
    double RayHeight,
    double Rays,
    double Curl = 0,
    double Ribbon = 0,
    double Stripe = 0)
{
    /// <summary>The look of <paramref name="species"/>; a middling one for woods that nothing is known of.</summary>
    public static GrainLook Of(Species species)
    {
        ArgumentNullException.ThrowIfNull(species);
        return GrainLooks.ByName.GetValueOrDefault(species.Name) ?? GrainLooks.Middling;
    }
}
