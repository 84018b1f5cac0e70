using Ringwright.Core.Documents;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Web.Bench;
using Ringwright.Web.Bench.Fields;

namespace Ringwright.Web.Tests.Bench.Fields;

public class LensTests
{
    public static TheoryData<string> Files => [.. Example.Files];

    [Theory]
    [MemberData(nameof(Files))]
    public void Every_field_of_every_example_reads_back_what_it_shows_and_is_found_by_its_address(string file)
    {
        Work work = Example.BenchWith(file).Now.Work;
        foreach (Lens lens in LensBook.All(work))
        {
            Assert.Equal(lens.Id, LensBook.Find(work, lens.AddressIn(work))?.Id);
            (Work same, ParseError? error) = lens.Write(work, lens.Read(work), LengthUnit.Millimetre);
            Assert.Null(error);
            Assert.Same(work, same);
            // A text that says the same in other letters gives an equal document.
            if (lens.Field.Kind is FieldKind.Words or FieldKind.Text) continue;
            (Work rewritten, error) = lens.Write(work, lens.Read(work) + " ", LengthUnit.Millimetre);
            Assert.Null(error);
            if (lens.Field.Kind != FieldKind.Wood) Assert.Equal(DocumentJson.Write(work.Piece), DocumentJson.Write(rewritten.Piece));
        }
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void Ids_on_one_page_are_different(string file)
    {
        Work work = Example.BenchWith(file).Now.Work;
        // Those of the rings stand on one page with what is on every page, one ring at a time.
        for (int i = 0; i < work.Piece.Rings.Length; i++)
        {
            string[] ids = [.. LensBook.All(work).Where(l => l.Place.Ring is null || l.Place.Ring == i).Select(l => l.Id)];
            Assert.Equal(ids.Length, ids.Distinct(StringComparer.Ordinal).Count());
        }
    }

    [Theory]
    [InlineData("lidded-box.json", "floor", "500 mm", "inside-floor")]
    [InlineData("feature-bowl.json", "outer curve, point 2, height", "90 mm", "outer")]
    [InlineData("two-wood-disc.json", "ring Disc, woods 1", "", "woods 1")]
    [InlineData("zigzag-band.json", "climate.home.winter.humidity", "120", "climate.home.winter.humidity")]
    public void A_refusal_of_the_library_is_told_at_a_field(string file, string address, string text, string at)
    {
        Workbench bench = Example.BenchWith(file);
        Lens lens = LensBook.Find(bench.Now.Work, address)!;
        bench.Type(lens, text);
        FieldProblem problem = Assert.Single(bench.Now.Problems);
        Assert.NotNull(problem.Address);
        Lens told = LensBook.Find(bench.Now.Work, problem.Address)!;
        Assert.Contains(at, told.Id.Replace('-', ' ') + told.Id + told.AddressIn(bench.Now.Work), StringComparison.Ordinal);
    }

    [Fact]
    public void Own_woods_are_typed_and_used()
    {
        Workbench bench = Example.Bench;
        bench.Change(w => w.WithShop(s => s with { Species = [new OwnWood { Name = "quince", Density = 700, ShrinkageRadial = 5, ShrinkageTangential = 9 }] }));
        Lens density = OwnWoodLenses.Of(0).First(l => l.Field.Key == "density");
        bench.Type(density, "810 kg/m³");
        Assert.Equal(810, bench.Now.Good.Shop.Species!.Value[0].Density);
        bench.Type(density, "");
        Assert.Contains("density", Assert.Single(bench.Now.Problems).Address, StringComparison.Ordinal);
    }
}
