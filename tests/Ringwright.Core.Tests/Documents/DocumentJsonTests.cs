using System.Text.Json;
using System.Text.Json.Nodes;
using CsCheck;
using Ringwright.Core.Documents;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Tests.Planning;

namespace Ringwright.Core.Tests.Documents;

public class DocumentJsonTests
{
    private const string Good = """
        {
          "format": "ringwright/piece", "version": 1, "name": "A", "units": "in", "made by": { "hand": [1, 2.50] },
          "rings": [
            { "name": "Disc", "construction": "wedge disc", "segments": 24, "diameter": "3/4 in", "thickness": "1-3/8\"", "woods": ["maple"], "glue": "hide" }
          ]
        }
        """;

    [Fact]
    public void What_is_written_is_what_was_read()
    {
        string written = DocumentJson.Write(DocumentJson.ReadPiece(Good));
        Assert.True(JsonNode.DeepEquals(JsonNode.Parse(Good), JsonNode.Parse(written)), written);
        Assert.Equal(written, DocumentJson.Write(DocumentJson.ReadPiece(written)));
    }

    [Fact]
    public void Random_pieces_round_trip_exactly() =>
        AnyPiece.Piece.Sample(piece =>
        {
            string once = DocumentJson.Write(piece);
            Piece again = DocumentJson.ReadPiece(once);
            return once == DocumentJson.Write(again) && again.Rings[0].Diameter == piece.Rings[0].Diameter && again.Rings[0].Around == piece.Rings[0].Around;
        });

    [Fact]
    public void Random_shops_round_trip_exactly() =>
        AnyPiece.Shop.Sample(shop => DocumentJson.Write(DocumentJson.ReadShop(DocumentJson.Write(shop))) == DocumentJson.Write(shop));

    [Fact]
    public void The_inch_shop_is_a_good_shop() => ShopCheck.Check(Shop.StartingIn(LengthUnit.Inch));

