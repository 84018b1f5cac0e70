using Ringwright.Core.Geometry;

namespace Ringwright.Core.Fitting;

/// <summary>A symmetric 3 x 3 matrix, and its L D L' factors once <see cref="Factor"/> was called.</summary>
internal struct Symmetric3
{
    private double _a00;
    private double _a10;
    private double _a20;
    private double _a11;
    private double _a21;
    private double _a22;

    /// <summary>Adds <paramref name="weight"/> v v'.</summary>
    public void AddOuter(double weight, Vector3D v)
    {
        double x = weight * v.X;
        double y = weight * v.Y;
        _a00 += x * v.X;
        _a10 += x * v.Y;
        _a20 += x * v.Z;
        _a11 += y * v.Y;
        _a21 += y * v.Z;
        _a22 += weight * v.Z * v.Z;
    }

    /// <summary>Adds <paramref name="value"/> to the diagonal.</summary>
    public void AddDiagonal(double value)
    {
        _a00 += value;
        _a11 += value;
        _a22 += value;
    }

    /// <summary>Replaces the positive definite matrix by its factors; false when a pivot is not positive.</summary>
    public bool Factor()
    {
        if (!(_a00 > 0)) return false;
        double l10 = _a10 / _a00;
        double l20 = _a20 / _a00;
        double d1 = _a11 - (l10 * _a10);
        if (!(d1 > 0)) return false;
        double u21 = _a21 - (l20 * _a10);
        double l21 = u21 / d1;
        double d2 = _a22 - (l20 * _a20) - (l21 * u21);
        (_a10, _a20, _a11, _a21, _a22) = (l10, l20, d1, l21, d2);
        return d2 > 0;
    }

    /// <summary>The solution of A v = b, after <see cref="Factor"/>.</summary>
    public readonly Vector3D Solve(Vector3D b)
    {
        double y = b.Y - (_a10 * b.X);
        double z = b.Z - (_a20 * b.X) - (_a21 * y);
        double v2 = z / _a22;
        double v1 = (y / _a11) - (_a21 * v2);
        return new((b.X / _a00) - (_a10 * v1) - (_a20 * v2), v1, v2);
    }
}
