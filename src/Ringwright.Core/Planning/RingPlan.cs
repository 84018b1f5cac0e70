using System.Collections.Immutable;
using Ringwright.Core.Pieces;
using Ringwright.Core.Profiles;
using Ringwright.Core.Rings;
using Ringwright.Core.Sawing;
using Ringwright.Core.Turning;

namespace Ringwright.Core.Planning;

/// <summary>Everything the shop needs for one ring.</summary>
/// <param name="Ring">The ring as wanted, its sizes known.</param>
/// <param name="Batches">Its wedges, those that are sawn alike together; empty for a layer that is not segmented.</param>
/// <param name="Woods">What is needed of each wood, in the order they first appear around the ring.</param>
/// <param name="Layout">Its pieces of wood counter-clockwise, and where each lay in its board.</param>
/// <param name="Figures">All numbers, each with its reason.</param>
/// <param name="Steps">What to do at the saw, in order.</param>
/// <param name="Findings">What the maker should know, weightiest first.</param>
public sealed record RingPlan(
    Ring Ring,
    ImmutableArray<WedgeBatch> Batches,
    ImmutableArray<WoodNeed> Woods,
    ImmutableArray<LaidSegment> Layout,
    ImmutableArray<Figure> Figures,
    ImmutableArray<Sentence> Steps,
    ImmutableArray<Finding> Findings)
{
    /// <summary>The strips of even thickness between its wedges; empty for most rings.</summary>
    public ImmutableArray<SpacerBatch> Spacers { get; init; } = [];

    /// <summary>The flat board it is sawn out of with others; null when it is not.</summary>
    public BoardGroupPlan? Board { get; init; }

    /// <summary>The stave, when it is a ring of staves; its first batch then shows it from above, and how it lies across the board.</summary>
    public StaveGeometry? Stave { get; init; }

    /// <summary>How the board is laminated that a motif band is sawn from; null for plain wood.</summary>
    public Lamination? Lamination { get; init; }

    /// <summary>The first batch's wedges as glued, after sanding.</summary>
    /// <exception cref="BadInputException">The ring has no wedges of its own.</exception>
    public WedgeGeometry Glued => First.Glued;

    /// <summary>The first batch's wedges as sawn, and how they lie in the strip.</summary>
    /// <exception cref="BadInputException">The ring has no wedges of its own.</exception>
    public StripLayout Strip => First.Strip;

    /// <summary>Wood of the glued blank before turning, mm³.</summary>
    public double BlankVolume => BlankVolumes.Of(this);

    /// <summary>One sentence about this ring alone: will it close, and if not, what to mend first.</summary>
    public Sentence Verdict => Verdicts.Of([this]);

    /// <summary>
    /// The plan as it is at the saw while one batch is sawn: that batch alone, its woods, and its figures under their plain names.
    /// The ring and its layout stay whole.
    /// </summary>
    public RingPlan Alone(int batch) => Batches.Length <= 1 ? this : this with
    {
        Batches = [Batches[batch]],
        Woods = [.. Woods.Where(w => w.Batch == batch)],
        Figures = [.. Figures.Where(f => f.Batch is null || f.Batch == batch).Select(f => f.Batch > 0 ? f with { Name = f.Name[..^Figure.SuffixOf(batch).Length] } : f)],
    };

    /// <summary>The figure called <paramref name="name"/>.</summary>
    /// <exception cref="KeyNotFoundException">There is none.</exception>
    public Figure this[string name] => Find(name) ?? throw new KeyNotFoundException($"Ring {Ring.Name} has no figure {name}.");

    /// <summary>The figure called <paramref name="name"/>, or null.</summary>
    public Figure? Find(string name) => Figures.FirstOrDefault(f => string.Equals(f.Name, name, StringComparison.OrdinalIgnoreCase));

    private WedgeBatch First => Batches.IsEmpty ? throw NoWedges() : Batches[0];

    /// <summary>Why it has no wedges of its own.</summary>
    internal BadInputException NoWedges() => Board is not null
        ? new($"ring {Ring.Name}", $"it is sawn out of {Board.Name}, whose wedges are planned with ring {Board.Carrier.Name}", "choose that ring")
        : new($"ring {Ring.Name}", "it is one piece of wood, so there are no wedges to saw or to fit", "a ring of segments has some");
}

/// <summary>What one ring needs of one wood. Lengths in mm.</summary>
/// <param name="Wood">The wood's name.</param>
/// <param name="Needed">Wedges in the ring.</param>
/// <param name="ToSaw">Wedges to saw, spares included.</param>
/// <param name="Boards">Boards (strips) needed.</param>
/// <param name="Length">Strip length needed in all.</param>
/// <param name="LeftOver">What is left of the last board beyond the holding length.</param>
public sealed record WoodNeed(string Wood, int Needed, int ToSaw, int Boards, double Length, double LeftOver)
{
    /// <summary>Which of the ring's batches it is for.</summary>
    public int Batch { get; init; }

    /// <summary>Spare wedges.</summary>
    public int Spares => ToSaw - Needed;
}

/// <summary>A piece planned for a shop: same inputs, same plan, to the bit.</summary>
/// <param name="Piece">What is wanted.</param>
/// <param name="Shop">What it is made with.</param>
/// <param name="Rings">The plan of each ring, from the bottom up.</param>
/// <param name="Form">The body that its shape makes; null when each ring gives its own sizes.</param>
/// <param name="Figures">Numbers of the whole piece, each with its reason.</param>
/// <param name="Verdict">One sentence: will it work, and if not, what to mend first.</param>
public sealed record Plan(Piece Piece, Shop Shop, ImmutableArray<RingPlan> Rings, TurnedForm? Form, ImmutableArray<Figure> Figures, Sentence Verdict)
{
    /// <summary>The turned piece; each wall is cut into straight pieces that leave it by at most <paramref name="chord"/> mm.</summary>
    /// <exception cref="BadInputException">The rings do not fill the shape.</exception>
    public TurnedPiece Turned(double chord = 0.02) => Stacked(chord).Piece;

    /// <summary>The glued stack with what is turned out of each ring; walls as in <see cref="Turned"/>.</summary>
    /// <exception cref="BadInputException">The rings do not fill the shape.</exception>
    public StackedPiece Stacked(double chord = 0.02) => StackedPiece.Of(this, Form is null ? null : (from, to) => Form.SectionWithin(from, to, chord));

    /// <summary>What was found about its work at the lathe when it was planned.</summary>
    internal LatheFit Lathe { get; init; } = LatheFit.None;

    /// <summary>Weight, balance and surfaces of the turned piece as it was planned; null when it cannot be turned.</summary>
    internal MassProperties? Weighed { get; init; }

    /// <summary>Everything the maker should know, weightiest first.</summary>
    public IEnumerable<Finding> Findings => Rings.SelectMany(r => r.Findings).OrderByDescending(f => f.Weight);
}
