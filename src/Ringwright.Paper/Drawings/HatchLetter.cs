using Ringwright.Core.Geometry;
using Ringwright.Paper.Lettering;

namespace Ringwright.Paper.Drawings;

/// <summary>Letters on a hatch.</summary>
internal static class HatchLetter
{
    /// <summary>Writes a letter on a clear disc, so that the hatch does not run through it.</summary>
    /// <param name="drawing">The drawing.</param>
    /// <param name="letter">The letter.</param>
    /// <param name="middle">Its middle, mm.</param>
    /// <param name="radius">Radius of the disc, mm.</param>
    public static Drawing LetterOn(this Drawing drawing, string letter, Vector2D middle, double radius) => drawing
        .Fill(Outline.Circle(middle, radius), Colour.Grey(255))
        .Text(letter, middle, TypeScale.Body with { Weight = FontWeight.SemiBold }, Anchor.Middle);
}
