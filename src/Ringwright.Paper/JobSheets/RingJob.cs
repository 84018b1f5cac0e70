using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Ringwright.Paper.Pictures;

namespace Ringwright.Paper.JobSheets;

/// <summary>One ring's part of a packet: what its sheets are drawn from.</summary>
/// <param name="Plan">The whole plan.</param>
/// <param name="Ring">The ring's plan.</param>
/// <param name="Style">How lengths are printed.</param>
/// <param name="Width">Width of the free area of a sheet, mm.</param>
/// <param name="Height">Its height, mm.</param>
internal sealed record RingJob(Plan Plan, RingPlan Ring, MeasureStyle Style, double Width, double Height)
{
    public WoodKey Key { get; } = WoodKey.Of(Ring.Ring);

    public Shop Shop => Plan.Shop;

    public string Length(double millimetres) => Style.Length(millimetres);

    public string Print(string figure) => Style.Print(Ring[figure].Value, Ring[figure].Quantity);

    /// <summary>Name of one of the ring's sheets, for the title block.</summary>
    public string SheetName(string what)
    {
        string suffix = $": {what}";
        return Shortened.To(Ring.Ring.Name, name => RingWords.FitsTitle(name + suffix)) + suffix;
    }
}
