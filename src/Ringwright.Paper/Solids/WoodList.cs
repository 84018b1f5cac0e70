using Ringwright.Core;
using Ringwright.Core.Timber;
using Ringwright.Core.Turning;

namespace Ringwright.Paper.Solids;

/// <summary>The woods of a file.</summary>
internal static class WoodList
{
    /// <exception cref="BadInputException">A segment's wood is not among the woods.</exception>
    public static void Check(TurnedMesh mesh, IReadOnlyList<Wood> woods)
    {
        ArgumentNullException.ThrowIfNull(mesh);
        ArgumentNullException.ThrowIfNull(woods);
        foreach (WoodRange range in mesh.Woods)
        {
            if (range.Wood < woods.Count) continue;
            TurnedPart part = mesh.Parts[range.FirstPart];
            throw new BadInputException($"ring {part.Ring + 1}, segment {part.Segment + 1}", $"its wood {range.Wood} is not in the list of {woods.Count}", "name every wood that is used");
        }
    }
}
