namespace Ringwright.Fuzz.Making;

/// <summary>The files of the folder examples.</summary>
public static class Examples
{
    private static readonly string Folder = Path.Combine(SolutionFolder.Path, "examples");

    /// <summary>All JSON documents.</summary>
    public static IReadOnlyList<string> Documents { get; } = [.. Directory.GetFiles(Folder, "*.json").Order(StringComparer.Ordinal).Select(File.ReadAllText)];

    /// <summary>All comma-separated tables.</summary>
    public static IReadOnlyList<string> Tables { get; } = [.. Directory.GetFiles(Folder, "*.csv").Order(StringComparer.Ordinal).Select(File.ReadAllText)];

    /// <summary>The text of one.</summary>
    public static string Text(string file) => File.ReadAllText(At(file));

    /// <summary>Where one lies.</summary>
    public static string At(string file) => Path.Combine(Folder, file);
}
