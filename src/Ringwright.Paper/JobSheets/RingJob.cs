using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Ringwright.Paper.Blocks;
using Ringwright.Paper.Lettering;
using Ringwright.Paper.Pictures;
using Ringwright.Paper.Sheets;

namespace Ringwright.Paper.JobSheets;

/// <summary>One ring's part of a packet: what its sheets are drawn from.</summary>
/// <param name="Plan">The whole plan.</param>
/// <param name="Ring">The ring's plan.</param>
/// <param name="Style">How lengths are printed.</param>
/// <param name="Width">Width of the free area of a sheet, mm.</param>
/// <param name="Height">Its height, mm.</param>
internal sealed record RingJob(Plan Plan, RingPlan Ring, MeasureStyle Style, double Width, double Height)
{
    /// <summary>Running text with true fractions.</summary>
    public static readonly TextStyle Words = TypeScale.Body with { Fractions = true };

    /// <summary>Number of the batch these sheets are about, from 1; null when the ring has only one, or for the whole ring.</summary>
    public int? Wedge { get; init; }

    /// <summary>The whole ring; <see cref="Ring"/> may be one batch of it.</summary>
    public RingPlan Whole { get; } = Ring;

    /// <summary>A job for each batch of wedges.</summary>
    public IEnumerable<RingJob> Batches => Ring.Batches.Length == 1
        ? [this]
        : Enumerable.Range(0, Ring.Batches.Length).Select(b => this with { Ring = Ring.Alone(b), Wedge = b + 1 });

    public WoodKey Key { get; } = WoodKey.Of(Ring.Ring);

    public Shop Shop => Plan.Shop;

    public string Length(double millimetres) => Style.Length(millimetres);

    public string Fine(double millimetres) => Style.Print(millimetres, Quantity.FineLength);

    public string Print(string figure) => Style.Print(Ring[figure].Value, Ring[figure].Quantity);

    /// <summary>Height that is left for a picture on a sheet where these blocks stand above and below its block, mm.</summary>
    public double Beside(params IReadOnlyList<IBlock> others) => Height - others.Sum(block => block.HeightAt(Width) + Sheet.Gap);

    /// <summary>Name of one of the ring's sheets, for the title block.</summary>
    public string SheetName(string what)
    {
        string suffix = Wedge is int wedge ? $": {what}, wedge {wedge}" : $": {what}";
        return Shortened.To(Ring.Ring.Name, name => RingWords.FitsTitle(name + suffix)) + suffix;
    }
}
