using Ringwright.Core;
using Ringwright.Core.Fitting;
using Ringwright.Core.Measures;
using Ringwright.Web.Bench;
using Ringwright.Web.Stations;

namespace Ringwright.Web.Tests.Stations;

/// <summary>What is typed at the fit.</summary>
public class FitDeskTests
{
    [Theory]
    [InlineData("gathered", "", "rim", "", "0.4 mm", "", "gathered rim 0.4 mm")]
    [InlineData("gathered", "", "centre", "top", "closed", "", "gathered centre top closed")]
    [InlineData("joint", "3", "rim", "bottom", "0.1 mm", "0.02 mm", "joint 3 rim bottom 0.1 mm ± 0.02 mm")]
    [InlineData("half", "", "rim", "top", "closed", "", "half rim closed")]
    [InlineData("wedge", "", "rim", "", "14.9°", "0.1°", "wedge 14.9° ± 0.1°")]
    public void The_form_is_a_reading_in_the_words_of_the_shell(string kind, string joint, string end, string level, string gap, string sure, string text)
    {
        Assert.Equal(text, SeenForm.Text(kind, joint, end, level, gap, sure));
        Assert.NotNull(ReadingText.Read(text, "test", LengthUnit.Millimetre));
    }

    [Fact]
    public void Readings_give_the_same_answer_as_the_library()
    {
        Sheet sheet = Example.Sheet;
        Sheet typed = sheet with { Desk = sheet.Desk.With(new FitDesk(sheet).Name("seen"), "gathered rim closed\ngathered centre 0.4 mm") };
        FitDiagnosis found = FitDiagnosis.Of(DiagnosedRing.Of(typed.Ring, typed.Good.Shop.Sled), new FitDesk(typed).Observations());
        Assert.Equal(FenceMove.TowardsSquare, found.Correction.Move);
        Assert.Equal(found.Correction.RuleMove, SeenAnswer.Move(found).Value);
    }

    [Fact]
    public void Wedges_are_laid_by_wood_and_a_missing_one_is_waited_for()
    {
        Sheet sheet = Example.Sheet;
        DeskTexts desk = sheet.Desk;
        var empty = new FitDesk(sheet);
        (CaliperPlace rim, CaliperPlace tip) = (empty.Places[0], empty.Places[1]);
        foreach (CaliperRow row in empty.Rows) desk = desk.With(empty.Cell(row, rim), "2.61 mm").With(empty.Cell(row, tip), "0.12");
        Sheet typed = sheet with { Desk = desk };
        var full = new FitDesk(typed);
        CaliperReading[] laid = [.. full.AsTheyCome(full.Measured())!.Select(w => w.Below)];
        Assert.Equal(typed.Ring.Layout.Select(s => s.Wood), laid.Select(m => m.Wood));
        Assert.Equal(laid.Length, laid.Select(m => m.Number).Distinct().Count());
        CaliperRow[] maple = [.. full.Rows.Where(r => r.Wood == full.Rows[0].Wood)];
        Sheet fewer = typed with { Desk = maple.Aggregate(desk, (d, r) => d.With(full.Cell(r, rim), "")) };
        Assert.Null(new FitDesk(fewer).AsTheyCome(new FitDesk(fewer).Measured()));
        Sheet wrong = typed with { Desk = desk.With(full.Cell(full.Rows[2], tip), "thin") };
        Assert.Contains("wedge 3, tip", Assert.Throws<BadInputException>(() => new FitDesk(wrong).Measured()).Message, StringComparison.OrdinalIgnoreCase);
    }

