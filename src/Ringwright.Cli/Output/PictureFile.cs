using Ringwright.Core;
using Ringwright.Paper.Drawings;
using Ringwright.Paper.Output;
using Spectre.Console;

namespace Ringwright.Cli.Output;

/// <summary>Writes a picture as the kind of file that its name ends with.</summary>
internal static class PictureFile
{
    /// <summary>What the option is told to be, for its help.</summary>
    public const string Help = "Also draw it into this file: .svg, .png or .pdf.";

    private const string Option = "--picture";

    /// <summary>Refuses a name that ends with nothing it can write, before any work is done.</summary>
    public static void Check(string? path, string option = Option)
    {
        if (path is not null && !PictureBytes.Endings.Contains(Extension(path)))
            throw new BadInputException(option, $"“{path}” is no picture that can be written", "a name that ends with .svg, .png or .pdf is needed");
    }

    /// <summary>Writes the picture, whole or not at all, and says so.</summary>
    /// <param name="console">Where to say so.</param>
    /// <param name="path">Where to.</param>
    /// <param name="picture">The picture.</param>
    /// <param name="title">What it shows, for those who cannot see it.</param>
    /// <param name="json">Whether the answer is JSON, which a sentence would spoil.</param>
    public static void Write(IAnsiConsole console, string path, Drawing picture, string title, bool json)
    {
        SafeFile.Write(path, PictureBytes.Of(picture, Extension(path), title, DateOnly.FromDateTime(DateTime.Now)));
        if (json) return;
        AlignedText.Heading(console, "Written");
        console.WriteLine("  " + path);
    }

    private static string Extension(string path) => Path.GetExtension(path).ToLowerInvariant();
}
