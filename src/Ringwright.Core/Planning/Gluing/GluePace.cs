using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;

namespace Ringwright.Core.Planning;

/// <summary>How much these hands can glue before the glue sets.</summary>
internal static class GluePace
{
    /// <summary>Joints that can be spread and closed within the open time: at least one, which the shop's check makes sure of.</summary>
    public static int AtOnce(Shop shop) => Math.Max(1, (int)Math.Floor(((shop.Adhesive.OpenTime.Minutes - shop.Gluing.MinutesPerGlueUp) / shop.Gluing.MinutesPerJoint) + 1e-9));

    /// <summary>Minutes of handwork for one glue-up of so many joints.</summary>
    public static double Minutes(int joints, Shop shop) => shop.Gluing.MinutesPerGlueUp + (joints * shop.Gluing.MinutesPerJoint);

    /// <summary>The same with its reason.</summary>
    public static void Add(Shop shop, FigureBook book)
    {
        book.Know("to", $"open time of {shop.Adhesive.Name}", shop.Adhesive.OpenTime.Minutes, Quantity.Time);
        book.Know("tg", "minutes to close and check the clamp", shop.Gluing.MinutesPerGlueUp, Quantity.Time);
        book.Know("tj", "minutes to spread one joint and put it together", shop.Gluing.MinutesPerJoint, Quantity.Time);
        book.Know("J", "joints that can be closed at once", book.Add("joints-at-once", "Joints to glue in one go, at most", AtOnce(shop), Quantity.Count, "max(1, -ceil((tg − to)/tj − 0.000000001))", "tg to tj",
            "The last joint must be closed before the glue on the first one skins over. More joints than this are glued as runs first.", Sources.OwnRule), Quantity.Count);
    }
}
