using Ringwright.Core.Fitting;
using Ringwright.Paper.Drawings;

namespace Ringwright.Paper.Pictures;

/// <summary>How a reason that stops a size is shown: letter and hatch each tell it from the others by themselves, in black and white.</summary>
/// <param name="Name">In a word or two.</param>
/// <param name="Hatch">Its pattern; plain is kept for what can be made.</param>
public sealed record ReachMark(string Name, Hatch Hatch)
{
    /// <summary>The first letter of its name.</summary>
    public string Letter => Name[..1];

    /// <summary>The mark of a reason.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Nothing stops the size.</exception>
    public static ReachMark Of(ReachStop stop) => stop switch
    {
        ReachStop.SandedAway => new("Sanded away", Named("crossed")),
        ReachStop.BoardTooShort => new("Board too short", Named("upright")),
        ReachStop.TooSmallToHold => new("Tiny", Named("slanted")),
        ReachStop.MostlySawdust => new("Dust, most of it", Named("dotted")),
        ReachStop.ProbablyGapes => new("Gapes", Named("dashed")),
        _ => throw new ArgumentOutOfRangeException(nameof(stop)),
    };

    private static Hatch Named(string name) => Hatch.All.Single(h => h.Name == name);
}
