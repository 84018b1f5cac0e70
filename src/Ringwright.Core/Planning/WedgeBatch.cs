using System.Collections.Immutable;
using Ringwright.Core.Rings;
using Ringwright.Core.Sawing;

namespace Ringwright.Core.Planning;

/// <summary>Wedges of one ring that are sawn alike: one setting of fence and stop.</summary>
/// <param name="Glued">One of them as glued, after sanding.</param>
/// <param name="Strip">As sawn, and how they lie in the strip.</param>
/// <param name="Places">Which pieces of the ring's layout they are, 0-based, counter-clockwise.</param>
public sealed record WedgeBatch(WedgeGeometry Glued, StripLayout Strip, ImmutableArray<int> Places);

/// <summary>
/// Strips of one wood and thickness that stand between the wedges of a ring, their faces parallel. Lengths in mm. Their grain
/// runs along them, from rim to centre.
/// </summary>
/// <param name="Wood">Their wood.</param>
/// <param name="Thickness">Between the two glue faces.</param>
/// <param name="Height">Width of the strip, which becomes the height in the ring; before flattening.</param>
/// <param name="Inner">Distance of their inner ends from the axis.</param>
/// <param name="Outer">Distance of their outer ends from the axis.</param>
/// <param name="Places">Which pieces of the ring's layout they are.</param>
/// <param name="Need">How many to cut, and from how much.</param>
public sealed record SpacerBatch(string Wood, double Thickness, double Height, double Inner, double Outer, ImmutableArray<int> Places, WoodNeed Need)
{
    /// <summary>Length to cut, from rim to centre.</summary>
    public double Length => Outer - Inner;
}
