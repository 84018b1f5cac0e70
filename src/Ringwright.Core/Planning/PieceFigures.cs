using System.Collections.Immutable;
using Ringwright.Core.Measures;
using Ringwright.Core.Profiles;

namespace Ringwright.Core.Planning;

/// <summary>The numbers of the whole piece.</summary>
internal static class PieceFigures
{
    private const string Count = "count of the pieces", Curve = "the exact curve";
    private const string Integral = "integral over the exact curve, piece by piece";

    public static ImmutableArray<Figure> Of(ImmutableArray<RingPlan> rings, TurnedForm? form, TimberPlan timber)
    {
        var book = new FigureBook();
        double stack = rings.Sum(r => r.Ring.Thickness.Millimetres);
        book.Know("n", "rings in the stack", rings.Length, Quantity.Count);
        book.Know("ΣT", "heights of all rings", stack, Quantity.Length);
        book.Add("stack-height", "Height of the glued stack", stack, Quantity.Length, "ΣT", "ΣT", "The lathe must take this between its centres, with the chuck.", Sources.Layer);
        int pieces = rings.Sum(r => r.Layout.Length);
        book.Know("P", "pieces of wood in all rings", pieces, Quantity.Count);
        book.Add("pieces", "Pieces of wood", pieces, Quantity.Count, "P", "P", "Each one is sawn, sanded and glued.", Count);
        if (form is not null) AddForm(form, book);
        SpeedFigures.Add(rings, timber, book);
        ClimateFigures.Add(timber.Climate, book);
        return book.Figures;
    }

    private static void AddForm(TurnedForm form, FigureBook book)
    {
        book.Know("zb", "height of the shape's lowest point", form.Bottom, Quantity.Length);
        book.Know("zt", "height of its highest point", form.Top, Quantity.Length);
        book.Add("piece-height", "Height of the piece", form.Height, Quantity.Length, "zt − zb", "zt zb", "What stands on the table in the end.", Curve);
        double widest = 2 * form.Extents(form.Bottom, form.Top).MaxOuter;
        book.AddFound("widest", "Largest diameter", widest, Quantity.Length, "largest of 2·r(z), from the roots of the curve's slope", "", "The lathe must swing the blank, which is larger.", Curve);
        book.AddFound("wood-left", "Wood in the turned piece", form.Volume, Quantity.Volume, "π·∫(ro² − ri²) dz", "", "Times the density it is the piece's weight.", Integral);
        if (form.Thinnest() is not ThinnestWood thin) return;
        book.AddFound("thinnest-wall", "Thinnest wood", thin.Thickness, Quantity.Length, "least distance between outer and inner curve", "", "Where it will break, ring or show light first.", Curve);
        book.AddFound("thinnest-at", "It is at the height of", thin.Outside.Y, Quantity.Length, "height of that place outside", "", "Measure there while turning.", Curve);
    }
}
