namespace Ringwright.Core.Sawing;

/// <summary>Where the board's wood went, mm³. All but the last add up to the board.</summary>
/// <param name="Wedges">The wedges as they fell.</param>
/// <param name="Kerf">Sawdust.</param>
/// <param name="Squaring">The piece sawn off to square the end.</param>
/// <param name="FirstOffcut">The first angled piece.</param>
/// <param name="Remainder">What is left of the board.</param>
/// <param name="SandingDust">What truing and sanding took off the wedges afterwards.</param>
public readonly record struct SawVolumes(
    double Wedges, double Kerf, double Squaring, double FirstOffcut, double Remainder, double SandingDust);
