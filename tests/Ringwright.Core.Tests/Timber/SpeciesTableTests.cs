using Ringwright.Core.Documents;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Timber;

namespace Ringwright.Core.Tests.Timber;

public class SpeciesTableTests
{
    private static readonly SpeciesTable Table = SpeciesTable.Standard;

    public static TheoryData<string> Names => [.. Table.All.Select(s => s.Name)];

    [Fact]
    public void There_are_more_than_forty_and_no_name_twice()
    {
        Assert.InRange(Table.All.Length, 41, 500);
        string[] names = [.. Table.All.SelectMany(s => s.Aliases.Append(s.Name))];
        Assert.Equal(names.Length, names.Distinct(StringComparer.OrdinalIgnoreCase).Count());
    }

    // Bounds of the Wood Handbook's tables, with room: no typing error of a digit passes them.
    [Theory]
    [MemberData(nameof(Names))]
    public void Every_value_can_be_and_names_its_source(string name)
    {
        Species s = Table.Find(name)!;
        Check(s.Density, 350, 1200);
        Check(s.RadialShrinkage, 0.02, 0.1);
        Check(s.TangentialShrinkage, 0.03, 0.13);
        Check(s.RadialChange, 0.0008, 0.0036);
        Check(s.TangentialChange, 0.0011, 0.0047);
        Check(s.Modulus, 6000, 23_000);
        Check(s.Shear, 6, 25);
        Check(s.TensionAcross, 2, 13);
        Check(s.RadialStiffness, 0.05, 0.25);
        Check(s.TangentialStiffness, 0.02, 0.12);
        if (s.Hardness is Sourced hardness) Check(hardness, 1000, 17_000);
        Assert.True(s.TangentialShrinkage.Value > s.RadialShrinkage.Value);
        Assert.True(s.TangentialStiffness.Value < s.RadialStiffness.Value);
        Assert.All([s.Fresh, s.Aged], c => Assert.True(c.L is > 10 and < 95 && c.Source.Length > 0));
        Assert.InRange(s.Mark, 0, Wood.Marks - 1);
        Assert.Matches("^#[0-9a-f]{6}$", s.Hex);
    }

    // Wood Handbook FPL-GTR-190, Table 4-3 (looked up): shrinkage percent radial, tangential; Table 13-5: C_R, C_T; Table 5-3b: specific gravity.
    [Theory]
    [InlineData("maple", 4.8, 9.9, 0.00165, 0.00353, 0.63)]
    [InlineData("beech", 5.5, 11.9, 0.00190, 0.00431, 0.64)]
    [InlineData("cherry", 3.7, 7.1, 0.00126, 0.00248, 0.50)]
    [InlineData("ash", 4.9, 7.8, 0.00169, 0.00274, 0.60)]
    [InlineData("basswood", 6.6, 9.3, 0.00230, 0.00330, 0.37)]
    [InlineData("black walnut", 5.5, 7.8, 0.00190, 0.00274, 0.55)]
    [InlineData("birch", 7.3, 9.5, 0.00256, 0.00338, 0.62)]
    public void Cells_are_the_handbook_s(string name, double radial, double tangential, double cr, double ct, double gravity)
    {
        Species s = Table.Find(name)!;
        Assert.Equal((radial, tangential), (100 * s.RadialShrinkage.Value, 100 * s.TangentialShrinkage.Value), Near);
        Assert.Equal((cr, ct), (s.RadialChange.Value, s.TangentialChange.Value), Near);
        Assert.Equal(1120 * gravity, s.Density.Value, 1e-9);
    }

    // Wood Handbook FPL-GTR-190, Table 5-3a prints 16100 kPa for the shear of sugar maple.
    [Fact]
    public void Strengths_come_out_in_megapascals() => Assert.Equal(16.1, Table.Find("sugar maple")!.Shear.Value, 0.05);

