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

        foreach ((string name, Template template) in TemplateNames.Of(templates))
        {
            string path = $"{stem}.{name}.{format}";
            SafeFile.Write(path, format == "svg" ? SvgWriter.Write(template.Drawing, $"{plan.Piece.Name}: {template.Name}") : DxfWriter.Write(template.Drawing));
            yield return path;
        }
    }
}
