using System.Collections.Immutable;
using System.Globalization;
using System.Reflection;

namespace Ringwright.Store.Sqlite;

/// <summary>
/// The file's format and its steps from version to version, forward only. A step that was ever released is never changed; a
/// change of the format is a new step with the next number.
/// </summary>
internal static class Migrations
{
    /// <summary>The application id in the file's header: "RNGW".</summary>
    public const int ApplicationId = 0x524E4757;

    private const string Prefix = "Ringwright.Store.Migrations.";

    private static readonly ImmutableArray<string> Steps = [.. Resources().OrderBy(r => r.Number).Select(r => r.Sql)];

    private static readonly Lazy<HashSet<string>> Whole = new(() =>
    {
        using Database fresh = Database.Open(":memory:", new());
        Run(fresh, Newest);
        return [.. Schema(fresh)];
    });

    /// <summary>The version this library writes and the newest it reads.</summary>
    public static int Newest => Steps.Length;

    /// <summary>The file's version; 0 for a new one.</summary>
    /// <exception cref="StoreException">It is of another program or of a newer Ringwright; it is left as it is.</exception>
    public static int VersionOf(Database database) => database.Read(session =>
    {
        int program = session.One("PRAGMA application_id", r => r.GetInt32(0));
        int version = session.One("PRAGMA user_version", r => r.GetInt32(0));
        long tables = session.One("SELECT count(*) FROM sqlite_schema", r => r.GetInt64(0));
        if (program != ApplicationId && (program != 0 || version != 0 || tables != 0))
            throw new StoreException(StoreFault.Foreign, database.File, "it belongs to another program", $"another folder is needed, and {UserFolder.Variable} can name it; the file was left as it is");
        // Tables without a version, or one that never was: its header is not as it was written.
        if (version < 0 || (version == 0 && tables != 0)) throw Faults.Damaged(database.File, "close Ringwright and open it again, it then takes the newest good copy");
        if (version > Newest)
            throw new StoreException(StoreFault.Newer, database.File, $"it is of version {version} and this Ringwright reads up to {Newest}", "a newer Ringwright is needed; the file was left as it is");
        return version;
    });

    /// <summary>Whether every table and index of the newest version is there as it was made; more may be there.</summary>
    public static bool IsWhole(Database database) => Whole.Value.IsSubsetOf(Schema(database));

    /// <summary>Brings the file up to <paramref name="target"/>, all steps or none.</summary>
    public static void Run(Database database, int target) => database.Write(session =>
    {
        // Read again inside: another process may have been faster.
        int from = session.One("PRAGMA user_version", r => r.GetInt32(0));
        for (int version = from + 1; version <= target; version++) session.Run(Steps[version - 1]);
        if (from >= target) return;
        session.Run(string.Create(CultureInfo.InvariantCulture, $"PRAGMA application_id = {ApplicationId}"));
        session.Run(string.Create(CultureInfo.InvariantCulture, $"PRAGMA user_version = {target}"));
    });

    private static List<string> Schema(Database database) => database.Read(s => s.All("SELECT type || ' ' || name || ' ' || coalesce(sql, '') FROM sqlite_schema", r => r.GetString(0)));

    private static IEnumerable<(int Number, string Sql)> Resources()
    {
        Assembly assembly = typeof(Migrations).Assembly;
        foreach (string name in assembly.GetManifestResourceNames().Where(n => n.StartsWith(Prefix, StringComparison.Ordinal)))
        {
            using var reader = new StreamReader(assembly.GetManifestResourceStream(name)!);
            yield return (int.Parse(name[Prefix.Length..].Split('-')[0], CultureInfo.InvariantCulture), reader.ReadToEnd());
        }
    }
}
