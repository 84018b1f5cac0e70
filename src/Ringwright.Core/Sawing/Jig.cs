namespace Ringwright.Core.Sawing;

/// <summary>How the board is held for the cuts, which are made at edge 1 and at edge 2 in turn, edge 1 first.</summary>
public abstract record Jig
{
    private const double Degree = Math.PI / 180;

    private protected Jig()
    {
    }

    /// <summary>The fence the board lies against when <paramref name="edge"/> is at the fence.</summary>
    public abstract Fence FenceAt(BoardEdge edge);

    /// <summary>The side that lies on the table when <paramref name="edge"/> is at the fence.</summary>
    public abstract BoardSide DownAt(BoardEdge edge);

    // A tilted blade slopes the joint faces by itself, so the fence may be square.
    internal void Check(double bladeTilt)
    {
        FenceAt(BoardEdge.Edge1).Check("first fence");
        FenceAt(BoardEdge.Edge2).Check("second fence");
        double sum = FenceAt(BoardEdge.Edge1).Angle + FenceAt(BoardEdge.Edge2).Angle;
        Require.Angle("wedge angle (both cuts together)", sum, bladeTilt > 0 ? 0 : 1 * Degree, 140 * Degree);
    }
}

/// <summary>
/// Two fences on the same side of the blade. The board slides from one to the other, always the same face up: edge 1
/// lies against the first fence, edge 2 against the second. A wedge's angle is the sum of both; either may be square.
/// Only the sum must be right. Blade lean gives both joint faces of a wedge the same lean: the wedge is sheared, with the
/// same section at every height when both angles are equal. A sheared wedge mates with one of its own kind; wedges with
/// the rim on the other edge shear the other way, so in the order of sawing the joints open by twice the lean, at the top
/// and at the bottom in turn. Rings of one kind (every second wedge) close without a gap.
/// </summary>
/// <param name="First">The fence at edge 1.</param>
/// <param name="Second">The fence at edge 2.</param>
public sealed record TwoFenceSled(Fence First, Fence Second) : Jig
{
    /// <inheritdoc/>
    public override Fence FenceAt(BoardEdge edge) => edge == BoardEdge.Edge1 ? First : Second;

    /// <inheritdoc/>
    public override BoardSide DownAt(BoardEdge edge) => BoardSide.Bottom;
}

/// <summary>
/// One fence; between cuts the board is rolled about its long axis by half a turn, so edge 2 comes to the fence with the
/// bottom up. The wedge angle is twice the fence's, its error too. Blade lean makes every wedge narrower at the face that
/// was up (or down): put together as they fell, the ring opens on that face; with every second wedge turned over, the
/// neighbours mate.
/// </summary>
/// <param name="Fence">The only fence.</param>
public sealed record FlippedMitre(Fence Fence) : Jig
{
    /// <inheritdoc/>
    public override Fence FenceAt(BoardEdge edge) => Fence;

    /// <inheritdoc/>
    public override BoardSide DownAt(BoardEdge edge) => edge == BoardEdge.Edge1 ? BoardSide.Bottom : BoardSide.Top;
}
