using Ringwright.Core.Planning;
using Ringwright.Paper.JobSheets;
using Ringwright.Paper.Output;
using Ringwright.Paper.Templates;

namespace Ringwright.Cli.Output;

/// <summary>Writes templates: all as pages of one PDF, or each as a file of its own.</summary>
internal sealed class TemplateFiles(Plan plan, PacketOptions options)
{
    /// <summary>Writes them and returns the paths.</summary>
    /// <param name="templates">The templates.</param>
    /// <param name="format">pdf, svg or dxf.</param>
    /// <param name="stem">Folder and beginning of every name.</param>
    public IEnumerable<string> Write(IReadOnlyList<Template> templates, string format, string stem)
    {
        if (format == "pdf")
        {
            using var stream = new MemoryStream();
            TemplateSheets.WritePdf(plan, templates, options, stream);
            SafeFile.Write(stem + ".templates.pdf", stream.ToArray());
            yield return stem + ".templates.pdf";
            yield break;
        }

        HashSet<string> taken = new(StringComparer.OrdinalIgnoreCase);
        foreach (Template template in templates)
        {
            string name = FileName(template.Name), path = $"{stem}.{name}.{format}";
            for (int n = 2; !taken.Add(path); n++) path = $"{stem}.{name}-{n}.{format}";
            SafeFile.Write(path, format == "svg" ? SvgWriter.Write(template.Drawing, $"{plan.Piece.Name}: {template.Name}") : DxfWriter.Write(template.Drawing));
            yield return path;
        }
    }

    /// <summary>A name as part of a file's: letters and digits, the rest as dashes, short enough for any file system.</summary>
    public static string FileName(string name)
    {
        string words = string.Concat(name.Select(c => char.IsAsciiLetterOrDigit(c) ? char.ToLowerInvariant(c) : ' '));
        string joined = string.Join('-', words.Split(' ', StringSplitOptions.RemoveEmptyEntries));
        return joined.Length <= 80 ? joined : joined[..80];
    }
}
