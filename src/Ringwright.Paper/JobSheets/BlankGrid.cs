using Ringwright.Paper.Blocks;
using Ringwright.Paper.Drawings;
using Ringwright.Paper.Lettering;

namespace Ringwright.Paper.JobSheets;

/// <summary>A column of a grid to write into.</summary>
/// <param name="Header">What goes there.</param>
/// <param name="Share">Its share of the width.</param>
internal sealed record BlankColumn(string Header, double Share = 1);

/// <summary>A ruled grid to write into with a pencil, its first cells filled in. A long one goes on on the next sheet.</summary>
/// <param name="columns">Its columns.</param>
/// <param name="rows">What is printed in the first cells of each row; the others stay blank.</param>
internal sealed class BlankGrid(IReadOnlyList<BlankColumn> columns, IReadOnlyList<IReadOnlyList<string>> rows) : IDivisible
{
    private const double Row = 9.5; // room for handwriting, mm
    private const double Padding = 1.2;

    public double HeightAt(double width) => HeaderHeight(width) + (Row * rows.Count);

    public void Draw(Drawing drawing, Box box)
    {
        double top = box.Y + HeaderHeight(box.Width), bottom = top + (Row * rows.Count), x = box.X;
        for (int c = 0; c < columns.Count; c++)
        {
            double wide = WidthOf(c, box.Width);
            IReadOnlyList<TextLine> header = Header(c, box.Width);
            drawing.Text(header, new(x + Padding, top - Padding - Wrapping.HeightOf(header)), Anchor.TopLeft);
            for (int r = 0; r < rows.Count; r++)
            {
                if (c >= rows[r].Count) continue;
                TextLine text = Shortened.OneLine(rows[r][c], TypeScale.Number, wide - (2 * Padding));
                drawing.Text(text, new(x + Padding, top + (Row * (r + 0.5))), Anchor.MiddleLeft);
            }

            if (c > 0) drawing.Line(new(x, box.Y), new(x, bottom), Pens.Fine);
            x += wide;
        }

        drawing.Line(new(box.X, top), new(box.Right, top), Pens.Medium);
        for (int r = 1; r <= rows.Count; r++) drawing.Line(new(box.X, top + (Row * r)), new(box.Right, top + (Row * r)), Pens.Fine);
    }

    public (IBlock Head, IBlock Tail)? Divide(double width, double height)
    {
        int fits = Math.Min(rows.Count - 1, (int)((height - HeaderHeight(width)) / Row));
        return fits < 1 ? null : (new BlankGrid(columns, [.. rows.Take(fits)]), new BlankGrid(columns, [.. rows.Skip(fits)]));
    }

    private double WidthOf(int column, double width) => width * columns[column].Share / columns.Sum(c => c.Share);

    private IReadOnlyList<TextLine> Header(int column, double width) => Wrapping.Lines(columns[column].Header, TypeScale.Caption, WidthOf(column, width) - (2 * Padding));

    private double HeaderHeight(double width) => Enumerable.Range(0, columns.Count).Max(c => Wrapping.HeightOf(Header(c, width))) + (2 * Padding);
}
