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
        Side from = new(0, span.FromOffset(wall.Z));
        Side to = new(span.Angle, span.ToOffset(wall.Z));
        _area = to.Area(wall.Outer) - to.Area(wall.Inner) - from.Area(wall.Outer) + from.Area(wall.Inner);
        _polar = to.Polar(wall.Outer) - to.Polar(wall.Inner) - from.Polar(wall.Outer) + from.Polar(wall.Inner);
        Vector2D first = to.First(wall.Outer) - to.First(wall.Inner) - from.First(wall.Outer) + from.First(wall.Inner);
        first = first.Rotated(span.From);
        _x = first.X;
        _y = first.Y;
    }

    /// <summary>A slice of this section, <paramref name="height"/> mm thick, of 1 g/mm³.</summary>
    public MassProperties Slice(double height) => new(
        height * _area, height * _area, height * new Vector3D(_x, _y, _z * _area), height * _polar, height * _x * _z, height * _y * _z, 0, 0);

    private readonly record struct Side(double Direction, double Offset)
    {
        // Antiderivative of r (D + asin(c/r)).
        public double Area(double r) => (r * r / 2 * Angle(r)) + (Offset / 2 * Along(r));

        // Antiderivative of r³ (D + asin(c/r)).
        public double Polar(double r)
        {
            double along = Along(r);
            return (r * r * r * r / 4 * Angle(r)) + (Offset / 4 * ((along * along * along / 3) + (Offset * Offset * along)));
        }

        // Antiderivatives of r² sin and −r² cos of the angle: x and y swept up to this side.
        public Vector2D First(double r)
        {
            double along = Along(r);
            return new Vector2D(Offset * r * r / 2, -along * along * along / 3).Rotated(Direction);
        }

        private double Along(double r) => Math.Sqrt(Math.Max(0, (r * r) - (Offset * Offset)));

        private double Angle(double r) => Direction + (r > Math.Abs(Offset) ? Math.Asin(Offset / r) : Math.Sign(Offset) * Math.PI / 2);
    }
}
