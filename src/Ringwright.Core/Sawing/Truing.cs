using Ringwright.Core.Geometry;

namespace Ringwright.Core.Sawing;

/// <summary>Trues both joint faces of rough-sawn wedges on the disc sander (see <see cref="DiscSander"/>).</summary>
internal readonly struct Truing(DiscSander sander, double rimLength, Draws draws)
{
    /// <summary>Wedge number <paramref name="number"/> with both faces trued.</summary>
    public WedgeShape True(WedgeShape wedge, int number)
    {
        HalfSpace minus = TrueMinus(wedge, number);
        HalfSpace plus = TruePlus(wedge, minus, number);
        ConvexSolid solid = wedge.Solid.Clip(minus, FaceTag.Trued).Clip(plus, FaceTag.Trued);
        return wedge with { Solid = solid, Minus = minus, Plus = plus };
    }

    private HalfSpace TrueMinus(WedgeShape wedge, int number)
    {
        var pose = ToolPose.On(wedge.Down, wedge.Rim, wedge.Minus.Normal);
        double angle = sander.Fence.True + Seating(Draws.Source.MinusSeating, number);
        double end = pose.Meets(wedge.Minus) - (sander.Oversize / Math.Cos(sander.Fence.Angle));
        return pose.Tool(end + Size(Draws.Source.MinusSize, number), angle, Lean(Draws.Source.MinusLean, number));
    }

    private HalfSpace TruePlus(WedgeShape wedge, HalfSpace minus, int number)
    {
        HalfSpace table = sander.TurnedOver ? wedge.Upper : wedge.Down;
        var pose = ToolPose.On(table, wedge.Rim, wedge.Plus.Normal);
        double angle = sander.Fence.True + Seating(Draws.Source.PlusSeating, number);
        double end = pose.Meets(minus) + rimLength;
        return pose.Tool(end + Size(Draws.Source.PlusSize, number), angle, Lean(Draws.Source.PlusLean, number));
    }

    private double Seating(Draws.Source source, int number) =>
        draws.Normal(source, number, sander.SeatingMean, sander.SeatingDeviation);

    private double Lean(Draws.Source source, int number) => draws.Normal(source, number, sander.TableLean, sander.LeanDeviation);

    private double Size(Draws.Source source, int number) => draws.Normal(source, number, 0, sander.SizeDeviation);
}
