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
        foreach (CaliperRow row in empty.Rows) desk = desk.With(empty.Cell(row, true), "2.61 mm").With(empty.Cell(row, false), "0.12");
        Sheet typed = sheet with { Desk = desk };
        var full = new FitDesk(typed);
        IReadOnlyList<CaliperReading> laid = full.AsTheyCome(full.Measured())!;
        Assert.Equal(typed.Ring.Layout.Select(s => s.Wood), laid.Select(m => m.Wood));
        Assert.Equal(laid.Count, laid.Select(m => m.Number).Distinct().Count());
        CaliperRow[] maple = [.. full.Rows.Where(r => r.Wood == full.Rows[0].Wood)];
        Sheet fewer = typed with { Desk = maple.Aggregate(desk, (d, r) => d.With(full.Cell(r, true), "")) };
        Assert.Null(new FitDesk(fewer).AsTheyCome(new FitDesk(fewer).Measured()));
        Sheet wrong = typed with { Desk = desk.With(full.Cell(full.Rows[2], false), "thin") };
        Assert.Contains("wedge 3, tip", Assert.Throws<BadInputException>(() => new FitDesk(wrong).Measured()).Message, StringComparison.OrdinalIgnoreCase);
    }
}
