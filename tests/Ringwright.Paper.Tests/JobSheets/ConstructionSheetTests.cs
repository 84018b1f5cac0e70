using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Ringwright.Paper.JobSheets;
using Ringwright.Paper.Pictures;
using Ringwright.Paper.Sheets;

namespace Ringwright.Paper.Tests.JobSheets;

/// <summary>Sheets of rings whose segments stand apart or are not all alike.</summary>
public class ConstructionSheetTests
{
    private static readonly OpenRing Gapped = new()
    {
        Name = "Gapped",
        Segments = 24,
        Diameter = AnyPlan.Mm(160),
        InnerDiameter = AnyPlan.Mm(130),
        Thickness = AnyPlan.Mm(12),
        Gap = Angle.FromDegrees(3),
        Woods = ["ash"],
    };

    private static readonly MixedRing Mixed = new()
    {
        Name = "Mixed",
        Diameter = AnyPlan.Mm(200),
        InnerDiameter = AnyPlan.Mm(164),
        Thickness = AnyPlan.Mm(16),
        Parts = [new() { Wood = "maple", Share = 2 }, new() { Wood = "wenge", Thickness = AnyPlan.Mm(1.5) }, new() { Wood = "cherry" }, new() { Wood = "wenge", Thickness = AnyPlan.Mm(1.5) }],
        Repeats = 6,
    };

    [Fact]
    public void Each_batch_has_its_own_settings_cuts_and_outline()
    {
        Packet packet = Packet(Mixed);
        string[] names = [.. packet.Sheets.Select(s => s.Name)];
        Assert.Equal(9, names.Distinct().Count(n => n.Contains(": ", StringComparison.Ordinal)));
        Assert.Contains("Mixed: settings, wedge 2", names);
        string text = Text(packet);
        RingPlan ring = Example.PlanOf(Mixed).Rings[0];
        foreach (RingPlan batch in new[] { ring.Alone(0), ring.Alone(1) })
            Assert.All(["mitre", "rule-offset", "stop"], (string name) => Assert.Contains(MeasureStyle.Millimetres.Print(batch[name].Value, batch[name].Quantity), text, StringComparison.Ordinal));
        Assert.Contains("6 × (A1 (C) B2 (C))", text, StringComparison.Ordinal);
        Assert.Contains(MeasureStyle.Millimetres.Length(ring.Spacers[0].Length), text, StringComparison.Ordinal);
    }

    [Fact]
    public void Open_segments_are_not_asked_to_close()
    {
        string text = Text(Packet(Gapped));
        Assert.Contains("If the last gap is not like the others", text, StringComparison.Ordinal);
        Assert.DoesNotContain("If the dry ring gapes", text, StringComparison.Ordinal);
        RingPlan ring = Example.PlanOf(Gapped).Rings[0];
        Assert.All(["gap-at-rim", "gap-at-tip", "plate-circle", "plate-step"], (string name) => Assert.Contains(MeasureStyle.Millimetres.Length(ring[name].Value), text, StringComparison.Ordinal));
    }

    [Fact]
    public void Spacers_are_in_the_key_of_woods()
    {
        Assert.Equal(["maple", "cherry", "wenge"], WoodKey.Of(Mixed).Entries.Select(e => e.Wood));
        RingPlan ring = Example.PlanOf(Mixed).Rings[0];
        Assert.False(Assert.Single(RingPicture.ThinWoods(ring, 0.5)).Value);
        Assert.Empty(RingPicture.ThinWoods(ring, 5));
    }

    private static Packet Packet(Ring ring) => JobSheet.Packet(Example.PlanOf(ring), MeasureStyle.Millimetres, PaperSize.A4, new(2026, 3, 14));

    private static string Text(Packet packet) => string.Join(' ', packet.Pages().SelectMany(page => page.TextBoxes.Select(box => box.Text)));
}
