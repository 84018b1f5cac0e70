using Ringwright.Core;
using Ringwright.Paper.Drawings;

namespace Ringwright.Paper.Templates;

/// <summary>What a template is for.</summary>
public enum TemplateKind
{
    /// <summary>One wedge, finished, with its outline as sawn.</summary>
    Wedge,

    /// <summary>A quarter of a ring.</summary>
    Quarter,

    /// <summary>A whole ring or disc.</summary>
    Disc,

    /// <summary>A ring over the one below it, turned as they are stacked.</summary>
    Stack,

    /// <summary>A card whose edge fits the outside of the turned piece.</summary>
    Outside,

    /// <summary>A card whose edge fits its inside.</summary>
    Inside,

    /// <summary>A plate to glue a ring on.</summary>
    Plate,

    /// <summary>What stands between the segments of an open ring while they are glued to the plate.</summary>
    Spacer,

    /// <summary>A guide that holds a wedge while one of its faces is rubbed flat.</summary>
    Lap,

    /// <summary>A wedge of the exact angle to set both fences by.</summary>
    Gauge,

    /// <summary>A block whose face stands at the fence's angle.</summary>
    Block,
}

/// <summary>A shape at true scale, on layers, to lay on, to saw or to burn along.</summary>
/// <param name="Kind">What it is for.</param>
/// <param name="Name">What it is called.</param>
/// <param name="Use">How it is used, in a sentence or two.</param>
/// <param name="Drawing">The shape; its millimetres are the workshop's.</param>
public sealed record Template(TemplateKind Kind, string Name, string Use, Drawing Drawing)
{
    /// <summary>The kinds by name.</summary>
    public static IEnumerable<string> Kinds => Enum.GetNames<TemplateKind>().Select(name => name.ToLowerInvariant());

    /// <summary>Reads kinds separated by commas, such as <c>wedge,quarter</c>.</summary>
    /// <exception cref="BadInputException">A kind is not known.</exception>
    public static IReadOnlySet<TemplateKind> Read(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return text.Split(',', StringSplitOptions.TrimEntries).Select(One).ToHashSet();
    }

    private static TemplateKind One(string name) => Enum.TryParse(name, ignoreCase: true, out TemplateKind kind) && name.All(char.IsAsciiLetter)
        ? kind
        : throw new BadInputException("kind of template", $"“{name}” is none", $"some of these are needed, separated by commas: {string.Join(", ", Kinds)}");
}
