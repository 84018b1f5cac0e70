using Ringwright.Core.Geometry;

namespace Ringwright.Core.Turning;

/// <summary>
/// The area of a segment at one height, its first moments and its second moment about the axis, in closed form: each is the
/// difference over the radii of an antiderivative in r, the second side's less the first side's. A side at the distance c stands at
/// the angle D + asin(c/r).
/// </summary>
internal readonly struct CrossSection
{
    private readonly double _area;
    private readonly double _x;
    private readonly double _y;
    private readonly double _polar;
    private readonly double _z;

    public CrossSection(in SegmentSpan span, WallLevel wall)
    {
        _z = wall.Z;
        Swept from = new(0, span.FromOffset(wall.Z), wall), to = new(span.Angle, span.ToOffset(wall.Z), wall);
        _area = to.Area - from.Area;
        _polar = to.Polar - from.Polar;
        Vector2D first = (to.First.Rotated(span.Angle) - from.First).Rotated(span.From);
        _x = first.X;
        _y = first.Y;
    }

    /// <summary>A slice of this section, <paramref name="height"/> mm thick, of 1 g/mm³.</summary>
    public MassProperties Slice(double height) => new(
        height * _area, height * _area, height * new Vector3D(_x, _y, _z * _area), height * _polar, height * _x * _z, height * _y * _z, 0, 0);

    // What is swept up to one side, from the inner to the outer radius.
    private readonly struct Swept
    {
        public Swept(double direction, double offset, WallLevel wall)
        {
            (Radius outer, Radius inner) = (new(direction, offset, wall.Outer), new(direction, offset, wall.Inner));
            Area = outer.Area - inner.Area;
            Polar = outer.Polar - inner.Polar;
            First = outer.First - inner.First;
        }

        public double Area { get; }

        public double Polar { get; }

        // Not yet turned to the side's direction.
        public Vector2D First { get; }
    }

    private readonly struct Radius(double direction, double offset, double r)
    {
        private readonly double _along = Math.Sqrt(Math.Max(0, (r * r) - (offset * offset)));
        private readonly double _angle = direction + (r > Math.Abs(offset) ? Math.Asin(offset / r) : Math.Sign(offset) * Math.PI / 2);

        // Antiderivative of r (D + asin(c/r)).
        public double Area => (r * r / 2 * _angle) + (offset / 2 * _along);

        // Antiderivative of r³ (D + asin(c/r)).
        public double Polar => (r * r * r * r / 4 * _angle) + (offset / 4 * ((_along * _along * _along / 3) + (offset * offset * _along)));

        // Antiderivatives of r² sin and −r² cos of the angle less D: x and y.
        public Vector2D First => new(offset * r * r / 2, -_along * _along * _along / 3);
    }
}
