using System.Globalization;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;

namespace Ringwright.Web.Viewing;

/// <summary>One piece of wood that was pointed at, and where it comes from.</summary>
/// <param name="Ring">Its ring.</param>
/// <param name="Place">Its place in the ring's layout.</param>
public sealed record PickedSegment(RingPlan Ring, int Place)
{
    // What is set at the saw for it, and what comes off; those of them that its ring has are told.
    private static readonly string[] Telling = ["board-width", "board-thickness", "sawn-rim-edge", "sawn-tip", "mitre", "tilt", "stop", "strip-width"];

    /// <summary>The piece as it lies in its ring.</summary>
    public LaidSegment Laid => Ring.Layout[Place];

    /// <summary>Which of the ring's batches it is sawn with; null for what is no wedge.</summary>
    public int? Batch => Ring.Batches.Index().Where(b => b.Item.Places.Contains(Place)).Select(b => (int?)b.Index).FirstOrDefault();

    /// <summary>Ring, place and wood, in one line.</summary>
    public string Title => Ring.Layout.Length == 1
        ? $"{Ring.Ring.Name}: {Laid.Wood}, in one piece"
        : string.Create(CultureInfo.InvariantCulture, $"{Ring.Ring.Name}, {Kind} {Place + 1} of {Ring.Layout.Length}: {Laid.Wood}");

    /// <summary>Which board it is sawn from, and as which piece of it.</summary>
    public string FromBoard => Ring.Ring switch
    {
        SolidLayer => $"Board of {Laid.Wood} for this ring.",
        _ when Ring.Board is { } board => string.Create(CultureInfo.InvariantCulture, $"Sawn with the rings of {board.Name}: board {Laid.Board + 1} of {Laid.Wood}, piece {Laid.Cut + 1} from the end it is started at."),
        _ => string.Create(CultureInfo.InvariantCulture, $"Board {Laid.Board + 1} of {Laid.Wood} for this ring, {Kind} {Laid.Cut + 1} from the end it is started at."),
    };

    /// <summary>Its sizes and settings, each with its reason.</summary>
    public ImmutableArray<Figure> Figures
    {
        get
        {
            RingPlan own = Batch is int batch ? Ring.Alone(batch) : Ring;
            return [.. Telling.Select(own.Find).OfType<Figure>()];
        }
    }

    private string Kind => Ring switch
    {
        { Stave: not null } => "stave",
        { Lamination: not null } => "strip",
        _ when Batch is null && Ring.Spacers.Any(s => s.Places.Contains(Place)) => "spacer",
        _ => "segment",
    };
}