    [Fact]
    public void Every_swatch_is_the_table_s()
    {
        Assert.Equal(Table.All.Length, Wood.All.Length);
        Assert.Equal(Table.Find("hard maple")!.Hex, Wood.Named("Maple").Hex);
        Assert.Equal("maple", Wood.Named(" Maple ").Name);
    }

    [Fact]
    public void Own_values_replace_the_table_s_and_others_stay()
    {
        Species mine = Table.With([new() { Name = "Walnut", Density = 640, ShrinkageTangential = 8, Source = "weighed" }]).Find("walnut")!;
        Assert.Equal(new Sourced(640, "weighed"), mine.Density);
        Assert.Equal(1 / ((30 / 0.08) - 20), mine.TangentialChange.Value, 1e-12);
        Assert.Equal(Table.Find("walnut")!.RadialChange, mine.RadialChange);
    }

    [Fact]
    public void An_own_wood_is_found_by_its_other_names_and_the_rest_is_worked_out()
    {
        SpeciesTable table = Table.With([new() { Name = "plum", Aliases = ["garden plum"], Density = 700, ShrinkageRadial = 5, ShrinkageTangential = 9 }]);
        Species plum = table.Find("Garden Plum")!;
        Assert.Equal("plum", plum.Name);
        Assert.InRange(plum.TensionAcross.Value, 4, 7);
        Assert.Equal(Table.All.Length + 1, table.All.Length);
    }

    [Fact]
    public void A_name_nobody_knows_is_a_middling_hardwood_and_says_so()
    {
        Species wood = Table.FindOrAssume("moonwood");
        Assert.False(wood.IsKnown);
        Assert.Contains("in no table", wood.Density.Source, StringComparison.Ordinal);
    }

    [Fact]
    public void A_shop_keeps_its_own_woods_and_climate()
    {
        Shop shop = Shop.StartingIn(LengthUnit.Inch) with { Species = [new() { Name = "plum", Density = 700, ShrinkageRadial = 5, ShrinkageTangential = 9, Fresh = [60, 12, 20] }] };
        string text = DocumentJson.Write(shop);
        Assert.Equal(text, DocumentJson.Write(DocumentJson.ReadShop(text)));
        Assert.Contains("\"70 °F\"", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("\"species\": [{ \"name\": \"plum\", \"density\": 700 }]", "shrinkageRadial")]
    [InlineData("\"species\": [{ \"name\": \"plum\", \"density\": 7 }]", "density")]
    [InlineData("\"species\": [{ \"name\": \"ash\" }, { \"name\": \"Ash\" }]", "same name")]
    [InlineData("\"species\": [{ \"name\": \"ash\", \"fresh\": [1, 2] }]", "three numbers")]
    [InlineData("\"species\": [{ \"name\": \"ash\", \"swatch\": \"brown\" }]", "six digits")]
    [InlineData("\"climate\": { \"woodMoisture\": 0 }", "woodMoisture")]
    [InlineData("\"climate\": { \"home\": { \"winter\": { \"temperature\": \"21 °C\", \"humidity\": 0.45 }, \"summer\": { \"temperature\": \"21 °C\", \"humidity\": 45 } } }", "1 percent to 98 percent")]
    [InlineData("\"climate\": { \"home\": { \"winter\": { \"temperature\": 21, \"humidity\": 45 } } }", "°C")]
    [InlineData("\"joint\": { \"tension\": 0 }", "joint.tension")]
    public void What_cannot_be_is_refused_with_its_place(string fields, string told)
    {
        BadInputException e = Assert.Throws<BadInputException>(() => DocumentJson.ReadShop($"{{ \"format\": \"ringwright/shop\", \"version\": 1, \"name\": \"x\", {fields} }}"));
        Assert.Contains(told, e.Message, StringComparison.Ordinal);
    }

    private static bool Near((double, double) a, (double, double) b) => Math.Abs(a.Item1 - b.Item1) < 1e-9 && Math.Abs(a.Item2 - b.Item2) < 1e-9;

    private static void Check(Sourced value, double least, double most)
    {
        Assert.InRange(value.Value, least, most);
        Assert.NotEmpty(value.Source);
    }
}
