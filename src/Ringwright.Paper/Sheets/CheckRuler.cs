using System.Globalization;
using Ringwright.Core.Geometry;
using Ringwright.Paper.Drawings;
using Ringwright.Paper.Lettering;

namespace Ringwright.Paper.Sheets;

/// <summary>
/// A printed ruler of exactly 100 mm on one side and 4 in on the other, by which a sheet proves its scale.
/// </summary>
internal sealed class CheckRuler
{
    /// <summary>Length of the millimetre side, mm.</summary>
    public const double Millimetres = 100;

    /// <summary>Length of the inch side, mm.</summary>
    public const double Inches = 4 * 25.4;

    /// <summary>Room across the ruler, mm.</summary>
    public const double Breadth = 12;

    /// <summary>Room along the ruler, mm: the first and last number overhang.</summary>
    public const double Room = Inches + (2 * Overhang);

    private const double Overhang = 3;
    private const double BaseLine = 6; // from the millimetre edge

    private readonly Drawing _drawing;
    private readonly Vector2D _zero;
    private readonly Vector2D _along;

    private CheckRuler(Drawing drawing, Vector2D zero, Vector2D along) => (_drawing, _zero, _along) = (drawing, zero, along);

    // Towards the millimetre side: up when the ruler runs right.
    private Vector2D Up => new(_along.Y, -_along.X);

    /// <summary>A level ruler.</summary>
    public static Drawing Across()
    {
        Drawing drawing = new(Room, Breadth);
        new CheckRuler(drawing, new(Overhang, BaseLine), new(1, 0)).Draw();
        return drawing;
    }

    /// <summary>An upright ruler, read from the right.</summary>
    public static Drawing Upright()
    {
        Drawing drawing = new(Breadth, Room);
        new CheckRuler(drawing, new(BaseLine, Room - Overhang), new(0, -1)).Draw();
        return drawing;
    }

    private void Draw()
    {
        _drawing.Line(_zero, At(Inches, 0), Pens.Fine);
        for (int mm = 0; mm <= (int)Millimetres; mm++)
            Tick(mm, mm % 10 == 0 ? 2.8 : mm % 5 == 0 ? 2 : 1.2, mm % 100 == 0);
        for (int eighth = 0; eighth <= 32; eighth++)
            Tick(eighth * 25.4 / 8, -(eighth % 8 == 0 ? 2.8 : eighth % 4 == 0 ? 2.2 : 1.4), eighth % 32 == 0);
        for (int mm = 0; mm <= (int)Millimetres; mm += 10)
            Number(mm, 3.5, mm == (int)Millimetres ? "100 mm" : mm.ToString(CultureInfo.InvariantCulture), Anchor.Centre);
        for (int inch = 0; inch <= 4; inch++)
            Number(inch * 25.4, -3.5, inch == 4 ? "4 in" : inch.ToString(CultureInfo.InvariantCulture), Anchor.TopCentre);
    }

    private Vector2D At(double along, double up) => _zero + (along * _along) + (up * Up);

    private void Tick(double along, double length, bool end) =>
        _drawing.Line(At(along, 0), At(along, length), end ? Pens.Medium : Pens.Fine);

    private void Number(double along, double up, string text, Anchor anchor) =>
        _drawing.Text(text, At(along, up), TypeScale.Note, anchor, Math.Atan2(_along.Y, _along.X));
}
