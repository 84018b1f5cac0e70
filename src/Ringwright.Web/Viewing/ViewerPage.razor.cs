using Microsoft.AspNetCore.Components;
using Ringwright.Core;
using Ringwright.Core.Documents;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;

namespace Ringwright.Web.Viewing;

/// <summary>The piece on the bench in three dimensions, or one of the examples.</summary>
public sealed partial class ViewerPage
{
    private Plan? _example;
    private string? _refused;
    private PickedSegment? _picked;

    /// <summary>Name of an example to show instead of the piece on the bench.</summary>
    [SupplyParameterFromQuery]
    public string? Example { get; set; }

    private Plan Plan => _example ?? Sheet.Good;

    /// <inheritdoc/>
    protected override void OnParametersSet()
    {
        if (Example is null || _example is not null || _refused is not null) return;
        // Only names of files that are there; nothing of the address becomes part of a path.
        string? path = Directory.EnumerateFiles(Path.Combine(AppContext.BaseDirectory, "examples"), "*.json").FirstOrDefault(f => Path.GetFileNameWithoutExtension(f) == Example);
        try
        {
            if (path is null) throw new BadInputException("example", $"there is none called “{Example}”", "the files in the folder examples are needed");
            _example = Planner.Plan(DocumentJson.ReadPiece(File.ReadAllText(path)), Shop.Starting);
        }
        catch (BadInputException e)
        {
            _refused = e.Message;
        }
    }

    private void Pick(PickedSegment? picked) => _picked = picked;
}
