using Ringwright.Core;
using Ringwright.Core.Measures;
using Ringwright.Core.Planning;
using Ringwright.Paper.Drawings;
using Ringwright.Paper.Labels;
using Ringwright.Paper.Output;
using Ringwright.Paper.Sheets;
using Ringwright.Paper.Tests.JobSheets;
using Ringwright.Paper.Tests.Pictures;
using SkiaSharp;
using ZXing;
using ZXing.Common;

namespace Ringwright.Paper.Tests.Labels;

/// <summary>Stickers: their codes read back with ZXing.Net, an independent decoder, from the picture a printer would get.</summary>
public class LabelTests
{
    private static readonly Plan Plan = Example.PlanOf(Example.Disc);

    [Theory]
    [InlineData(null)]
    [InlineData("http://192.168.1.20:5080")]
    [InlineData("https://shop.example/")]
    public void Every_code_can_be_read(string? address)
    {
        Label[] labels = [.. Label.Of(Plan, MeasureStyle.Millimetres, address is null ? null : new Uri(address))];
        LabelGrid grid = LabelGrid.Plain;
        Drawing page = LabelSheets.Pages(labels, grid, PaperSize.A4).Single();
        string expected = address is null ? "Disc, Example" : $"{address.TrimEnd('/')}/rings/Disc/job-sheet.pdf";
        for (int i = 0; i < labels.Length; i++) Assert.Equal(expected, Decoded(page, grid.Place(PaperSize.A4, i)));
    }

    [Fact]
    public void A_name_of_any_script_survives_the_code()
    {
        Plan plan = Example.PlanOf(Example.Open with { Name = "Größter Ring, 環 & 1/2" });
        Drawing page = LabelSheets.Pages(Label.Of(plan, MeasureStyle.InchFractions), LabelGrid.Plain with { Columns = 2, Rows = 5 }, PaperSize.A4).Single();
        Assert.Equal("Größter Ring, 環 & 1/2, Example", Decoded(page, (LabelGrid.Plain with { Columns = 2, Rows = 5 }).Place(PaperSize.A4, 0)));
    }

    [Fact]
    public void There_is_one_for_the_ring_and_one_for_each_wood()
    {
        Label[] labels = [.. Label.Of(Plan, MeasureStyle.Millimetres)];
        Assert.Equal(1 + Plan.Rings[0].Woods.Length, labels.Length);
        WoodNeed maple = Plan.Rings[0].Woods[0];
        Assert.Contains(FormattableString.Invariant($"A {maple.Wood}: {maple.ToSaw} ({maple.Spares} spare)"), labels[1].Lines);
        Assert.Contains("mitre 7.5°", labels[1].Lines);
    }

    [Fact]
    public void Nothing_leaves_its_sticker_whatever_the_names_and_the_grid()
    {
        foreach (LengthUnit unit in Enum.GetValues<LengthUnit>())
        {
            Plan plan = AnyPiece.Of(Core.Pieces.PieceKind.Vase, 120, 220, 7, 36, 5, unit, longNames: true)!;
            foreach ((PaperSize paper, LabelGrid grid) in new[] { (PaperSize.A4, LabelGrid.Plain), (PaperSize.Letter, new LabelGrid(4, 14, 8, 8, 0, 0)), (PaperSize.A4, new LabelGrid(1, 2, 5, 5, 0, 0)) })
            {
                int i = 5 % grid.Count;
                foreach (Drawing page in LabelSheets.Pages(Label.Of(plan, MeasureStyle.For(unit)), grid, paper, skip: i))
                {
                    LayoutChecks.AssertClean(page, new(0, 0, paper.Width, paper.Height));
                    Box[] places = [.. Enumerable.Range(0, grid.Count).Select(n => grid.Place(paper, n))];
                    Assert.All(page.TextBoxes, text => Assert.Contains(places, place => place.Contains(text.Box)));
                }
            }
        }
    }

    [Fact]
    public void Stickers_lie_where_the_grid_says()
    {
        LabelGrid grid = new(3, 8, 7, 13, 2.5, 0);
        Box last = grid.Place(PaperSize.A4, 23);
        Assert.Equal(210 - 7, last.Right, 1e-9);
        Assert.Equal(297 - 13, last.Bottom, 1e-9);
        Assert.Equal((196 - 5) / 3.0, last.Width, 1e-9);
    }

    [Theory]
    [InlineData(9, 7, 10, 12, 3)] // too narrow
    [InlineData(3, 40, 10, 12, 3)] // too low
    [InlineData(0, 7, 10, 12, 3)]
    [InlineData(3, 7, -1, 12, 3)]
    [InlineData(3, 7, 10, 12, double.NaN)]
    public void Grids_that_cannot_be_are_refused(int columns, int rows, double across, double down, double gap) =>
        Assert.Throws<BadInputException>(() => new LabelGrid(columns, rows, across, down, gap, 2).On(PaperSize.A4));

    private static string? Decoded(Drawing page, Box place)
    {
        using var stream = new MemoryStream();
        PngWriter.Write(page, 300, stream);
        using SKBitmap bitmap = SKBitmap.Decode(stream.ToArray());
        const double Dots = 300 / 25.4;
        int x = (int)(place.X * Dots), y = (int)(place.Y * Dots), width = (int)(place.Width * Dots), height = (int)(place.Height * Dots);
        byte[] luminance = new byte[width * height];
        for (int row = 0; row < height; row++)
            for (int column = 0; column < width; column++)
                luminance[(row * width) + column] = bitmap.GetPixel(x + column, y + row).Green;
        var source = new RGBLuminanceSource(luminance, width, height, RGBLuminanceSource.BitmapFormat.Gray8);
        var reader = new MultiFormatReader { Hints = new Dictionary<DecodeHintType, object> { [DecodeHintType.POSSIBLE_FORMATS] = new List<BarcodeFormat> { BarcodeFormat.QR_CODE }, [DecodeHintType.TRY_HARDER] = true } };
        return reader.decode(new BinaryBitmap(new HybridBinarizer(source)))?.Text;
    }
}
