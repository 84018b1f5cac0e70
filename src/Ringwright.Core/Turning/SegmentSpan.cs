namespace Ringwright.Core.Turning;

/// <summary>The angles between a segment's two sides, anywhere in the ring.</summary>
internal readonly struct SegmentSpan
{
    private const double FullTurn = 2 * Math.PI;

    // A plane stands Constant + z · Slope from the half-plane at its direction, mm.
    private readonly double _fromConstant;
    private readonly double _fromSlope;
    private readonly double _toConstant;
    private readonly double _toSlope;
    private readonly RadialLimits? _limits;

    public SegmentSpan(TurnedSegment segment)
        : this(segment.From, segment.To, null)
    {
    }

    /// <summary>Between two sides, where the limits say; everywhere between them without.</summary>
    public SegmentSpan(JointPlane from, JointPlane to, RadialLimits? limits)
    {
        (FromPlane, ToPlane, _limits) = (from, to, limits);
        _fromConstant = from.Offset / Math.Cos(from.Tilt);
        _fromSlope = Math.Tan(from.Tilt);
        _toConstant = to.Offset / Math.Cos(to.Tilt);
        _toSlope = Math.Tan(to.Tilt);
        bool sameSide = _fromConstant == _toConstant && _fromSlope == _toSlope && limits is null;
        IsFullTurn = sameSide && Math.Abs(Angle - FullTurn) < 1e-9;
        IsRadial = IsFullTurn || (sameSide && _fromConstant == 0 && _fromSlope == 0);
    }

    public JointPlane FromPlane { get; }

    public JointPlane ToPlane { get; }

    /// <summary>Directions of the two sides, radians.</summary>
    public double From => FromPlane.Direction;

    public double To => ToPlane.Direction;

    /// <summary>Heights at which the limits change from one line to another, from the bottom up.</summary>
    public double[] Kinks() => _limits?.Kinks() ?? [];

    /// <summary>From one direction to the other, radians.</summary>
    public double Angle => To - From;

    /// <summary>Whether it is a whole disc or ring in one piece, without joints.</summary>
    public bool IsFullTurn { get; }

    /// <summary>Whether its angles are the same at all radii and heights.</summary>
    public bool IsRadial { get; }

    /// <summary>Where the first side stands, radians; a plane that does not come so near the axis is taken at its nearest.</summary>
    public double FromAt(double r, double z) => IsRadial ? From : From + Turned(FromOffset(z), r);

    /// <summary>Where the second side stands, radians.</summary>
    public double ToAt(double r, double z) => IsRadial ? To : To + Turned(ToOffset(z), r);

    /// <summary>The angle between the sides, radians; not above zero where there is no wood between them.</summary>
    public double Width(double r, double z) => ToAt(r, z) - FromAt(r, z);

    public double FromOffset(double z) => IsRadial ? 0 : _fromConstant + (z * _fromSlope);

    public double ToOffset(double z) => IsRadial ? 0 : _toConstant + (z * _toSlope);

    /// <summary>
    /// Between which radii there is wood at this height, mm: from where the two sides meet (or both are there) outward, or
    /// inward from where they meet. The sides are straight lines there, so they meet once at most.
    /// </summary>
    public (double Least, double Greatest) Reach(double z)
    {
        if (_limits is not null) return _limits.At(z);
        if (IsRadial) return Angle > 0 ? (0, double.PositiveInfinity) : (double.PositiveInfinity, double.PositiveInfinity);
        double nearest = Math.Max(Math.Abs(FromOffset(z)), Math.Abs(ToOffset(z)));
        double tip = Tip(z);
        bool meets = tip >= nearest && Math.Abs(Width(tip, z)) < 1;
        bool woodOutside = Width((2 * (meets ? tip : nearest)) + 1, z) > 0;
        return (woodOutside, meets) switch
        {
            (true, _) => (meets ? tip : nearest, double.PositiveInfinity),
            (false, true) => (nearest, tip),
            (false, false) => (double.PositiveInfinity, double.PositiveInfinity),
        };
    }

    // Radius at which the two sides cross in front of the axis; NaN where they do not. In the frame of the first side
    // (u along it) the second is −u sin a + from cos a = to.
    private double Tip(double z)
    {
        double from = FromOffset(z);
        double to = ToOffset(z);
        (double sin, double cos) = Math.SinCos(Angle);
        if (Math.Abs(sin) < 1e-12) return double.NaN;
        double u = ((from * cos) - to) / sin;
        double v = (u * cos) + (from * sin);
        double rounding = 1e-9 * (Math.Abs(from) + Math.Abs(to));
        return u < -rounding || v < -rounding ? double.NaN : Math.Sqrt((u * u) + (from * from));
    }

    private static double Turned(double offset, double r) => r > Math.Abs(offset) ? Math.Asin(offset / r) : Math.Sign(offset) * Math.PI / 2;
}
