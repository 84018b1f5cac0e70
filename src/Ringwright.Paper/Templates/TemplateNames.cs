namespace Ringwright.Paper.Templates;

/// <summary>Names for files of templates and gauges.</summary>
public static class TemplateNames
{
    private const int Longest = 80; // characters; short enough for any file system with a piece's name before it

    /// <summary>The templates with names that no two of them share, also where case does not count.</summary>
    public static IEnumerable<(string Name, Template Template)> Of(IEnumerable<Template> templates)
    {
        ArgumentNullException.ThrowIfNull(templates);
        HashSet<string> taken = new(StringComparer.OrdinalIgnoreCase);
        foreach (Template template in templates)
        {
            string stem = Part(template.Name), name = stem;
            for (int n = 2; !taken.Add(name); n++) name = $"{stem}-{n}";
            yield return (name, template);
        }
    }

    /// <summary>A name as part of a file's: letters and digits, the rest as dashes.</summary>
    public static string Part(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        string words = string.Concat(name.Select(c => char.IsAsciiLetterOrDigit(c) ? char.ToLowerInvariant(c) : ' '));
        string joined = string.Join('-', words.Split(' ', StringSplitOptions.RemoveEmptyEntries));
        return joined.Length <= Longest ? joined : joined[..Longest];
    }
}
