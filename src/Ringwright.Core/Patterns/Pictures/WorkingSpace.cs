using Ringwright.Core.Geometry;
using Ringwright.Core.Timber.Colour;

namespace Ringwright.Core.Patterns.Pictures;

/// <summary>The colour space in which differences are handed on, its colours as points.</summary>
internal sealed record WorkingSpace(Func<LinearRgb, Vector3D> Point, Func<Vector3D, Lab> Lab)
{
    public static WorkingSpace Of(ErrorSpread spread) => spread == ErrorSpread.Lab
        ? new(PointOfLab, p => new Lab(p.X, p.Y, p.Z))
        : new(light => new(light.Red, light.Green, light.Blue), p => Timber.Colour.Lab.From(new(p.X, p.Y, p.Z)));

    private static Vector3D PointOfLab(LinearRgb light)
    {
        var lab = Timber.Colour.Lab.From(light);
        return new(lab.L, lab.A, lab.B);
    }
}
