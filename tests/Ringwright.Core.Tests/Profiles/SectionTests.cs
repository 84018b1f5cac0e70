using System.Collections.Immutable;
using CsCheck;
using Ringwright.Core.Geometry;
using Ringwright.Core.Pieces;
using Ringwright.Core.Profiles;
using Ringwright.Core.Turning;
using static Ringwright.Core.Tests.Profiles.AnyShape;

namespace Ringwright.Core.Tests.Profiles;

public class SectionTests
{
    [Fact]
    public void Levels_are_even_and_the_floor_comes_twice()
    {
        var form = TurnedForm.Of(Walled(6, 10, At(100, 0), At(100, 80)));
        Assert.Equal(
            [new(0, 50, 0), new(8, 50, 0), new(10, 50, 0), new(10, 50, 44), new(16, 50, 44)],
            form.Section(0, 16, 2).Levels.ToArray());
        Assert.Equal([new(0, 50, 0), new(10, 50, 0)], form.Section(0, 10, 1).Levels.ToArray());
        Assert.Equal([new(10, 50, 44), new(20, 50, 44)], form.SectionWithin(10, 20, 0.01).Levels.ToArray());
    }

    [Fact]
    public void A_step_comes_twice_with_the_wood_below_it_first()
    {
        var form = TurnedForm.Of(Walled(5, null, At(100, 0), At(100, 40, true), At(60, 40, true), At(60, 80)));
        WallLevel[] doubled = [.. form.Section(30, 50, 4).Levels.Where(l => l.Z is 35 or 40)];
        Assert.Equal([new(35, 50, 45), new(35, 50, 30), new(40, 50, 25), new(40, 30, 25)], doubled);
    }

    [Fact]
    public void Sections_are_well_formed_and_keep_their_tolerance() => Gen.Select(Good, Gen.Double[0.005, 1]).Sample(
        (shape, tolerance) =>
        {
            var form = TurnedForm.Of(shape);
            foreach (WallSection section in new[] { form.SectionWithin(form.Bottom, form.Top, tolerance), form.Section(form.Bottom, form.Top, 5) })
            {
                Assert.Equal((form.Bottom, form.Top), (section.Levels[0].Z, section.Levels[^1].Z));
                Assert.All(section.Levels, l => Assert.True(l.Inner >= 0 && l.Inner < l.Outer));
                for (int i = 1; i < section.Levels.Length; i++)
                {
                    double rise = section.Levels[i].Z - section.Levels[i - 1].Z;
                    Assert.True(rise is 0 or > 1e-9, $"{rise}");
                    Assert.True(i < 2 || section.Levels[i].Z > section.Levels[i - 2].Z, "a level comes three times");
                }
            }

            ImmutableArray<WallLevel> levels = form.SectionWithin(form.Bottom, form.Top, tolerance).Levels;
            for (int i = 1; i < levels.Length; i++) KeepsTolerance(form, levels[i - 1], levels[i], tolerance);
        },
        iter: 100);

    /// <summary>Straight walls between corners need no level of their own, wherever rounding puts the corners.</summary>
    [Fact]
    public void Straight_walls_get_no_needless_levels() => Outer.Select(points => points.Select(p => p with { Sharp = true }).ToImmutableArray()).Sample(
        points =>
        {
            var shape = new Shape { Outer = points, Inside = new Bore { Diameter = Mm(5) } };
            if (points[0].Height == points[^1].Height || !IsGood(shape)) return;
            var form = TurnedForm.Of(shape);
            Assert.InRange(form.SectionWithin(form.Bottom, form.Top, 0.01).Levels.Length, 2, LevelsOf(points));
        });

    // Two for a step between its faces, one for a step at the bottom or top and for every other point.
    private static int LevelsOf(ImmutableArray<ShapePoint> points) => points.GroupBy(p => p.Height.Millimetres)
        .Sum(g => g.Key > points[0].Height.Millimetres && g.Key < points[^1].Height.Millimetres ? Math.Min(2, g.Count()) : 1);

    private static void KeepsTolerance(TurnedForm form, WallLevel low, WallLevel high, double tolerance)
    {
        if (low.Z == high.Z) return;
        for (int i = 1; i < 16; i++)
        {
            double z = low.Z + ((high.Z - low.Z) * i / 16);
            Assert.InRange(Off(new(low.Outer, low.Z), new(high.Outer, high.Z), new(form.Outer(z), z)), 0, tolerance * 1.0001);
            Assert.InRange(Off(new(low.Inner, low.Z), new(high.Inner, high.Z), new(form.Inner(z), z)), 0, tolerance * 1.0001);
        }
    }

    private static double Off(Vector2D a, Vector2D b, Vector2D point) => Math.Abs((b - a).Cross(point - a)) / (b - a).Length;
}
