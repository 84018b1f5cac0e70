using Ringwright.Core.Pieces;
using Ringwright.Core.Timber;
using Ringwright.Core.Timber.Colour;
using Ringwright.Core.Timber.Grain;
using Ringwright.Paper.Drawings;

namespace Ringwright.Web.Viewing;

/// <summary>
/// What the shader knows of one wood: eight rows of four numbers. 0 and 1: colour fresh and aged (light on the primaries of sRGB)
/// with ring width and contrast; 2: pores' kind, size, share, and fibre; 3: rays' height and clearness, curl, ribbon; 4: stripe and
/// the number of line families of its hatch; 5 and 6: those families' direction, spacing, dash and gap; 7: not used.
/// </summary>
internal static class WoodRows
{
    /// <summary>Numbers for each wood.</summary>
    public const int Count = 32;

    public static float[] Of(string wood, Shop shop, Hatch hatch)
    {
        Species species = SpeciesTable.For(shop).FindOrAssume(wood);
        var look = GrainLook.Of(species);
        float[] rows = new float[Count];
        // A wood that nobody knows looks as its swatch does everywhere else.
        Lab given = Srgb.Parse(species.Hex).Lab;
        Colour(rows, species.IsKnown ? Shown(species.Fresh) : given);
        Colour(rows.AsSpan(4), species.IsKnown ? Shown(species.Aged) : given);
        rows[3] = (float)look.RingWidth;
        rows[7] = (float)look.RingContrast;
        Put(rows.AsSpan(8), (int)look.Pores, look.PoreSize, look.PoreShare, look.Fibre);
        Put(rows.AsSpan(12), look.RayHeight, look.Rays, look.Curl, look.Ribbon);
        Put(rows.AsSpan(16), look.Stripe, hatch.Lines.Count, 0, 0);
        for (int i = 0; i < Math.Min(2, hatch.Lines.Count); i++)
            Put(rows.AsSpan(20 + (4 * i)), hatch.Lines[i].Angle, hatch.Lines[i].Spacing, hatch.Lines[i].Dash, hatch.Lines[i].Gap);
        return rows;
    }

    private static Lab Shown(SourcedColour colour) => new(colour.L, colour.A, colour.B);

    // No light is below nought; a wood's colour that a screen cannot show loses its depth there.
    private static void Colour(Span<float> row, Lab lab)
    {
        LinearRgb light = lab.ToLinear();
        (row[0], row[1], row[2]) = ((float)Math.Max(0, light.Red), (float)Math.Max(0, light.Green), (float)Math.Max(0, light.Blue));
    }

    private static void Put(Span<float> row, double a, double b, double c, double d) => (row[0], row[1], row[2], row[3]) = ((float)a, (float)b, (float)c, (float)d);
}
