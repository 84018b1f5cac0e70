using System.Collections.Immutable;

namespace Ringwright.Core.Turning;

/// <summary>The turned piece as rings of wood: the plan's segments within the shape's walls.</summary>
/// <param name="Rings">From the bottom up; heights in mm from the bottom of the lowest ring. A ring that is turned away altogether is left out.</param>
/// <param name="Woods">The woods that segments point to by number.</param>
public sealed record TurnedPiece(ImmutableArray<TurnedRing> Rings, ImmutableArray<string> Woods);
