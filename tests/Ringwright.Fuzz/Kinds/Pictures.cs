using Ringwright.Core.Patterns;
using Ringwright.Core.Patterns.Pictures;
using Ringwright.Fuzz.Making;
using Ringwright.Fuzz.Running;
using Ringwright.Paper.Pictures;
using SkiaSharp;

namespace Ringwright.Fuzz.Kinds;

/// <summary>Picture files, PNG and JPEG, mutated; what is read becomes a pattern of woods.</summary>
public sealed class Pictures : Kind
{
    private static readonly string[] Rightly = [.. MakeFiles()];
    private static readonly Lattice Rings = new([new(12, 0, 50, 20), new(12, 0.5, 55, 20), new(24, 0.25, 60, 10)]);

    public override string Name => "pictures";

    public override string Ending => ".img";

    public override string Make(Dice dice)
    {
        string file = dice.One(Rightly);
        return dice.Chance(0.02) ? file : ByteMutator.Mutate(dice, file);
    }

    public override void Check(string input)
    {
        PixelPicture picture = PixelFile.Read(ByteMutator.Bytes(input));
        Promise.That((long)picture.Width * picture.Height <= PixelFile.MostPixels && picture.Rgba.Length == 4 * picture.Width * picture.Height, "a picture is bounded", $"{picture.Width} × {picture.Height}");
        foreach (ErrorSpread spread in (ErrorSpread[])[ErrorSpread.None, ErrorSpread.Lab])
        {
            PicturedPattern pattern = PictureReducer.Reduce(picture, Rings, new() { Woods = ["maple", "walnut", "cherry"], Background = "walnut", Spread = spread, FitTones = true });
            Promise.That(double.IsFinite(pattern.MeanDifference) && double.IsFinite(pattern.WorstDifference), "differences of colour are numbers", $"{pattern.MeanDifference}, {pattern.WorstDifference}");
            Promise.That(pattern.Rows.Length == 3 && pattern.Rows.All(r => r.All(w => w.Length > 0)), "every segment has a wood", $"{pattern.Rows.Length} rows");
        }
    }

    // Small ones of several kinds, made here.
    private static IEnumerable<string> MakeFiles()
    {
        foreach ((int width, int height) in ((int, int)[])[(1, 1), (16, 9), (64, 48)])
        {
            using var bitmap = new SKBitmap(width, height, SKColorType.Rgba8888, SKAlphaType.Unpremul);
            for (int y = 0; y < height; y++)
                for (int x = 0; x < width; x++)
                    bitmap.SetPixel(x, y, new((byte)(x * 4), (byte)(y * 5), (byte)(x * y), (byte)(x % 3 == 0 ? 255 : 128)));
            foreach (SKEncodedImageFormat format in (SKEncodedImageFormat[])[SKEncodedImageFormat.Png, SKEncodedImageFormat.Jpeg])
            {
                using SKData data = bitmap.Encode(format, 80);
                yield return ByteMutator.Text(data.ToArray());
            }
        }
    }
}
