namespace Ringwright.Store;

/// <summary>Where a user's own data lies.</summary>
public static class UserFolder
{
    /// <summary>The environment variable that names another folder.</summary>
    public const string Variable = "RINGWRIGHT_DATA";

    /// <summary>The folder named by <see cref="Variable"/>, otherwise the one for this user's programs. It need not exist yet.</summary>
    public static string Usual() => Environment.GetEnvironmentVariable(Variable) is { Length: > 0 } named
        ? Path.GetFullPath(named)
        : Path.Combine(Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData, Environment.SpecialFolderOption.DoNotVerify), "Ringwright");
}
