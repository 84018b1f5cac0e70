using System.Text;

namespace Ringwright.Cli.Reference;

/// <summary>Texts that come with the program for its reference.</summary>
internal static class ReferenceText
{
    /// <summary>A text by its name, with one line feed at its end; null when there is none.</summary>
    public static string? Read(string name)
    {
        using Stream? stream = typeof(ReferenceText).Assembly.GetManifestResourceStream(name);
        if (stream is null) return null;
        using var reader = new StreamReader(stream, Encoding.UTF8);
        return reader.ReadToEnd().ReplaceLineEndings("\n").TrimEnd('\n') + "\n";
    }

    /// <summary>A text as it must stand in the cell of a table.</summary>
    public static string Cell(string text) => text.Replace("|", "\\|", StringComparison.Ordinal);
}
