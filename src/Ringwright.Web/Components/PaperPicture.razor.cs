using Microsoft.AspNetCore.Components;
using Ringwright.Core;
using Ringwright.Paper;
using Ringwright.Paper.Output;

namespace Ringwright.Web.Components;

/// <summary>A picture of the paper on the screen: drawn anew only when what it is of has changed.</summary>
public partial class PaperPicture
{
    private object? _of;
    private MarkupString _svg;
    private string? _problem;

    /// <summary>What it shows, for those who cannot see it.</summary>
    [Parameter, EditorRequired]
    public required string Title { get; set; }

    /// <summary>What it is of: it is drawn anew when this is no longer equal.</summary>
    [Parameter, EditorRequired]
    public required object Of { get; set; }

    /// <summary>Draws it.</summary>
    [Parameter, EditorRequired]
    public required Func<Paper.Drawings.Drawing> Draw { get; set; }

    /// <summary>Whether it shrinks to the room there is, instead of being scrolled where that is narrow.</summary>
    [Parameter]
    public bool Fits { get; set; }

    /// <summary>An SVG of the paper without what the page's rules do not let in: styles within elements, and ids that other pictures have too.</summary>
    public static string ForPage(string svg)
    {
        ArgumentNullException.ThrowIfNull(svg);
        return svg.Replace(" style=\"white-space:pre;font-variant-numeric:tabular-nums\"", "", StringComparison.Ordinal).Replace(" style=\"white-space:pre\"", "", StringComparison.Ordinal).Replace("<g id=\"", "<g data-layer=\"", StringComparison.Ordinal);
    }

    /// <inheritdoc/>
    protected override void OnParametersSet()
    {
        if (_of is not null && _of.Equals(Of)) return;
        _of = Of;
        try
        {
            _svg = new(ForPage(SvgWriter.Write(Draw(), Title)));
            _problem = null;
        }
        catch (Exception e) when (e is BadInputException or LayoutException)
        {
            _problem = e.Message;
        }
    }
}
