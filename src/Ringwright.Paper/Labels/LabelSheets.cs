using Ringwright.Core;
using Ringwright.Core.Geometry;
using Ringwright.Paper.Drawings;
using Ringwright.Paper.JobSheets;
using Ringwright.Paper.Lettering;
using Ringwright.Paper.Sheets;

namespace Ringwright.Paper.Labels;

/// <summary>Sheets of stickers: no frame, no title block, each sticker at its exact place.</summary>
public static class LabelSheets
{
    private const double Padding = 2;   // inside a sticker, mm
    private const double CodeShare = 0.42; // of a sticker's width, at most, for its code
    private const double MostCode = 32; // mm
    private const double LineGap = 1.3; // mm

    /// <summary>The pages.</summary>
    /// <param name="labels">The stickers, in order.</param>
    /// <param name="grid">How they lie.</param>
    /// <param name="paper">The paper.</param>
    /// <param name="skip">Places at the start of the first sheet that are used already.</param>
    /// <param name="outlines">Draw the stickers' edges, for paper that is cut apart.</param>
    /// <param name="correction">Correction for one printer.</param>
    /// <exception cref="BadInputException">The grid does not fit the paper, or all places are used.</exception>
    public static IReadOnlyList<Drawing> Pages(IEnumerable<Label> labels, LabelGrid grid, PaperSize paper, int skip = 0, bool outlines = false, PrintCorrection? correction = null)
    {
        ArgumentNullException.ThrowIfNull(labels);
        ArgumentNullException.ThrowIfNull(grid);
        grid.On(paper);
        if (skip < 0 || skip >= grid.Count) throw new BadInputException("label sheet", $"{skip} places cannot be skipped", $"0 to {grid.Count - 1} can");
        return [.. Enumerable.Repeat<Label?>(null, skip).Concat(labels).Chunk(grid.Count).Select(some => Page(some, grid, paper, outlines, correction ?? PrintCorrection.None))];
    }

    private static Drawing Page(Label?[] labels, LabelGrid grid, PaperSize paper, bool outlines, PrintCorrection correction)
    {
        Drawing sheet = new(paper.Width, paper.Height);
        for (int i = 0; i < labels.Length; i++)
        {
            if (labels[i] is not Label label) continue;
            Box place = grid.Place(paper, i);
            if (outlines) sheet.Stroke(Outline.Rectangle(place), Pens.Fine);
            sheet.Place(Sticker(label, place.Width, place.Height), place.TopLeft);
        }

        return new Drawing(paper.Width, paper.Height).Place(sheet, default, correction.Across, correction.Down);
    }

    private static Drawing Sticker(Label label, double width, double height)
    {
        Drawing sticker = new(width, height);
        // The code's own border is free, so it may reach into the padding.
        double side = Math.Min(MostCode, Math.Min(height - 1, CodeShare * width));
        sticker.Place(QrPicture.Draw(label.Code, side), new(0.5, (height - side) / 2));
        Box words = new(side + 1, Padding, width - side - 1 - Padding, height - (2 * Padding));
        // All lines below the title are of one size: the large one where all of them have room for it.
        TextStyle body = TypeScale.Down(TypeScale.Body, TypeScale.Note.Height).FirstOrDefault(style => label.Lines.All(line => Typesetter.WidthOf(line, style) <= words.Width), TypeScale.Note);
        double y = words.Y;
        foreach ((string text, TextStyle style) in label.Lines.Select(line => (line, body)).Prepend((label.Title, TypeScale.Heading)))
        {
            TextLine line = Shortened.OneLine(text, style, words.Width);
            if (y + line.Style.Height + line.Style.Descent > words.Bottom) break;
            sticker.Text(line, new Vector2D(words.X, y), Anchor.TopLeft);
            y += line.Style.Height + line.Style.Descent + LineGap;
        }

        return sticker;
    }
}
