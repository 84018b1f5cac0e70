using Ringwright.Paper.Blocks;
using Ringwright.Paper.Drawings;
using Ringwright.Paper.Lettering;

namespace Ringwright.Paper.JobSheets;

/// <summary>Lines to write on with a pencil, each with what goes there.</summary>
/// <param name="columns">How many beside each other.</param>
/// <param name="labels">What goes where, row by row.</param>
internal sealed class BlankFields(int columns, params IReadOnlyList<string> labels) : IBlock
{
    private const double Gutter = 5;
    private const double Writing = 7.5; // room for handwriting above a line, mm
    private const double LabelGap = 1.4;
    private const double RowGap = 1.5;

    public double HeightAt(double width)
    {
        double each = Each(width);
        return labels.Chunk(columns).Sum(row => HeightOf(row, each) + RowGap) - RowGap;
    }

    public void Draw(Drawing drawing, Box box)
    {
        double each = Each(box.Width), y = box.Y;
        foreach (string[] row in labels.Chunk(columns))
        {
            for (int i = 0; i < row.Length; i++)
            {
                double x = box.X + (i * (each + Gutter)), line = y + Writing;
                drawing.Line(new(x, line), new(x + each, line), Pens.Fine)
                    .Text(Label(row[i], each), new(x, line + LabelGap), Anchor.TopLeft);
            }

            y += HeightOf(row, each) + RowGap;
        }
    }

    private static IReadOnlyList<TextLine> Label(string text, double width) => Wrapping.Lines(text, TypeScale.Caption, width);

    private static double HeightOf(string[] row, double each) =>
        Writing + LabelGap + row.Max(label => Wrapping.HeightOf(Label(label, each)));

    private double Each(double width) => (width - (Gutter * (columns - 1))) / columns;
}
