using System.Collections.Immutable;
using Ringwright.Core.Geometry;
using Ringwright.Core.Pieces;
using Ringwright.Core.Rings;
using Ringwright.Core.Sawing;

namespace Ringwright.Core.Planning;

/// <summary>Where wedges sawn in turn from the strips of their wood stand in the ring.</summary>
internal static class WedgeLayout
{
    /// <summary>Equal wedges around <paramref name="ring"/>, each wood's taken from its boards in the order they were sawn.</summary>
    public static ImmutableArray<LaidSegment> Equal(Ring ring, WedgeGeometry glued, StripLayout strip, Shop shop)
    {
        double step = 2 * Math.PI / ring.Around;
        var counts = new Dictionary<string, int>(StringComparer.OrdinalIgnoreCase);
        int perBoard = Math.Max(1, strip.WedgesIn(shop.Boards.Length.Millimetres));
        var laid = ImmutableArray.CreateBuilder<LaidSegment>(ring.Around);
        for (int i = 0; i < ring.Around; i++)
        {
            string wood = ring.WoodOf(i);
            int taken = counts.GetValueOrDefault(wood);
            counts[wood] = taken + 1;
            double middle = (i + ring.Shift) * step;
            laid.Add(new(new(middle - glued.HalfAngle), new(middle + glued.HalfAngle), wood, taken / perBoard, taken % perBoard,
                Frame(glued, strip, taken % perBoard, middle)));
        }

        return laid.MoveToImmutable();
    }

    /// <summary>
    /// The board of the wedge that was sawn as number <paramref name="cut"/>, laid into the ring. Wedges point to alternate edges:
    /// the rim of even ones was the near edge of the board, that of odd ones the far edge. The face that was up stays up.
    /// <paramref name="aside"/> moves it sideways, counter-clockwise, from the radial line at <paramref name="middle"/>.
    /// </summary>
    public static Frame3D Frame(WedgeGeometry glued, StripLayout strip, int cut, double middle, double aside = 0)
    {
        (double sin, double cos) = Math.SinCos(middle);
        var radial = new Vector3D(cos, sin, 0);
        var tangent = new Vector3D(-sin, cos, 0);
        bool far = cut % 2 == 1;
        Vector3D x = far ? -1 * tangent : tangent;
        Vector3D y = far ? radial : -1 * radial;
        double nearEdge = glued.ApexRadius + (far ? glued.InnerApothem : glued.OuterApothem);
        return new(x, y, new(0, 0, 1), (nearEdge * radial) + (aside * tangent) - (strip.MiddleOf(cut) * x));
    }
}
