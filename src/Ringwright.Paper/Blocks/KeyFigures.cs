using Ringwright.Paper.Drawings;
using Ringwright.Paper.Lettering;

namespace Ringwright.Paper.Blocks;

/// <summary>A number to read from a metre away.</summary>
/// <param name="Caption">What it is, in small letters above it.</param>
/// <param name="Value">The number as it is read, a degree sign with it; fractions are set as fractions.</param>
/// <param name="Unit">Its unit, smaller behind it; may be empty.</param>
/// <param name="Note">A few words in small letters below it; none when absent.</param>
public sealed record KeyFigure(string Caption, string Value, string Unit = "", string? Note = null);

/// <summary>
/// Key figures in columns, all of one size: the largest of the scale at which every one fits, never below what is read at a
/// metre. Where that is too narrow, fewer stand beside each other.
/// </summary>
/// <param name="columns">How many beside each other at the most.</param>
/// <param name="figures">The figures, row by row.</param>
public sealed class KeyFigures(int columns, params IReadOnlyList<KeyFigure> figures) : IBlock
{
    private const double Gutter = 6;
    private const double CaptionGap = 2.2;
    private const double RowGap = 5;

    /// <inheritdoc/>
    public double HeightAt(double width)
    {
        Setting setting = Fit(width);
        double[] rows = [.. Rows(setting).Select(row => HeightOf(row, setting))];
        return rows.Sum() + (RowGap * Math.Max(0, rows.Length - 1));
    }

    /// <inheritdoc/>
    public void Draw(Drawing drawing, Box box)
    {
        ArgumentNullException.ThrowIfNull(drawing);
        Setting setting = Fit(box.Width);
        double y = box.Y;
        foreach (KeyFigure[] row in Rows(setting))
        {
            double captions = CaptionsOf(row, setting);
            for (int i = 0; i < row.Length; i++)
                DrawFigure(drawing, row[i], new(box.X + (i * (setting.Width + Gutter)), y), captions, setting);
            y += HeightOf(row, setting) + RowGap;
        }
    }

    private static void DrawFigure(Drawing drawing, KeyFigure figure, Core.Geometry.Vector2D at, double captions, Setting setting)
    {
        IReadOnlyList<TextLine> caption = Small(figure.Caption, setting);
        double x = at.X, baseline = at.Y + captions + CaptionGap + setting.Value.Height;
        drawing.Text(caption, new(x, at.Y + captions - Wrapping.HeightOf(caption)), Anchor.TopLeft);
        TextLine value = Typesetter.Set(figure.Value, setting.Value);
        drawing.Text(value, new(x, baseline));
        drawing.Text(figure.Unit, new(x + value.Width + setting.UnitGap, baseline), setting.Unit);
        if (figure.Note is not null)
            drawing.Text(Small(figure.Note, setting), new(x, baseline + setting.Value.Descent + CaptionGap), Anchor.TopLeft);
    }

    private static double CaptionsOf(KeyFigure[] row, Setting setting) =>
        row.Max(figure => Wrapping.HeightOf(Small(figure.Caption, setting)));

    private static double HeightOf(KeyFigure[] row, Setting setting)
    {
        double note = row.Max(f => f.Note is null ? 0 : CaptionGap + Wrapping.HeightOf(Small(f.Note, setting)));
        return CaptionsOf(row, setting) + CaptionGap + setting.Value.Height + setting.Value.Descent + note;
    }

    private static IReadOnlyList<TextLine> Small(string text, Setting setting) =>
        Wrapping.Lines(text, TypeScale.Caption, setting.Width);

    private IEnumerable<KeyFigure[]> Rows(Setting setting) => figures.Chunk(setting.Columns);

    private Setting Fit(double width)
    {
        for (int count = Math.Min(columns, figures.Count); count >= 1; count--)
        {
            double each = (width - (Gutter * (count - 1))) / count;
            foreach (TextStyle style in TypeScale.Down(TypeScale.Figure, TypeScale.ReadFromAMetre))
            {
                Setting setting = new(count, each, style);
                if (figures.All(figure => WidthOf(figure, setting) <= each))
                    return setting;
            }
        }

        KeyFigure widest = figures.MaxBy(figure => figure.Value.Length) ?? new("", "");
        throw new LayoutException($"{widest.Value} {widest.Unit}", width, null, TypeScale.ReadFromAMetre);
    }

    private static double WidthOf(KeyFigure figure, Setting setting)
    {
        double value = Typesetter.WidthOf(figure.Value, setting.Value);
        return figure.Unit.Length == 0 ? value : value + setting.UnitGap + Typesetter.WidthOf(figure.Unit, setting.Unit);
    }

    // The unit is half the height of its number: two steps of the scale.
    private sealed record Setting(int Columns, double Width, TextStyle Value)
    {
        public TextStyle Unit { get; } = new(Value.Height / 2);

        public double UnitGap => 0.25 * Value.Height;
    }
}
