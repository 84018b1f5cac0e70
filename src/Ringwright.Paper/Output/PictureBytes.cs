using System.Text;
using Ringwright.Core;
using Ringwright.Paper.Drawings;

namespace Ringwright.Paper.Output;

/// <summary>A single picture as the bytes of a file.</summary>
public static class PictureBytes
{
    private const double DotsPerInch = 200;

    /// <summary>The endings that can be written.</summary>
    public static IReadOnlyList<string> Endings { get; } = [".svg", ".png", ".pdf"];

    /// <summary>The file's bytes.</summary>
    /// <param name="picture">The picture.</param>
    /// <param name="ending">One of <see cref="Endings"/>.</param>
    /// <param name="title">What it shows, for those who cannot see it.</param>
    /// <param name="date">Written into a PDF.</param>
    /// <exception cref="BadInputException">The ending is another.</exception>
    public static byte[] Of(Drawing picture, string ending, string title, DateOnly date)
    {
        if (!Endings.Contains(ending)) throw new BadInputException("picture", $"“{ending}” is no ending of one", $"{string.Join(", ", Endings)} are needed");
        if (ending == ".svg") return Encoding.UTF8.GetBytes(SvgWriter.Write(picture, title));
        using var bytes = new MemoryStream();
        if (ending == ".png") PngWriter.Write(picture, DotsPerInch, bytes);
        else PdfWriter.Write([picture], new(title, "picture", date), bytes);
        return bytes.ToArray();
    }
}
