namespace Ringwright.Core.Sawing;

/// <summary>Hand sanding of the joint faces of every wedge, in the wedge frame.</summary>
/// <param name="Minus">The -y face.</param>
/// <param name="Plus">The +y face.</param>
public sealed record Sanding(FaceSanding Minus, FaceSanding Plus)
{
    /// <summary>No sanding.</summary>
    public static Sanding None { get; } = Both(default);

    /// <summary>The same on both faces.</summary>
    public static Sanding Both(FaceSanding face) => new(face, face);

    internal void Check()
    {
        Minus.Check("sanding, -y face");
        Plus.Check("sanding, +y face");
    }
}
