using System.Reflection;
using System.Runtime.CompilerServices;
using Ringwright.Core.Planning;

namespace Ringwright.Architecture.Tests;

/// <summary>The core reads no file and no clock, and remembers nothing: same input, same answer.</summary>
public class PurityTests
{
    private static readonly Assembly Core = typeof(Plan).Assembly;
    private static readonly AssemblyReading Reading = AssemblyReading.Of(Core.Location);

    // Streams in memory and text readers are no input or output by themselves.
    private static readonly string[] AllowedFromIO = ["System.IO.Stream", "System.IO.MemoryStream", "System.IO.TextReader", "System.IO.TextWriter", "System.IO.StringReader", "System.IO.StringWriter", "System.IO.StreamReader", "System.IO.Path"];

    private static readonly string[] ForbiddenSpaces = ["System.IO.", "System.Net.", "System.Diagnostics.Process", "System.Diagnostics.Stopwatch", "System.Console", "System.TimeProvider", "Microsoft.Win32.", "System.Security.Cryptography."];

    // What iterators compile to, and how many threads share a sum whose result does not depend on it.
    private static readonly string[] AllowedOfEnvironment = ["System.Environment.get_CurrentManagedThreadId", "System.Environment.get_ProcessorCount"];

    private static readonly string[] ForbiddenMembers =
    [
        "System.DateTime.get_Now", "System.DateTime.get_UtcNow", "System.DateTime.get_Today", "System.DateTimeOffset.get_Now", "System.DateTimeOffset.get_UtcNow",
        "System.Random.get_Shared", "System.Guid.NewGuid", "System.Globalization.CultureInfo.get_CurrentCulture", "System.Globalization.CultureInfo.set_CurrentCulture",
        "System.TimeZoneInfo.get_Local", "System.AppContext.get_BaseDirectory", "System.Threading.Thread.Sleep",
    ];

    // What could be added to. A Lazy is not: it is a constant that is worked out when it is first needed.
    private static readonly Type[] Collecting = [typeof(List<>), typeof(Dictionary<,>), typeof(HashSet<>), typeof(Queue<>), typeof(Stack<>), typeof(SortedDictionary<,>), typeof(ConditionalWeakTable<,>), typeof(ThreadLocal<>)];

    [Fact]
    public void It_refers_to_nothing_of_ours_and_to_one_library() =>
        Assert.Equal(["MathNet.Numerics"], Reading.Assemblies.Where(name => !name.StartsWith("System.", StringComparison.Ordinal)));

    [Fact]
    public void It_touches_no_file_clock_console_or_network()
    {
        Assert.Equal([], Reading.Types.Where(type => ForbiddenSpaces.Any(f => type.StartsWith(f, StringComparison.Ordinal)) && !AllowedFromIO.Contains(type)));
        Assert.Equal([], Reading.Members.Where(ForbiddenMembers.Contains));
        Assert.Equal([], Reading.Members.Where(m => m.StartsWith("System.Environment.", StringComparison.Ordinal)).Except(AllowedOfEnvironment));
        // A reader of a text that is at hand, never of a file by its name.
        Assert.DoesNotContain("System.IO.Path.GetTempPath", Reading.Members);
    }

    // A seed is passed: new Random() would take one from the machine.
    [Fact]
    public void Its_randomness_comes_from_a_seed() => Assert.DoesNotContain("System.Random", Reading.Types);

    [Fact]
    public void It_keeps_no_state()
    {
        FieldInfo[] fields = [.. Core.GetTypes().Where(t => !IsGenerated(t)).SelectMany(t => t.GetFields(BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.DeclaredOnly))
            .Where(f => !f.IsLiteral)];
        Assert.NotEmpty(fields);
        Assert.Equal([], fields.Where(f => !f.IsInitOnly || f.IsDefined(typeof(ThreadStaticAttribute))).Select(Named));
        Assert.Equal([], fields.Where(f => IsCollecting(f.FieldType)).Select(Named));
    }

    private static bool IsCollecting(Type type) => type.IsGenericType && Collecting.Contains(type.GetGenericTypeDefinition())
        || type.Namespace == "System.Collections.Concurrent" || type.Name is "StringBuilder" or "Random";

    private static bool IsGenerated(Type type) => type.IsDefined(typeof(CompilerGeneratedAttribute)) || type.Name.StartsWith('<') || (type.DeclaringType is Type outer && IsGenerated(outer))
        || type.Namespace?.StartsWith("System.", StringComparison.Ordinal) == true;

    private static string Named(FieldInfo field) => $"{field.DeclaringType!.FullName}.{field.Name}";
}
