using System.Collections.Frozen;
using System.Text;
using SkiaSharp;

namespace Ringwright.Paper.Lettering;

/// <summary>
/// One weight of the embedded typeface with the advance of each of its glyphs. Immutable after loading and safe to share
/// between threads.
/// </summary>
internal sealed class FontFace
{
    /// <summary>Height of a capital over the em size (OS/2 sCapHeight of Inter: 1490/2048).</summary>
    public const double CapHeightPerEm = 1490.0 / 2048.0;

    private static readonly FrozenDictionary<FontWeight, Lazy<FontFace>> Faces =
        Enum.GetValues<FontWeight>().ToFrozenDictionary(weight => weight, weight => new Lazy<FontFace>(() => new(weight)));

    // Every script that the typeface has but a few signs; what lies above is asked of Skia one by one.
    private const int Common = 0x2C00;

    private readonly float[] _advances;
    private readonly float[] _common; // by code point: asking Skia takes longer than all else in setting a line
    private readonly SKFont _lookup; // only asked for glyph numbers, which changes nothing in it

    private FontFace(FontWeight weight)
    {
        string name = $"Inter-{weight}.ttf";
        using Stream stream = typeof(FontFace).Assembly.GetManifestResourceStream(name)
            ?? throw new InvalidOperationException($"The typeface {name} is not embedded in this build.");
        using SKData data = SKData.Create(stream);
        Typeface = SKTypeface.FromData(data);
        _lookup = Font(1);
        _advances = Advances(Typeface);
        _common = [.. _lookup.GetGlyphs([.. Enumerable.Range(0, Common)]).Select(glyph => _advances[glyph])];
        DigitWidth = "0123456789".Max(digit => Advance(digit));
    }

    /// <summary>The typeface for Skia.</summary>
    public SKTypeface Typeface { get; }

    /// <summary>The advance of the widest digit over the em size.</summary>
    public double DigitWidth { get; }

    /// <summary>The face of a weight.</summary>
    public static FontFace Of(FontWeight weight) => Faces[weight].Value;

    /// <summary>A font of this face set for drawing in millimetres: no hinting, no rounding of positions.</summary>
    /// <param name="em">Em size, mm.</param>
    public SKFont Font(double em) => new(Typeface, (float)em)
    {
        Subpixel = true,
        LinearMetrics = true,
        Hinting = SKFontHinting.None,
        Edging = SKFontEdging.Antialias,
    };

    /// <summary>Whether the face can show a character.</summary>
    public bool Has(int codepoint) => _lookup.GetGlyph(codepoint) != 0;

    /// <summary>The advance of a character over the em size.</summary>
    public double Advance(int codepoint) => codepoint < Common ? _common[codepoint] : _advances[_lookup.GetGlyph(codepoint)];

    /// <summary>The same, a digit in the width of the widest where figures are to stand under each other.</summary>
    public double Advance(Rune rune, bool tabular) => tabular && rune.IsAscii && Rune.IsDigit(rune) ? DigitWidth : Advance(rune.Value);

    // Measured at one unit per font unit, so that the ratios are exact.
    private static float[] Advances(SKTypeface typeface)
    {
        using SKFont font = new(typeface, typeface.UnitsPerEm) { LinearMetrics = true, Hinting = SKFontHinting.None };
        ushort[] glyphs = [.. Enumerable.Range(0, typeface.GlyphCount).Select(g => (ushort)g)];
        return [.. font.GetGlyphWidths(glyphs).Select(w => w / typeface.UnitsPerEm)];
    }
}