    [Theory]
    [InlineData("\"segments\": 24", "\"segments\": 2", "ring Disc, segments: 2 segments")]
    [InlineData("\"segments\": 24", "\"segments\": 361", "3 to 360 can")]
    [InlineData("\"segments\": 24", "\"segments\": \"many\"", "the text “many” stands here; a whole number")]
    [InlineData("\"segments\": 24", "\"segments\": 24.5", "the number 24.5 stands here")]
    [InlineData("\"segments\": 24", "\"segments\": null", "nothing (null) stands here")]
    [InlineData("\"segments\": 24, ", "", "the field segments is missing")]
    [InlineData("\"3/4 in\"", "\"-3/4 in\"", "-3/4 in cannot be")]
    [InlineData("\"3/4 in\"", "\"99 m\"", "99 m cannot be")]
    [InlineData("\"3/4 in\"", "19", "a length with its unit in quotes")]
    [InlineData("\"3/4 in\"", "\"3/4\"", "ends too early; write the unit")]
    [InlineData("\"3/4 in\"", "\"3/4 elk\"", "from character 5 (“e”)")]
    [InlineData("\"wedge disc\"", "\"star\"", "construction is missing or unknown")]
    [InlineData("\"construction\": \"wedge disc\", ", "", "construction is missing or unknown")]
    [InlineData("\"version\": 1", "\"version\": 7", "a newer Ringwright is needed; the file was left as it is")]
    [InlineData("\"version\": 1", "\"version\": 0", "it says 0")]
    [InlineData("\"ringwright/piece\"", "\"ringwright/shop\"", "it says \"ringwright/shop\"")]
    [InlineData("[\"maple\"]", "[]", "name at least one wood")]
    [InlineData("[\"maple\"]", "\"maple\"", "")]
    [InlineData("\"glue\": \"hide\"", "\"bore\": \"2 in\"", "it must be smaller than the diameter")]
    [InlineData("\"glue\": \"hide\"", "\"tip\": \"1 mm\", \"boardWidth\": \"8 mm\"", "give one, the other follows")]
    [InlineData("\"glue\": \"hide\"", "\"glue\": 1, \"glue\": 2", "twice")]
    [InlineData("\"name\": \"A\"", "\"name\": \"\"", "give it one")]
    [InlineData("\"name\": \"A\", ", "", "the field name is missing")]
    public void Bad_input_gets_one_sentence_with_its_place(string good, string bad, string says)
    {
        Assert.Contains(good, Good, StringComparison.Ordinal);
        BadInputException e = Assert.Throws<BadInputException>(() => DocumentJson.ReadPiece(Good.Replace(good, bad, StringComparison.Ordinal)));
        Assert.Contains(says, e.Message, StringComparison.Ordinal);
        Assert.DoesNotContain("\n", e.Message, StringComparison.Ordinal);
        Assert.DoesNotContain("System.", e.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_truncated_file_is_refused_wherever_it_is_cut()
    {
        for (int length = 0; length < Good.TrimEnd().Length; length++)
        {
            BadInputException e = Assert.Throws<BadInputException>(() => DocumentJson.ReadPiece(Good[..length]));
            Assert.Contains("the file ends too early", e.Message, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void A_huge_text_is_refused_before_it_is_read() =>
        Assert.Contains("million", Assert.Throws<BadInputException>(() => DocumentJson.ReadPiece(new string(' ', DocumentJson.LargestText + 1))).Message, StringComparison.Ordinal);

    [Fact]
    public void Any_one_character_changed_is_read_or_refused_with_a_sentence() =>
        Gen.Select(Gen.Int[0, Good.Length - 1], Gen.Char["{}[]\":,0x\\é\0\n"]).Sample((at, c) =>
        {
            try
            {
                DocumentJson.ReadPiece(Good[..at] + c + Good[(at + 1)..]);
            }
            catch (BadInputException e)
            {
                Assert.False(string.IsNullOrWhiteSpace(e.Message));
            }
        });

    [Fact]
    public void A_bad_shop_is_refused_with_its_field()
    {
        string text = DocumentJson.Write(Shop.Starting).Replace("\"1.2 mm\"", "\"0 mm\"", StringComparison.Ordinal);
        Assert.StartsWith("saw.kerf: 0 mm cannot be", Assert.Throws<BadInputException>(() => DocumentJson.ReadShop(text)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Cut_lists_quote_what_needs_it()
    {
        Piece piece = DocumentJson.ReadPiece(Good.Replace("maple", "=1+1, \\\"hot\\\"", StringComparison.Ordinal));
        string csv = CutListCsv.Write(Core.Planning.Planner.Plan(piece, Shop.Starting), MeasureStyle.InchDecimals);
        Assert.Contains("\"'=1+1, \"\"hot\"\"\"", csv, StringComparison.Ordinal);
        Assert.Equal(2, csv.Split("\r\n", StringSplitOptions.RemoveEmptyEntries).Length);
    }

    // OWASP, CSV Injection: these begin a formula.
    [Theory]
    [InlineData("=1+1")]
    [InlineData("+1+1")]
    [InlineData("-1+1")]
    [InlineData("@SUM(1)")]
    public void A_name_like_a_formula_stays_text(string name)
    {
        Piece piece = DocumentJson.ReadPiece(Good.Replace("maple", name, StringComparison.Ordinal));
        string csv = CutListCsv.Write(Core.Planning.Planner.Plan(piece, Shop.Starting), MeasureStyle.Millimetres);
        Assert.Contains($",'{name}", csv, StringComparison.Ordinal);
        Assert.DoesNotContain($",{name}", csv, StringComparison.Ordinal);
    }

    [Fact]
    public void A_value_as_long_as_a_file_does_not_bury_the_sentence()
    {
        string message = Assert.Throws<BadInputException>(() => DocumentJson.ReadPiece($"{{\"format\":\"ringwright/piece\",\"version\":{new string('9', 100_000)}}}")).Message;
        Assert.InRange(message.Length, 60, 900);
        Assert.Contains("999…", message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_plan_is_valid_json_with_every_figure()
    {
        var plan = Core.Planning.Planner.Plan(DocumentJson.ReadPiece(Good), Shop.Starting);
        using JsonDocument json = JsonDocument.Parse(PlanJson.Write(plan, MeasureStyle.InchFractions));
        Assert.Equal(plan.Rings[0].Figures.Length, json.RootElement.GetProperty("rings")[0].GetProperty("figures").GetArrayLength());
    }
}
