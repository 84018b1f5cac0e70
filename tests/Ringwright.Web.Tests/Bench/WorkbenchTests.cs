using Ringwright.Core;
using Ringwright.Core.Documents;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Ringwright.Web.Bench;
using Ringwright.Web.Bench.Fields;

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
        Assert.Equal("3/4\" x", Text(RingFields.Diameter));
        Assert.Equal(19, _bench.Now.Good.Piece.Rings[0].Outside.Millimetres);
        FieldProblem problem = Assert.Single(_bench.Now.Problems);
        Assert.Equal("ring Disc, diameter", problem.Address);
        Assert.Equal(5, problem.Place!.Position);
        Assert.False(_bench.Now.IsCurrent);
    }

    [Fact]
    public void A_value_that_cannot_be_is_told_at_its_field()
    {
        _bench.Type(RingFields.Bore, "25 mm");
        Assert.Equal("ring Disc, bore", Assert.Single(_bench.Now.Problems).Address);
        _bench.Type(RingFields.Bore, "");
        Assert.Empty(_bench.Now.Problems);
        _bench.Type(Shop("saw.kerf"), "50 mm");
        Assert.Equal("saw.kerf", Assert.Single(_bench.Now.Problems).Address);
    }

    [Fact]
    public void All_fields_at_fault_are_told_together()
    {
        _bench.Type(RingFields.Diameter, "x");
        _bench.Type(RingFields.Thickness, "");
        Assert.Equal(["ring Disc, diameter", "ring Disc, thickness"], _bench.Now.Problems.Select(p => p.Address));
    }

    [Fact]
    public void Rings_follow_a_changed_outline_also_those_found_with_a_width_to_rip()
    {
        _bench.Put(Web.Library.NewPiece.All.First(p => p.Label == "Bowl").Make(_bench.Now));
        Assert.All(_bench.Now.Good.Piece.Rings.OfType<SegmentRing>(), r => Assert.NotNull(r.BoardWidth));
        foreach (double radius in (double[])[84, 74, 78])
            Assert.True(_bench.Change(w => Web.Bench.Edits.ShapeEdits.MovePoint(w, false, 3, radius, 46.5, 0.5)), _bench.Refused);
        // What is typed is not let go, and a ring that was not in the way keeps its width.
        Assert.Contains(_bench.Now.Good.Piece.Rings.OfType<SegmentRing>(), r => r.BoardWidth is null);
        _bench.Select(4);
        _bench.Type(RingFields.BoardWidth, "4 mm");
        Assert.Contains("too narrow", Assert.Single(_bench.Now.Problems).Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void What_can_be_used_goes_into_the_plan_while_another_field_waits()
    {
        _bench.Type(RingFields.Bore, "wide");
        _bench.Type(RingFields.Segments, "18");
        Assert.Equal(18, _bench.Now.Ring.Ring.Around);
        Assert.Equal("wide", Text(RingFields.Bore));
        Assert.False(_bench.Now.IsCurrent);
    }

    [Fact]
    public void Two_values_that_fit_only_together_are_taken_together()
    {
        _bench.Type(RingFields.Bore, "30 mm");
        Assert.Single(_bench.Now.Problems);
        _bench.Type(RingFields.Diameter, "40 mm");
        Assert.True(_bench.Now.IsCurrent);
        WedgeDisc disc = Assert.IsType<WedgeDisc>(_bench.Now.Good.Piece.Rings[0]);
        Assert.Equal((40, 30), (disc.Outside.Millimetres, disc.Bore!.Value.Millimetres));
    }

    [Fact]
    public void A_refused_value_waits_with_its_reason_while_the_rest_goes_on()
    {
        _bench.Type(RingFields.Bore, "25 mm");
        _bench.Type(RingFields.Segments, "18");
        Assert.Equal(18, _bench.Now.Ring.Ring.Around);
        Assert.Equal("25 mm", Text(RingFields.Bore));
        FieldProblem problem = Assert.Single(_bench.Now.Problems);
        Assert.Equal("ring Disc, bore", problem.Address);
        Assert.Contains("leaves nothing of a disc", problem.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void A_field_shows_what_is_typed_letter_by_letter_and_what_was_understood_when_it_is_left()
    {
        _bench.Type(RingFields.Diameter, "20");
        Assert.Equal("20", Text(RingFields.Diameter));
        _bench.EndRun();
        Assert.Equal("20 mm", Text(RingFields.Diameter));
    }

    [Fact]
    public void A_number_that_waits_keeps_its_meaning_when_the_units_change()
    {
        _bench.Type(RingFields.Bore, "25");
        _bench.Show(UnitChoice.InchFractions);
        Assert.Equal("25 mm", Text(RingFields.Bore));
        _bench.Type(RingFields.Diameter, "2");
        Assert.Equal(50.8, _bench.Now.Good.Piece.Rings[0].Outside.Millimetres);
        Assert.True(_bench.Now.IsCurrent);
    }

    [Fact]
    public void Tip_or_board_width_counts_never_both()
    {
        _bench.Type(RingFields.Tip, "0.5 mm");
        _bench.Type(RingFields.BoardWidth, "9 mm");
        WedgeDisc disc = Assert.IsType<WedgeDisc>(_bench.Now.Good.Piece.Rings[0]);
        Assert.Null(disc.Tip);
        Assert.Equal(9, disc.BoardWidth!.Value.Millimetres);
        Assert.Equal("", Text(RingFields.Tip));
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
        Assert.Equal("3", Text(RingFields.Segments));
        _bench.StepSegments(1);
        Assert.Equal("4", Text(RingFields.Segments));
    }

    [Fact]
    public void Undo_brings_back_text_and_plan()
    {
        _bench.Type(RingFields.Segments, "1");
        _bench.Type(RingFields.Segments, "18");
        _bench.Undo();
        Assert.Equal("24", Text(RingFields.Segments));
        Assert.Equal(24, _bench.Now.Ring.Ring.Around);
        _bench.Redo();
        Assert.Equal(18, _bench.Now.Ring.Ring.Around);
    }

    [Fact]
    public void Looking_at_another_ring_is_no_step()
    {
        Workbench bench = Example.BenchWith("feature-bowl.json");
        bench.Select(3);
        Assert.False(bench.CanUndo);
        Assert.Equal(3, bench.Now.Shown);
    }

    [Fact]
    public void A_value_is_typed_for_all_rings_that_are_chosen()
    {
        Workbench bench = Example.BenchWith("pen-barrel.json");
        for (int i = 1; i < bench.Now.Good.Rings.Length; i++) bench.Toggle(i);
        bench.Type(RingFields.Segments, "16");
        Assert.All(bench.Now.Good.Rings, r => Assert.Equal(16, r.Ring.Around));
        bench.Undo();
        Assert.DoesNotContain(bench.Now.Good.Rings, r => r.Ring.Around == 16);
    }

    [Fact]
    public void A_ring_is_renamed_letter_by_letter_and_what_waits_in_it_goes_along()
    {
        _bench.Type(RingFields.Bore, "x");
        foreach (string name in (string[])["D", "Do", "Dot"]) _bench.Type(RingFields.Name, name);
        Assert.Equal("Dot", _bench.Now.Good.Piece.Rings[0].Name);
        Assert.Equal("ring Dot, bore", Assert.Single(_bench.Now.Problems).Address);
        Assert.Equal("x", Text(RingFields.Bore));
        _bench.Undo();
        Assert.Equal("Disc", _bench.Now.Good.Piece.Rings[0].Name);
    }

    [Fact]
    public void A_change_that_cannot_be_is_refused_with_its_sentence_and_nothing_changes()
    {
        Sheet before = _bench.Now;
        Assert.False(_bench.Change(w => w.WithRings([])));
        Assert.Contains("at least one ring", _bench.Refused, StringComparison.Ordinal);
        Assert.Same(before, _bench.Now);
        _bench.Type(RingFields.Segments, "18");
        Assert.Null(_bench.Refused);
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
    public void An_untouched_share_keeps_all_its_digits()
    {
        Shop shop = Core.Pieces.Shop.Starting with { Hands = Core.Pieces.Shop.Starting.Hands with { Loss = 1.0 / 30 } };
        var bench = new Workbench(Sheet.Of(Example.Piece, shop));
        bench.Type(Shop("hands.loss"), bench.Now.TextOf(Shop("hands.loss")));
        Assert.Equal(1.0 / 30, bench.Now.Good.Shop.Hands.Loss);
    }

    [Fact]
    public void The_first_thing_to_fix_is_the_field_at_fault_then_the_doubt_then_nothing()
    {
        Assert.Null(Fixes.First(_bench.Now));
        _bench.Type(RingFields.Segments, "60");
        Assert.Equal(("/shape/rings", "finding-1"), (Fixes.First(_bench.Now)!.Url, Fixes.First(_bench.Now)!.ElementId));
        _bench.Type(Shop("saw.kerf"), "thin");
        Assert.Equal(("/saw", "field-saw-kerf"), (Fixes.First(_bench.Now)!.Url, Fixes.First(_bench.Now)!.ElementId));
    }

    [Fact]
    public void What_stands_on_the_desk_is_undone_like_all_else()
    {
        _bench.Note("find.heights", "1");
        _bench.Note("find.heights", "18 mm");
        Assert.Equal("18 mm", _bench.Now.Desk["find.heights"]);
        _bench.Undo();
        Assert.Equal("", _bench.Now.Desk["find.heights"]);
    }

    private static Lens Shop(string key) => ShopLenses.All.First(l => l.Field.Key == key);

    private string Text(Field field) => _bench.Now.TextOf(RingLenses.Of(_bench.Now.Work, _bench.Now.Shown).First(l => l.Field.Key == field.Key));
}
