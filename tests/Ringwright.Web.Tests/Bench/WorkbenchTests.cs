using Ringwright.Core;
using Ringwright.Core.Documents;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Ringwright.Web.Bench;

namespace Ringwright.Web.Tests.Bench;

public class WorkbenchTests
{
    private readonly Workbench _bench = Example.Bench;

    [Fact]
    public void Typing_a_number_plans_anew()
    {
        _bench.Type(RingFields.Segments, "18");
        Assert.Equal(18, _bench.Now.Ring.Ring.Around);
        Assert.Equal(Math.PI / 18, _bench.Now.Ring["mitre"].Value, 1e-12);
    }

    [Fact]
    public void Text_that_cannot_be_read_stays_and_the_last_good_plan_stays_beside_it()
    {
        _bench.Type(RingFields.Diameter, "3/4\" x");
        Assert.Equal("3/4\" x", _bench.Now.Draft.Ring[RingFields.Diameter]);
        Assert.Equal(19, _bench.Now.Good.Piece.Rings[0].Outside.Millimetres);
        FieldProblem problem = Assert.Single(_bench.Now.Problems);
        Assert.True(problem.Concerns(RingFields.Diameter, 0));
        Assert.Equal(5, problem.Place!.Position);
    }

    [Fact]
    public void A_value_that_cannot_be_is_told_at_its_field()
    {
        _bench.Type(RingFields.Bore, "25 mm");
        Assert.True(Assert.Single(_bench.Now.Problems).Concerns(RingFields.Bore, 0));
        _bench.Type(RingFields.Bore, "");
        _bench.Type(ShopFields.Main[0], "50 mm");
        Assert.True(Assert.Single(_bench.Now.Problems).Concerns(ShopFields.Main[0].Field, null));
    }

    [Fact]
    public void All_fields_at_fault_are_told_together()
    {
        _bench.Type(RingFields.Diameter, "x");
        _bench.Type(RingFields.Thickness, "");
        Assert.Equal(["diameter", "thickness"], _bench.Now.Problems.Select(p => p.Key));
    }

    [Fact]
    public void A_bare_number_keeps_its_meaning_when_the_units_change()
    {
        _bench.Type(RingFields.Diameter, "21");
        _bench.Show(UnitChoice.InchFractions);
        Assert.Equal("21 mm", _bench.Now.Draft.Ring[RingFields.Diameter]);
        Assert.Equal(21, _bench.Now.Good.Piece.Rings[0].Outside.Millimetres);
        _bench.Type(RingFields.Diameter, "1");
        Assert.Equal(25.4, _bench.Now.Good.Piece.Rings[0].Outside.Millimetres);
    }

    [Fact]
    public void Switching_the_construction_keeps_what_was_typed_for_each()
    {
        _bench.Type(RingFields.Bore, "6.5 mm");
        _bench.Build(Construction.SegmentRing);
        Assert.IsType<SegmentRing>(_bench.Now.Good.Piece.Rings[0]);
        Assert.Equal("9.5 mm", _bench.Now.Draft.Ring[RingFields.InnerDiameter]);
        _bench.Type(RingFields.InnerDiameter, "12 mm");
        _bench.Build(Construction.WedgeDisc);
        Assert.Equal(6.5, Assert.IsType<WedgeDisc>(_bench.Now.Good.Piece.Rings[0]).Bore!.Value.Millimetres);
        _bench.Build(Construction.SegmentRing);
        Assert.Equal(12, Assert.IsType<SegmentRing>(_bench.Now.Good.Piece.Rings[0]).InnerDiameter?.Millimetres);
    }

    [Fact]
    public void Tip_or_board_width_counts_never_both()
    {
        _bench.Type(RingFields.Tip, "0.5 mm");
        _bench.GiveInner(InnerBy.BoardWidth);
        Assert.Equal("boardWidth", Assert.Single(_bench.Now.Problems).Key);
        _bench.Type(RingFields.BoardWidth, "9 mm");
        WedgeDisc disc = Assert.IsType<WedgeDisc>(_bench.Now.Good.Piece.Rings[0]);
        Assert.Null(disc.Tip);
        Assert.Equal(9, disc.BoardWidth!.Value.Millimetres);
        Assert.Equal("0.5 mm", _bench.Now.Draft.Ring[RingFields.Tip]);
    }

