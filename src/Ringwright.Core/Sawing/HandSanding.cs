using System.Runtime.InteropServices;
using Ringwright.Core.Geometry;

namespace Ringwright.Core.Sawing;

/// <summary>Takes off what hand sanding takes off: first the faces, then their upright edges.</summary>
internal sealed class HandSanding
{
    private readonly ClipRooms _rooms = new();
    private readonly List<HalfSpace> _facets = [];

    /// <summary>The wedge after <paramref name="sanding"/>.</summary>
    public WedgeShape Sand(WedgeShape wedge, Sanding sanding)
    {
        wedge = Faces(wedge, sanding);
        return wedge with { Solid = Edges(wedge, sanding) };
    }

    private static WedgeShape Faces(WedgeShape wedge, Sanding sanding)
    {
        HalfSpace minus = Face(wedge, wedge.Minus, sanding.Minus);
        HalfSpace plus = Face(wedge, wedge.Plus, sanding.Plus);
        ConvexSolid solid = wedge.Solid;
        if (minus != wedge.Minus) solid = solid.Clip(minus, FaceTag.Sanded);
        if (plus != wedge.Plus) solid = solid.Clip(plus, FaceTag.Sanded);
        return wedge with { Solid = solid, Minus = minus, Plus = plus };
    }

    // A face of which nothing is left cannot be sanded.
    // Removal r(t) = AtTip + slope (t - tip) along the face is a plane again: (n + slope u) · p <= d - AtTip + slope tip.
    private static HalfSpace Face(WedgeShape wedge, HalfSpace face, FaceSanding sanding)
    {
        if (sanding.AtRim == 0 && sanding.AtTip == 0) return face;
        Vector3D along = face.Normal.Cross(wedge.Up).Normalized();
        if (along.Dot(wedge.Rim.Normal) < 0) along = -along;
        (double tip, double rim) = wedge.Solid.FaceExtent(face, along);
        if (rim - tip <= ConvexSolid.OnPlane) return face;
        double slope = (sanding.AtRim - sanding.AtTip) / (rim - tip);
        (Vector3D upwards, double middle) = Across(wedge, face, along, sanding.MoreAbove);
        Vector3D normal = face.Normal + (slope * along) + upwards;
        double stretch = 1 / normal.Length;
        return new(stretch * normal, stretch * (face.Offset - sanding.AtTip + (slope * tip) + middle));
    }

    // What is added to the plane's normal and offset by taking more off above than below, the same at the middle.
    private static (Vector3D Upwards, double Middle) Across(WedgeShape wedge, HalfSpace face, Vector3D along, double more)
    {
        if (more == 0) return default;
        Vector3D up = face.Normal.Cross(along);
        if (up.Dot(wedge.Up) < 0) up = -up;
        (double low, double high) = wedge.Solid.FaceExtent(face, up);
        double slope = more / (high - low);
        return (slope * up, slope * (low + high) / 2);
    }

    private ConvexSolid Edges(WedgeShape wedge, Sanding sanding)
    {
        // Where a tip flat separates the faces by more than the rounding, the first removes nothing; at a sharp tip it takes all.
        double both = Math.Max(sanding.Minus.TipRadius, sanding.Plus.TipRadius);
        _facets.Clear();
        EdgeRounding.AddFacets(_facets, wedge.Minus, wedge.Plus, both);
        EdgeRounding.AddFacets(_facets, wedge.Minus, wedge.Rim, sanding.Minus.RimRadius);
        EdgeRounding.AddFacets(_facets, wedge.Plus, wedge.Rim, sanding.Plus.RimRadius);
        EdgeRounding.AddFacets(_facets, wedge.Minus, wedge.Far, sanding.Minus.TipRadius);
        EdgeRounding.AddFacets(_facets, wedge.Plus, wedge.Far, sanding.Plus.TipRadius);
        return wedge.Solid.ClipAll(CollectionsMarshal.AsSpan(_facets), FaceTag.Rounded, _rooms);
    }
}
