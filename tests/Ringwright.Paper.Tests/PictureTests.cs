using CsCheck;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Ringwright.Core.Sawing;
using Ringwright.Paper.Drawings;
using Ringwright.Paper.Pictures;
using Ringwright.Paper.Tests.JobSheets;

namespace Ringwright.Paper.Tests;

public class PictureTests
{
    private static readonly RingPlan Disc = Example.PlanOf(Example.Disc).Rings[0];

    [Fact]
    public void Pictures_take_the_largest_preferred_scale_and_stay_in_their_room()
    {
        Room room = new(101, 120);
        ScaledPicture ring = RingPicture.Draw(Disc, MeasureStyle.Millimetres, room);
        Assert.Equal("5:1", ring.Scale.ToString());
        Assert.True(ring.Drawing.Width <= room.Width && ring.Drawing.Height <= room.Height);
        Assert.Throws<LayoutException>(() => RingPicture.Draw(Disc, MeasureStyle.Millimetres, new(10, 10)));
    }

    [Fact]
    public void Every_wood_of_a_ring_has_its_own_letter_and_as_long_as_they_last_its_own_pattern()
    {
        // padauk, purpleheart and bloodwood have the same mark when drawn alone
        Ring ring = Example.Disc with { Woods = ["padauk", "purpleheart", "bloodwood", "maple", "holly", "oak", "Padauk", "beech"] };
        WoodKey key = WoodKey.Of(ring);
        Assert.Equal(["A", "B", "C", "D", "E", "F", "G"], key.Entries.Select(e => e.Letter));
        Assert.Equal(7, key.Entries.Select(e => e.Hatch).Distinct().Count());
        Assert.Equal(key["padauk"], key["PADAUK"]);
    }

    [Fact]
    public void Letters_go_on_after_z()
    {
        Ring ring = Example.Disc with { Segments = 360, Woods = [.. Enumerable.Range(0, 360).Select(i => $"wood {i}")] };
        IReadOnlyList<WoodEntry> entries = WoodKey.Of(ring).Entries;
        Assert.Equal(["Z", "AA", "AB"], entries.Skip(25).Take(3).Select(e => e.Letter));
        Assert.Equal(360, entries.Select(e => e.Letter).Distinct().Count());
    }

    [Theory]
    [InlineData(0.0002)]
    [InlineData(-0.0002)]
    [InlineData(0)]
    public void The_correction_is_drawn_towards_the_side_the_fence_must_go(double change)
    {
        Drawing picture = CorrectionPicture.Draw(new(SledKind.TwoFences, 0.13, change, 0, 300), MeasureStyle.Millimetres, new(60, 62));
        (double before, double after) = (EndOf(picture, Pens.Hidden), EndOf(picture, Pens.Heavy));
        Assert.Equal(Math.Sign(change), Math.Sign(Math.Round(after - before, 6)));
        Assert.True(picture.Width <= 60 && picture.Height <= 62);
    }

    [Fact]
    public void The_test_cuts_say_what_one_sees()
    {
        string[] words = [.. TestCutPicture.Of(Disc).Select(cut => TestCutPicture.InWords(cut).In(MeasureStyle.Millimetres))];
        Assert.Contains("too wide", words[0], StringComparison.Ordinal);
        Assert.Contains("Move the stop nearer", words[0], StringComparison.Ordinal);
        Assert.Contains("before the far edge", words[2], StringComparison.Ordinal);
        Assert.Contains("Move the stop away", words[2], StringComparison.Ordinal);
    }

    [Fact]
    public void The_right_test_cut_has_the_size_of_the_sawn_wedge()
    {
        TestCut right = TestCutPicture.Of(Disc).Single(cut => cut.Setting == TestCutSetting.Right);
        Assert.Equal(Disc["sawn-rim-edge"].Value, right.RimLength, 1e-9);
        Assert.Equal(Disc["sawn-tip"].Value, right.TipLength, 1e-9);
    }

    [Fact]
    public void Wedges_too_small_to_simulate_have_no_test_cut_rather_than_a_false_one()
    {
        Ring speck = Example.Disc with { Segments = 360, Diameter = AnyPlan.Mm(1), Bore = null };
        Plan plan = Planner.Plan(new() { Name = "Speck", Rings = [speck] }, Shop.Starting with { Sanding = new() { PerFace = AnyPlan.Mm(0) } });
        Assert.Empty(TestCutPicture.Of(plan.Rings[0]));
    }

    [Theory]
    [InlineData(400, 14)]
    [InlineData(3000, 40)]
    [InlineData(120, 1)]
    public void The_strip_stays_in_its_width_and_numbers_its_first_and_last_wedge(double length, int wedges)
    {
        ScaledPicture strip = StripPicture.Draw(Disc, MeasureStyle.Millimetres, length, wedges, 168);
        Assert.True(strip.Drawing.Width <= 168);
        string[] texts = [.. strip.Drawing.TextBoxes.Select(b => b.Text)];
        Assert.Contains("1", texts);
        Assert.Contains($"{wedges}", texts);
    }

    // Where the fence ends at the left, from the top of the picture.
    private static double EndOf(Drawing picture, Pen pen) => picture.Marks.OfType<Mark.Placed>().Single().Child.Marks
        .OfType<Mark.Stroke>().Single(s => ReferenceEquals(s.Pen, pen)).Outline.Flattened().Single()[^1].Y;
}
