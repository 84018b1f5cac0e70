using System.Collections.Immutable;
using Ringwright.Core.Rings;
using Ringwright.Core.Sawing;

namespace Ringwright.Core.Planning;

/// <summary>Wedges of one ring that are sawn alike: one setting of fence and stop.</summary>
/// <param name="Glued">One of them as glued, after sanding.</param>
/// <param name="Strip">As sawn, and how they lie in the strip.</param>
/// <param name="Places">Which of the ring's segments they are, 0-based, counter-clockwise.</param>
public sealed record WedgeBatch(WedgeGeometry Glued, StripLayout Strip, ImmutableArray<int> Places);
