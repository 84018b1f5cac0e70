namespace Ringwright.Web.Tests;

/// <summary>A folder of a test's own, removed after it.</summary>
internal sealed class TemporaryFolder : IDisposable
{
    public string Path { get; } = Directory.CreateTempSubdirectory("ringwright-").FullName;

    public string In(string name) => System.IO.Path.Combine(Path, name);

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