    [Fact]
    public void The_change_a_finding_offers_is_made_and_the_finding_goes()
    {
        Finding finding = _bench.Now.Ring.Findings.First(f => f.Change is not null);
        _bench.Mend(finding.Ring, finding.Change!);
        Assert.Equal(0.75, _bench.Now.Ring.Glued.Tip, 1e-9);
        Assert.DoesNotContain(_bench.Now.Ring.Findings, f => f.Change is not null);
    }

    [Fact]
    public void Steppers_stop_at_what_can_be()
    {
        _bench.Type(RingFields.Segments, "3");
        _bench.StepSegments(-1);
        Assert.Equal("3", _bench.Now.Draft.Ring[RingFields.Segments]);
        _bench.StepSegments(1);
        Assert.Equal("4", _bench.Now.Draft.Ring[RingFields.Segments]);
    }

    [Fact]
    public void Undo_brings_back_text_and_plan()
    {
        _bench.Type(RingFields.Segments, "1");
        _bench.Type(RingFields.Segments, "18");
        _bench.Undo();
        Assert.Equal("24", _bench.Now.Draft.Ring[RingFields.Segments]);
        Assert.Equal(24, _bench.Now.Ring.Ring.Around);
        _bench.Redo();
        Assert.Equal(18, _bench.Now.Ring.Ring.Around);
    }

    [Fact]
    public void A_broken_file_leaves_the_bench_as_it_was()
    {
        Sheet before = _bench.Now;
        Assert.Throws<BadInputException>(() => _bench.Open(Example.Json[..80]));
        Assert.Same(before, _bench.Now);
        Assert.False(_bench.CanUndo);
    }

    [Fact]
    public void Fields_of_other_programs_stay_in_the_piece()
    {
        _bench.Open(Example.Json.Replace("\"units\": \"mm\",", "\"units\": \"mm\", \"colour\": \"by hand\",", StringComparison.Ordinal));
        _bench.Type(RingFields.Segments, "18");
        Assert.Contains("\"colour\": \"by hand\"", DocumentJson.Write(_bench.Now.Good.Piece), StringComparison.Ordinal);
    }

    [Fact]
    public void Every_ring_of_a_larger_piece_can_be_chosen_and_the_others_stay()
    {
        Piece two = Example.Piece with { Rings = [Example.Piece.Rings[0], Example.Piece.Rings[0] with { Name = "Rim" }] };
        _bench.Open(DocumentJson.Write(two));
        _bench.Select(1);
        _bench.Type(RingFields.Segments, "30");
        Assert.Equal([24, 30], _bench.Now.Good.Piece.Rings.Select(r => r.Around));
        Assert.Equal("Rim", _bench.Now.Ring.Ring.Name);
        _bench.Type(RingFields.Bore, "99 mm");
        Assert.Equal(1, Assert.Single(_bench.Now.Problems).Ring);
    }

    [Fact]
    public void An_untouched_share_keeps_all_its_digits()
    {
        Shop shop = Shop.Starting with { Hands = Shop.Starting.Hands with { Loss = 1.0 / 30 } };
        var bench = new Workbench(Sheet.Of(Example.Piece, shop), Example.Json);
        bench.Type(RingFields.Segments, "18");
        Assert.Equal(1.0 / 30, bench.Now.Good.Shop.Hands.Loss);
    }

    [Fact]
    public void The_first_thing_to_fix_is_the_field_at_fault_then_the_doubt_then_nothing()
    {
        Assert.Null(Fixes.First(_bench.Now));
        _bench.Type(RingFields.Segments, "60");
        Assert.Equal("finding-1", Fixes.First(_bench.Now)!.ElementId);
        _bench.Type(ShopFields.Main[0], "thin");
        Assert.Equal("field-saw-kerf", Fixes.First(_bench.Now)!.ElementId);
    }
}
