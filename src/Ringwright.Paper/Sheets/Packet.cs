using Ringwright.Paper.Blocks;
using Ringwright.Paper.Drawings;

namespace Ringwright.Paper.Sheets;

/// <summary>
/// Sheets that belong together and are numbered through. Add sheets, fill them, take the <see cref="Pages"/>.
/// </summary>
/// <param name="title">What every sheet says.</param>
/// <param name="paper">The paper.</param>
/// <param name="correction">Print correction of true-scale content; none when absent.</param>
/// <param name="margins">Free edges; the usual when absent.</param>
public sealed class Packet(PacketTitle title, PaperSize paper, PrintCorrection? correction = null, Margins? margins = null)
{
    private readonly List<Sheet> _sheets = [];

    /// <summary>The sheets so far.</summary>
    public IReadOnlyList<Sheet> Sheets => _sheets;

    /// <summary>The area of an empty sheet, mm.</summary>
    public Box FreeArea => Empty("", "–").Remaining;

    /// <summary>Begins a sheet.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="scale">Scale of its main picture; a dash for none.</param>
    public Sheet Add(string name, string scale = "–")
    {
        Sheet sheet = Empty(name, scale);
        _sheets.Add(sheet);
        return sheet;
    }

    /// <summary>Lets blocks flow over as many sheets of the same name as they need, from a new one on.</summary>
    /// <param name="name">Name of the sheets.</param>
    /// <param name="scale">Scale of their pictures.</param>
    /// <param name="blocks">The blocks; none is divided.</param>
    /// <exception cref="LayoutException">A block does not fit on an empty sheet.</exception>
    public void Flow(string name, string scale, IEnumerable<IBlock> blocks)
    {
        ArgumentNullException.ThrowIfNull(blocks);
        Sheet sheet = Add(name, scale);
        foreach (IBlock block in blocks)
        {
            if (!sheet.IsEmpty && !sheet.Fits(block))
                sheet = Add(name, scale);
            sheet.Add(block);
        }
    }

    /// <summary>The finished pages with frame, title block and numbers.</summary>
    /// <exception cref="LayoutException">A name is too long for the title block.</exception>
    public IReadOnlyList<Drawing> Pages() => [.. _sheets.Select(Page)];

    private Sheet Empty(string name, string scale) => new(name, scale, paper, margins ?? new(), correction ?? PrintCorrection.None);

    private Drawing Page(Sheet sheet, int index)
    {
        Drawing page = new(paper.Width, paper.Height);
        Box frame = sheet.Frame;
        page.Place(sheet.Drawing, default);
        TitleBlock.Draw(
            page, frame.Below(frame.Height - TitleBlock.Height), title, new(sheet.Name, sheet.Scale, index + 1, _sheets.Count));
        return page.Stroke(Outline.Rectangle(frame), Pens.Heavy);
    }
}
