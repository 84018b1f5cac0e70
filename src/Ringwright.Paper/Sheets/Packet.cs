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
    // A block that would fit a sheet of its own is divided only where it is long and this share of the sheet is free.
    private const double LeastShare = 0.15;

    private readonly List<Sheet> _sheets = [];

    /// <summary>Whether the packet is printed on both sides: the margin for filing then changes sides from page to page.</summary>
    public bool Duplex { get; init; }

    /// <summary>The print correction of true-scale content.</summary>
    internal PrintCorrection Correction => correction ?? PrintCorrection.None;

    /// <summary>The sheets so far.</summary>
    public IReadOnlyList<Sheet> Sheets => _sheets;

    /// <summary>The area of an empty sheet, mm.</summary>
    public Box FreeArea => Empty("", "–", 0).Remaining;

    /// <summary>Begins a sheet.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="scale">Scale of its main picture; a dash for none.</param>
    public Sheet Add(string name, string scale = "–")
    {
        Sheet sheet = Empty(name, scale, _sheets.Count);
        _sheets.Add(sheet);
        return sheet;
    }

    /// <summary>Makes the next sheet a front page, so that what begins there can be taken out by itself; its back stays free for notes.</summary>
    public void StartOnFront()
    {
        if (Duplex && _sheets.Count % 2 == 1) Add("Notes");
    }

    /// <summary>Lets blocks flow over as many sheets of the same name as they need, from a new one on.</summary>
    /// <param name="name">Name of the sheets.</param>
    /// <param name="scale">Scale of their pictures.</param>
    /// <param name="blocks">The blocks; a table or list that is longer than a sheet goes on on the next.</param>
    /// <exception cref="LayoutException">A block does not fit on an empty sheet and cannot be divided.</exception>
    public void Flow(string name, string scale, IEnumerable<IBlock> blocks) => Flow(() => Add(name, scale), blocks);

    /// <summary>
    /// Lets blocks flow that cannot be finished yet, such as contents whose page numbers are not known. What is given back fills the
    /// same sheets anew with the finished blocks, which must be no larger.
    /// </summary>
    /// <param name="name">Name of the sheets.</param>
    /// <param name="scale">Scale of their pictures.</param>
    /// <param name="blocks">The blocks with what stands for the unknown.</param>
    /// <exception cref="LayoutException">As for <see cref="Flow(string, string, IEnumerable{IBlock})"/>.</exception>
    public Action<IEnumerable<IBlock>> Keep(string name, string scale, IEnumerable<IBlock> blocks)
    {
        int first = _sheets.Count;
        Flow(name, scale, blocks);
        int end = _sheets.Count;
        return finished =>
        {
            int next = first;
            Flow(() => next < end ? _sheets[next] = Empty(name, scale, next++) : throw new ArgumentException("The finished blocks need more sheets than were kept.", nameof(finished)), finished);
        };
    }

    private static void Flow(Func<Sheet> next, IEnumerable<IBlock> blocks)
    {
        ArgumentNullException.ThrowIfNull(blocks);
        Sheet sheet = next();
        Box empty = sheet.Remaining;
        foreach (IBlock block in blocks)
        {
            IBlock left = block;
            while (!sheet.Fits(left))
            {
                if (Part(left, sheet, empty) is var (head, rest))
                {
                    sheet.Add(head);
                    left = rest;
                }
                else if (sheet.IsEmpty)
                {
                    break; // fits nowhere: adding it says so
                }

                sheet = next();
            }

            sheet.Add(left);
        }
    }

    private static (IBlock Head, IBlock Tail)? Part(IBlock block, Sheet sheet, Box empty)
    {
        double height = block.HeightAt(empty.Width);
        bool roomy = sheet.IsEmpty || sheet.Remaining.Height >= LeastShare * empty.Height;
        bool tall = height > empty.Height / 4;
        return roomy && tall ? (block as IDivisible)?.Divide(empty.Width, sheet.Remaining.Height) : null;
    }

    /// <summary>The finished pages with frame, title block and numbers.</summary>
    /// <exception cref="LayoutException">A name is too long for the title block.</exception>
    public IReadOnlyList<Drawing> Pages() => [.. _sheets.Select(Page)];

    private Sheet Empty(string name, string scale, int index)
    {
        Margins front = margins ?? new();
        return new(name, scale, paper, Duplex && index % 2 == 1 ? front.Mirrored() : front, correction ?? PrintCorrection.None);
    }

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
