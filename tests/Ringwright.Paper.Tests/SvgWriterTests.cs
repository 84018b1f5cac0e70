using System.Globalization;
using System.Xml.Linq;
using Ringwright.Paper.Drawings;
using Ringwright.Paper.Lettering;
using Ringwright.Paper.Output;
using Ringwright.Paper.Sheets;

namespace Ringwright.Paper.Tests;

public class SvgWriterTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    [Fact]
    public void The_root_has_its_size_in_millimetres_and_one_unit_per_millimetre()
    {
        XElement root = Parse(new Drawing(215.9, 279.4));
        Assert.Equal("215.9mm", (string?)root.Attribute("width"));
        Assert.Equal("279.4mm", (string?)root.Attribute("height"));
        Assert.Equal("0 0 215.9 279.4", (string?)root.Attribute("viewBox"));
    }

    [Fact]
    public void A_whole_page_parses_and_keeps_every_text_as_text()
    {
        Drawing page = new SamplePacket(PaperSize.A4, SampleValues.LongestInches).Make().Pages()[0];
        string[] texts = [.. Parse(page).Descendants(Svg + "text").Select(text => text.Value)];
        Assert.Equal(page.TextBoxes.Select(box => box.Text), texts);
    }

    [Fact]
    public void Text_and_title_that_look_like_markup_or_hold_broken_characters_stay_text()
    {
        string nasty = "<b>&\"\u0000\uD800\uFFFF ü";
        Drawing drawing = new Drawing(80, 20).Text(nasty, new(5, 10), TypeScale.Body);
        XElement root = XElement.Parse(SvgWriter.Write(drawing, nasty));
        string clean = "<b>&\" \uFFFD  ü";
        Assert.Equal(clean, root.Element(Svg + "text")!.Value);
        Assert.Equal(clean, root.Element(Svg + "title")!.Value);
    }

    [Fact]
    public void A_circle_is_two_arcs_of_its_radius()
    {
        XElement path = Parse(new Drawing(60, 60).Stroke(Outline.Circle(new(30, 30), 12.5), Pens.Fine)).Element(Svg + "path")!;
        Assert.Equal("M42.5 30A12.5 12.5 0 0 1 17.5 30A12.5 12.5 0 0 1 42.5 30Z", (string?)path.Attribute("d"));
        Assert.Equal("0.18", (string?)path.Attribute("stroke-width"));
    }

    [Fact]
    public void A_placed_drawing_is_moved_and_stretched_as_a_group()
    {
        Drawing child = new Drawing(10, 10).Line(default, new(10, 0), Pens.Fine);
        XElement group = Parse(new Drawing(50, 50).Place(child, new(5, 6), 1.01, 0.99)).Element(Svg + "g")!;
        Assert.Equal("translate(5 6) scale(1.01 0.99)", (string?)group.Attribute("transform"));
    }

    [Fact]
    public void Numbers_do_not_follow_the_country_of_the_machine()
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo comma = (CultureInfo)CultureInfo.InvariantCulture.Clone();
            comma.NumberFormat.NumberDecimalSeparator = ",";
            CultureInfo.CurrentCulture = comma;
            Assert.Equal("0 0 1.5 2.25", (string?)Parse(new Drawing(1.5, 2.25)).Attribute("viewBox"));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    private static XElement Parse(Drawing drawing) => XElement.Parse(SvgWriter.Write(drawing));
}
