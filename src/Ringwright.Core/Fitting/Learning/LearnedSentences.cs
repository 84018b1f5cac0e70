using System.Globalization;

namespace Ringwright.Core.Fitting;

/// <summary>Says in one sentence each what was learned, from how many pieces, and how much the starting belief still weighs.</summary>
public static class LearnedSentences
{
    private const double Level = 0.95;
    private const double Degree = Math.PI / 180;

    /// <summary>Bias and scatter of a cut, in degrees.</summary>
    public static string OfAngle(AngleBelief belief)
    {
        ArgumentNullException.ThrowIfNull(belief);
        CredibleInterval bias = belief.BiasInterval(Level);
        CredibleInterval sd = belief.SdInterval(Level);
        return Text($"Angle of a cut: bias {Signed(belief.Bias)} ({Signed(bias.Low)} to {Signed(bias.High)}), standard deviation {Plain(belief.Sd)} ({Plain(sd.Low)} to {Plain(sd.High)}); {Source(belief.Evidence.Wedges, "wedge", AngleWeights(belief))}.");
    }

    /// <summary>Loss of wedges, in per cent.</summary>
    public static string OfLoss(LossBelief belief)
    {
        ArgumentNullException.ThrowIfNull(belief);
        CredibleInterval loss = belief.Interval(Level);
        return Text($"Loss: {belief.NextLost * 100:0.0} % of wedges ({loss.Low * 100:0.0} to {loss.High * 100:0.0} %){(belief.Sawn == 0 ? "" : Text($", {belief.Lost} of {belief.Sawn} lost"))}; {Source(belief.Sawn, "wedge", Weight(belief.PriorWeight))}.");
    }

    /// <summary>Minutes per cut or sanded face.</summary>
    /// <param name="belief">The pace.</param>
    /// <param name="piece">What is counted, in the singular: "cut", "sanded face".</param>
    public static string OfPace(PaceBelief belief, string piece)
    {
        ArgumentNullException.ThrowIfNull(belief);
        CredibleInterval minutes = belief.Interval(Level);
        return Text($"Time per {piece}: {belief.MinutesPerPiece:0.00} min ({minutes.Low:0.00} to {minutes.High:0.00}); {Source(belief.Timed, piece, Weight(belief.PriorWeight))}.");
    }

    /// <summary>All four sentences.</summary>
    public static IReadOnlyList<string> Of(HandBelief hands)
    {
        ArgumentNullException.ThrowIfNull(hands);
        return [OfAngle(hands.Angle), OfLoss(hands.Loss), OfPace(hands.Cutting, "cut"), OfPace(hands.Sanding, "sanded face")];
    }

    private static string Source(int pieces, string piece, string weight) => pieces == 0
        ? "nothing recorded yet, this is the starting belief"
        : Text($"learned from {pieces} {piece}{(pieces == 1 ? "" : "s")}, the starting belief still weighs {weight}");

    private static string Weight(double weight) => Text($"{weight * 100:0} %");

    private static string AngleWeights(AngleBelief belief) =>
        $"{Weight(belief.PriorBiasWeight)} in the bias and {Weight(belief.PriorSdWeight)} in the standard deviation";

    private static string Signed(double radians) => Text($"{radians / Degree:+0.000;-0.000;0.000}°");

    private static string Plain(double radians) => Text($"{radians / Degree:0.000}°");

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
