using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Ringwright.Web.Bench;
using Ringwright.Web.Bench.Edits;
using Ringwright.Web.Bench.Fields;

namespace Ringwright.Web.Tests.Bench.Edits;

public class EditTests
{
    public static TheoryData<string> Kinds => [.. Constructions.All.Select(c => c.Name)];

    [Theory]
    [MemberData(nameof(Kinds))]
    public void A_plain_disc_can_be_built_every_way_and_back(string construction)
    {
        Workbench bench = Example.Bench;
        bench.Type(RingFields.Bore, "6.5 mm");
        Assert.True(bench.Change(s => Constructions.Switch(s, construction)), bench.Refused);
        Assert.Equal(construction, Constructions.NameOf(bench.Now.Good.Piece.Rings[0]));
        Assert.True(bench.Change(s => Constructions.Switch(s, WedgeDisc.ConstructionName)), bench.Refused);
        Assert.Equal(6.5, Assert.IsType<WedgeDisc>(bench.Now.Good.Piece.Rings[0]).Bore!.Value.Millimetres);
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void A_ring_of_a_bowls_wall_can_be_built_every_way(string construction)
    {
        Workbench bench = Example.BenchWith("feature-bowl.json");
        bench.Select(8);
        bool done = bench.Change(s => Constructions.Switch(s, construction));
        Assert.True(done, bench.Refused);
        Assert.Equal(construction, Constructions.NameOf(bench.Now.Good.Piece.Rings[8]));
    }

    [Fact]
    public void Rings_are_added_moved_split_and_merged()
    {
        Workbench bench = Example.Bench;
        double high = Height(bench);
        Assert.True(bench.Change(w => RingEdits.AddAbove(w, 0)));
        Assert.Equal(["Disc", "Ring 2"], Names(bench));
        Assert.True(bench.Change(w => RingEdits.Move(w, 0, 1)));
        Assert.Equal(["Ring 2", "Disc"], Names(bench));
        Assert.True(bench.Change(w => RingEdits.Split(w, 0)));
        Assert.Equal(["Ring 2", "Ring 3", "Disc"], Names(bench));
        Assert.Equal(2 * high, Height(bench), 1e-9);
        Assert.True(bench.Change(w => RingEdits.Merge(w, [0, 1, 2])));
        Assert.Equal(2 * high, bench.Now.Good.Piece.Rings.Single().Thickness.Millimetres, 1e-9);
        Assert.False(bench.Change(w => RingEdits.Remove(w, [0])));
        Assert.Contains("at least one ring", bench.Refused, StringComparison.Ordinal);
    }

    [Fact]
    public void Only_neighbours_become_one()
    {
        Workbench bench = Example.BenchWith("pen-barrel.json");
        Assert.False(bench.Change(w => RingEdits.Merge(w, [0, 2])));
        Assert.Contains("neighbours", bench.Refused, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(40.26, 30.1, 40.5, 30)]
    [InlineData(-3, 30.1, 0.25, 30)]
    public void A_dragged_point_snaps_and_stays_between_its_neighbours(double radius, double height, double radiusThen, double heightThen)
    {
        Work work = Example.BenchWith("feature-bowl.json").Now.Work;
        Work moved = ShapeEdits.MovePoint(work, inner: false, 2, radius, height, 0.5);
        ShapePoint point = moved.Piece.Shape!.Outer[2];
        Assert.Equal((2 * radiusThen, heightThen), (point.Diameter.Millimetres, point.Height.Millimetres));
        Assert.Equal(work.Piece.Shape!.Outer[3].Height, ShapeEdits.MovePoint(work, inner: false, 2, 40, 1e4, 0.5).Piece.Shape!.Outer[2].Height);
        Assert.Equal(work.Piece.Shape.Outer[1].Height, ShapeEdits.MovePoint(work, inner: false, 2, 40, -5, 0.5).Piece.Shape!.Outer[2].Height);
    }

    [Fact]
    public void A_new_point_lies_on_the_curve_and_leaves_it_nearly_as_it_was()
    {
        Work work = Example.BenchWith("feature-bowl.json").Now.Work;
        Work more = ShapeEdits.AddPoint(work, inner: false, 2);
        Assert.Equal(work.Piece.Shape!.Outer.Length + 1, more.Piece.Shape!.Outer.Length);
        double before = Planner.Plan(work.Piece, work.Shop).Form!.Volume, after = Planner.Plan(more.Piece, more.Shop).Form!.Volume;
        Assert.Equal(1, after / before, 0.01);
        Assert.Equal(work.Piece.Shape.Outer.Length, ShapeEdits.RemovePoint(more, inner: false, 3).Piece.Shape!.Outer.Length);
    }

    [Theory]
    [InlineData("wall")]
    [InlineData("bore")]
    [InlineData("drawn")]
    [InlineData("solid")]
    public void A_box_can_be_hollowed_every_way(string kind)
    {
        Work work = Example.BenchWith("lidded-box.json").Now.Work;
        Shape shape = ShapeEdits.Inside(work, kind).Piece.Shape!;
        var form = Core.Profiles.TurnedForm.Of(shape);
        Assert.Equal(kind == "solid", form.IsSolid);
    }

    [Fact]
    public void A_scaled_outline_is_as_wide_and_high_as_asked()
    {
        Shape shape = Example.BenchWith("feature-bowl.json").Now.Good.Piece.Shape!;
        var form = Core.Profiles.TurnedForm.Of(ShapeEdits.Scaled(shape, 150, 60));
        Assert.Equal(60, form.Height, 0.02);
        Assert.Equal(150, 2 * form.Extents(form.Bottom, form.Top).MaxOuter, 0.02);
    }

    [Fact]
    public void Every_kind_of_outline_starts_from_plain_rings()
    {
        foreach (PieceKind kind in Enum.GetValues<PieceKind>())
        {
            Workbench bench = Example.BenchWith("walnut-ring.json");
            Work started = ShapeEdits.Start(bench.Now.Work, kind);
            Assert.NotNull(Core.Profiles.TurnedForm.Of(started.Piece.Shape!));
        }
    }

    private static IEnumerable<string> Names(Workbench bench) => bench.Now.Good.Piece.Rings.Select(r => r.Name);

    private static double Height(Workbench bench) => bench.Now.Good.Piece.Rings.Sum(r => r.Thickness.Millimetres);
}
