using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace Ringwright.Architecture.Tests;

/// <summary>Dependencies point inward: between projects, and between the folders of the core.</summary>
public partial class LayerTests
{
    private static readonly string Source = Path.Combine(SolutionFolder.Path, "src");

    private static readonly Dictionary<string, string[]> Allowed = new()
    {
        ["Core"] = [],
        ["Stock"] = ["Core"],
        ["Store"] = ["Core"],
        ["Paper"] = ["Core"],
        ["Cli"] = ["Core", "Paper", "Stock", "Store"],
        ["Web"] = ["Core", "Paper", "Stock", "Store"],
    };

    // Pairs of folders of the core that need each other. Planning is the heart: what it plans with (fitting, checks, strips of
    // boards) speaks in its sentences and figures. A shape is checked by laying out its form. No pair may be added.
    private static readonly (string One, string Other)[] Mutual = [("Boards", "Planning"), ("Documents", "Planning"), ("Documents", "Profiles"), ("Fitting", "Planning")];

    // Folders that nothing above them may be used from: they must stay usable by themselves.
    private static readonly string[] Ground = ["Measures", "Geometry", "Rings", "Pieces", "Sawing", "Timber", "Turning"];

    [Fact]
    public void Projects_refer_inward_only()
    {
        string[] projects = [.. Directory.GetDirectories(Source, "Ringwright.*").Select(p => Short(Path.GetFileName(p)))];
        Assert.Equal(Allowed.Keys.Order(StringComparer.Ordinal), projects.Order(StringComparer.Ordinal));
        foreach (string project in projects)
        {
            var file = XDocument.Load(Path.Combine(Source, $"Ringwright.{project}", $"Ringwright.{project}.csproj"));
            string[] used = [.. file.Descendants("ProjectReference").Select(r => Short(Path.GetFileNameWithoutExtension(r.Attribute("Include")!.Value.Replace('\\', '/'))))];
            Assert.True(used.Order(StringComparer.Ordinal).SequenceEqual(Allowed[project]), $"{project} refers to {string.Join(", ", used)}");
        }
    }

    [Fact]
    public void Folders_of_the_core_depend_on_each_other_in_one_direction()
    {
        Dictionary<string, HashSet<string>> uses = CoreUses();
        (string, string)[] mutual = [.. from one in uses from other in one.Value where string.CompareOrdinal(one.Key, other) < 0 && uses[other].Contains(one.Key) select (one.Key, other)];
        Assert.Equal(Mutual, mutual.Order());
        // Without the pairs that are allowed, no way leads round in a circle.
        foreach ((string one, string other) in Mutual) uses[one].Remove(other);
        Assert.Equal("", string.Join(" > ", Circle(uses)));
    }

    [Fact]
    public void The_ground_of_the_core_uses_nothing_above_it()
    {
        Dictionary<string, HashSet<string>> uses = CoreUses();
        foreach (string folder in Ground) Assert.Equal([], uses[folder].Except(Ground).Select(other => $"{folder} uses {other}"));
    }

    // Unused usings do not build (IDE0005), so the usings are what a folder uses.
    private static Dictionary<string, HashSet<string>> CoreUses()
    {
        string core = Path.Combine(Source, "Ringwright.Core");
        var uses = new Dictionary<string, HashSet<string>>();
        foreach (string folder in Directory.GetDirectories(core).Select(f => Path.GetFileName(f)).Where(f => f is not ("bin" or "obj")))
        {
            uses[folder] = [.. Directory.GetFiles(Path.Combine(core, folder), "*.cs", SearchOption.AllDirectories)
                .SelectMany(file => CoreName().Matches(File.ReadAllText(file))).Select(m => m.Groups[1].Value).Where(name => name != folder)];
        }

        foreach (HashSet<string> used in uses.Values) used.IntersectWith(uses.Keys);
        return uses;
    }

    private static string[] Circle(Dictionary<string, HashSet<string>> uses)
    {
        var done = new HashSet<string>();
        foreach (string start in uses.Keys.Order(StringComparer.Ordinal))
            if (From(start, []) is { } circle) return circle;
        return [];

        string[]? From(string folder, string[] way)
        {
            if (way.Contains(folder)) return [.. way.SkipWhile(f => f != folder), folder];
            if (!done.Add(folder)) return null;
            return uses[folder].Order(StringComparer.Ordinal).Select(next => From(next, [.. way, folder])).FirstOrDefault(c => c is not null);
        }
    }

    private static string Short(string project) => project["Ringwright.".Length..];

    [GeneratedRegex(@"\bRingwright\.Core\.(\w+)")]
    private static partial Regex CoreName();
}
