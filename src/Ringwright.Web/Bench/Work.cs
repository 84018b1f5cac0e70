using Ringwright.Core.Pieces;

namespace Ringwright.Web.Bench;

/// <summary>What is wanted and what it is made with. Immutable.</summary>
/// <param name="Piece">The piece.</param>
/// <param name="Shop">The shop.</param>
public sealed record Work(Piece Piece, Shop Shop)
{
    /// <summary>With another ring in the place of the one at <paramref name="index"/>.</summary>
    public Work WithRing(int index, Ring ring) => WithRings(Piece.Rings.SetItem(index, ring));

    /// <summary>With other rings.</summary>
    public Work WithRings(ImmutableArray<Ring> rings) => this with { Piece = Piece with { Rings = rings } };

    /// <summary>With another shape; null when the rings say their sizes themselves.</summary>
    public Work WithShape(Shape? shape) => this with { Piece = Piece with { Shape = shape } };

    /// <summary>With another shop.</summary>
    public Work WithShop(Func<Shop, Shop> change)
    {
        ArgumentNullException.ThrowIfNull(change);
        return this with { Shop = change(Shop) };
    }
}
