using System.Reflection;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using Ringwright.Core.Planning;

namespace Ringwright.Architecture.Tests;

/// <summary>What is public is documented, and every folder has its line in CONTRIBUTING.md.</summary>
public partial class DocumentationTests
{
    private static readonly Assembly Core = typeof(Plan).Assembly;

    private static readonly Dictionary<string, XElement> Documented = XDocument.Load(Path.ChangeExtension(Core.Location, ".xml")).Descendants("member").ToDictionary(m => m.Attribute("name")!.Value);

    [Fact]
    public void Every_public_member_of_the_core_has_a_summary()
    {
        string[] names = [.. Core.GetExportedTypes().SelectMany(t => Members(t).Prepend(DocumentName.Of(t)))];
        Assert.True(names.Length > 1500, $"{names.Length} members");
        Assert.Equal([], names.Where(n => !IsTold(n)));
    }

    // A type may say it for all its members: "Lengths in mm."
    [Fact]
    public void Every_number_that_the_core_gives_has_a_unit()
    {
        var missing = new List<string>();
        foreach (Type type in Core.GetExportedTypes().Where(t => !t.IsEnum))
        {
            string ofType = TextOf(DocumentName.Of(type)) + (type.DeclaringType is Type outer ? TextOf(DocumentName.Of(outer)) : "");
            missing.AddRange(NumbersOf(type).Where(n => !Documented.ContainsKey($"P:{DocumentName.Of(type)[2..]}.{n}") && !UnitWord().IsMatch(PositionOf(type, n))).Select(n => $"{type.Name}.{n}"));
            foreach (MemberInfo member in Own(type))
            {
                Type? gives = member switch { PropertyInfo p => p.PropertyType, MethodInfo { IsSpecialName: false } m => m.ReturnType, FieldInfo { IsLiteral: true } f => f.FieldType, _ => null };
                if (gives != typeof(double) && gives != typeof(double?)) continue;
                if (!UnitWord().IsMatch(TextOf(DocumentName.Of(member)) + ofType)) missing.Add($"{type.Name}.{member.Name}");
            }
        }

        Assert.Equal([], missing);
    }

    [Fact]
    public void Every_source_folder_has_its_line_and_no_line_is_left_over()
    {
        string text = File.ReadAllText(Path.Combine(SolutionFolder.Path, "CONTRIBUTING.md"));
        string[] listed = [.. FolderRow().Matches(text).SelectMany(row => Quoted().Matches(row.Value.Split('|')[1])).Select(m => m.Groups[1].Value).Where(f => f.StartsWith("src/", StringComparison.Ordinal))];
        string[] folders = [.. Directory.GetDirectories(Path.Combine(SolutionFolder.Path, "src")).Where(HasSource)
            .SelectMany(project => Directory.GetDirectories(project).Where(HasSource).Select(f => $"src/{Path.GetFileName(project)}/{Path.GetFileName(f)}").Prepend($"src/{Path.GetFileName(project)}"))];
        Assert.Equal([], folders.Except(listed).Select(f => $"{f} is not listed"));
        Assert.Equal([], listed.Except(folders).Select(f => $"{f} is listed and is not there"));
    }

    private static bool HasSource(string folder) => Path.GetFileName(folder) is not ("bin" or "obj" or "node_modules")
        && Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories).Any(f => !f.Contains("node_modules", StringComparison.Ordinal));

    // A positional record tells of its numbers by their parameters.
    private static IEnumerable<string> NumbersOf(Type type) => !IsRecord(type) ? [] : type.GetConstructors().SelectMany(c => c.GetParameters())
        .Where(p => p.ParameterType == typeof(double) || p.ParameterType == typeof(double?)).Select(p => p.Name!).Where(name => type.GetProperty(name) is not null).Distinct();

    private static bool IsTold(string name) => Documented.TryGetValue(name, out XElement? told) && (told.Element("inheritdoc") is not null || !string.IsNullOrWhiteSpace(told.Element("summary")?.Value));

    // What is told of the parameter, and of all of them in the summary.
    private static string PositionOf(Type type, string name) => Documented.TryGetValue(DocumentName.Of(type), out XElement? told)
        ? string.Concat(told.Elements().Where(e => e.Name != "param" || e.Attribute("name")!.Value == name))
        : "";

    private static string TextOf(string name) => Documented.TryGetValue(name, out XElement? told) ? told.ToString() : "";

    private static IEnumerable<string> Members(Type type) => Own(type).Select(DocumentName.Of);

    // What a record's positions make is told by its param; what the compiler adds is told by nobody.
    private static IEnumerable<MemberInfo> Own(Type type)
    {
        if (type.IsSubclassOf(typeof(Delegate))) yield break;
        HashSet<string> positions = [.. type.GetConstructors().Where(_ => IsRecord(type)).SelectMany(c => c.GetParameters()).Select(p => p.Name!)];
        foreach (MemberInfo member in type.GetMembers(BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly))
        {
            bool generated = member.IsDefined(typeof(System.Runtime.CompilerServices.CompilerGeneratedAttribute)) || member.Name.Contains('<', StringComparison.Ordinal) || member.Name == "value__";
            bool counts = member switch
            {
                PropertyInfo property => !(positions.Contains(property.Name) && !Documented.ContainsKey(DocumentName.Of(property))),
                MethodInfo method => !method.IsSpecialName || method.Name.StartsWith("op_", StringComparison.Ordinal),
                FieldInfo => true,
                _ => false,
            };
            if (counts && !generated) yield return member;
        }
    }

    private static bool IsRecord(Type type) => type.GetMethod("<Clone>$") is not null || (type.IsValueType && type.GetMethod("PrintMembers", BindingFlags.Instance | BindingFlags.NonPublic) is not null);

    [GeneratedRegex(@"^\|[^\n]*\|$", RegexOptions.Multiline)]
    private static partial Regex FolderRow();

    // What tells what a number is: its unit, or that it has none.
    [GeneratedRegex(@"\b(mm[²³⁴]?|rad(ian)?s?|nanoradians|millimetres|degrees?|percent|shares?|chances?|ratios?|factors?|kg|g|N|MPa|rpm|turns|minutes?|seconds?|litres?|variance|standard deviations?|CIEDE2000|CIELAB|sRGB|Poisson's|probability|times|counts?|numbers?|celsius|in segments|0 to 1|in the unit|weights?|money|currency|pieces|inheritdoc)\b|°", RegexOptions.IgnoreCase)]
    private static partial Regex UnitWord();

    [GeneratedRegex("`([^`]+)`")]
    private static partial Regex Quoted();
}