    // What a caliper with a keyboard's plug types, in the one unit or the other, with a point or a comma.
    [Theory]
    [InlineData("12.34", "mm", 12.34)]
    [InlineData("12,34", "mm", 12.34)]
    [InlineData(" 12,34 mm ", "mm", 12.34)]
    [InlineData("0.4855", "in", 12.3317)]
    [InlineData("0,4855", "in", 12.3317)]
    [InlineData("0.4855in", "mm", 12.3317)]
    [InlineData("0.4855\"", "mm", 12.3317)]
    [InlineData("31/64", "in", 12.303125)]
    public void What_a_caliper_types_is_read(string typed, string unit, double millimetres)
    {
        Sheet sheet = Example.Sheet.In(unit == "in" ? UnitChoice.InchDecimals : UnitChoice.Millimetres);
        var desk = new FitDesk(sheet);
        CaliperRow row = desk.Rows[0];
        Sheet filled = sheet with { Desk = sheet.Desk.With(desk.Cell(row, desk.Places[0]), typed).With(desk.Cell(row, desk.Places[1]), "0") };
        Assert.Equal(millimetres, Assert.Single(new FitDesk(filled).Measured()).Wedge.Below.Rim, 1e-6);
    }

    [Fact]
    public void Wedges_of_two_widths_are_measured_in_turn_and_each_laid_in_its_own_places()
    {
        Sheet sheet = Example.BenchWith("mixed-ring.json").Now;
        var empty = new FitDesk(sheet);
        Assert.Equal([0, 1], empty.Rows.Select(r => r.Batch).Distinct());
        Assert.Equal(1, empty.Next!.Value.Number);
        Sheet typed = Filled(sheet, row => sheet.Ring.Batches[row.Batch].Glued);
        var desk = new FitDesk(typed);
        Assert.Null(desk.Next);
        IReadOnlyList<MeasuredWedge> laid = desk.AsTheyCome(desk.Measured())!;
        MeasuredRing ring = MeasuredRing.Of(sheet.Ring, sheet.Good.Shop.Sled, laid, desk.Depth);
        Assert.Equal(0, ring.Fit.Summary.WorstGap, 1e-3);
        Assert.Equal(2, ring.Kinds.Length);
        // The first that is missing is asked for, whichever width it is of.
        CaliperRow second = desk.Rows.First(r => r.Batch == 1);
        Sheet missing = typed with { Desk = typed.Desk.With(desk.Cell(second, desk.Places[1]), "") };
        Assert.Equal(second, new FitDesk(missing).Next);
        WedgeChoice choice = new Stock.Choosing.WedgeChooser().Choose(desk.Choice(desk.Measured()), null, TestContext.Current.CancellationToken);
        Dictionary<int, int> batches = desk.Rows.ToDictionary(r => r.Number, r => r.Batch);
        Assert.Equal(MeasuredRing.KindsOf(sheet.Ring), choice.Ring.Select(p => batches[p.Wedge.Number]));
    }

    [Fact]
    public void What_was_typed_hangs_on_the_ring_not_on_its_name()
    {
        Sheet sheet = Example.Sheet;
        string written = Web.Saving.DraftJson.Write(sheet with { Desk = sheet.Desk.With("fit.seen.Two-wood disc.Disc", "gathered rim 0.4 mm") });
        Sheet read = Web.Saving.DraftJson.Read(written);
        Assert.Equal("gathered rim 0.4 mm", Assert.Single(new FitDesk(read).Seen));
        var bench = new Workbench(read);
        bench.Type(Web.Bench.Fields.RingFields.Name, "Another");
        Assert.Single(new FitDesk(bench.Now).Seen);
        bench.Put(Example.Piece);
        Assert.Empty(new FitDesk(bench.Now).Seen);
    }

    private static Sheet Filled(Sheet sheet, Func<CaliperRow, Core.Rings.WedgeGeometry> of)
    {
        var desk = new FitDesk(sheet);
        DeskTexts texts = sheet.Desk;
        foreach (CaliperRow row in desk.Rows)
            foreach (CaliperPlace place in desk.Places)
                texts = texts.With(desk.Cell(row, place), FormattableString.Invariant($"{(place.Rim ? of(row).RimEdge : of(row).Tip):0.00000} mm"));
        return sheet with { Desk = texts };
    }
}
