namespace Ringwright;

/// <summary>The folder of the solution, found upwards from the test's own.</summary>
internal static class SolutionFolder
{
    public static string Path { get; } = Find();

    private static string Find()
    {
        string? folder = AppContext.BaseDirectory;
        while (folder is not null && !File.Exists(System.IO.Path.Combine(folder, "Ringwright.slnx"))) folder = System.IO.Path.GetDirectoryName(folder);
        return folder ?? throw new InvalidOperationException("The solution's folder was not found above the test's.");
    }
}
