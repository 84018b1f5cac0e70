using System.Text.Json.Nodes;
using CsCheck;
using Ringwright.Core.Boards;
using Ringwright.Core.Documents;
using Ringwright.Core.Measures;

namespace Ringwright.Core.Tests.Documents;

public class RackTests
{
    private const string Good = """
        {
          "format": "ringwright/rack", "version": 1, "name": "Wall", "units": "in", "corner": "left",
          "boards": [
            { "label": "A1", "wood": "maple", "length": "24 in", "width": "5-1/2 in", "thickness": "1 1/8 in", "moisture": 8, "price": 12.5,
              "defects": [{ "from": "3 in", "to": "4 in", "note": "knot" }], "rack row": 2 },
            { "label": "A2", "wood": "maple", "length": "7 in", "width": "2 in", "thickness": "1 in", "cameFrom": "A1", "note": "end" }
          ]
        }
        """;

    private static readonly Gen<RackBoard> Board =
        from label in Gen.Int[0, 1_000_000]
        from length in Gen.Double[10, 3000]
        from width in Gen.Double[5, 400]
        from thickness in Gen.Double[1, 80]
        from price in Gen.Double[0, 100]
        from bad in Gen.Double[0.1, 0.9]
        select new RackBoard
        {
            Label = $"B{label}",
            Wood = "oak",
            Length = Length.FromMillimetres(length),
            Width = Length.FromMillimetres(width),
            Thickness = Length.FromMillimetres(thickness),
            Price = price,
            Defects = [new Defect { From = Length.FromMillimetres(bad * length / 2), To = Length.FromMillimetres(bad * length) }],
        };

    [Fact]
    public void What_is_written_is_what_was_read_unknown_fields_too()
    {
        string written = DocumentJson.Write(DocumentJson.ReadRack(Good));
        Assert.True(JsonNode.DeepEquals(JsonNode.Parse(Good), JsonNode.Parse(written)), written);
        Assert.Equal(written, DocumentJson.Write(DocumentJson.ReadRack(written)));
    }

    [Fact]
    public void An_empty_rack_can_be() =>
        Assert.Empty(DocumentJson.ReadRack("""{ "format": "ringwright/rack", "version": 1, "name": "New", "boards": [] }""").Boards);

    [Fact]
    public void Random_boards_round_trip_exactly() => Board.Sample(board =>
    {
        var rack = new Rack { Name = "Any", Boards = [board] };
        Rack again = DocumentJson.ReadRack(DocumentJson.Write(rack));
        return DocumentJson.Write(again) == DocumentJson.Write(rack) && again.Boards[0].Length == board.Length;
    });

    [Theory]
    [InlineData("\"24 in\"", "\"0 in\"", "board A1, length: 0 in cannot be; 1 mm to 10000 mm can")]
    [InlineData("\"24 in\"", "\"-24 in\"", "board A1, length: -24 in cannot be")]
    [InlineData("\"24 in\"", "24", "a length with its unit in quotes")]
    [InlineData("\"2 in\"", "\"0 mm\"", "board A2, width: 0 mm cannot be")]
    [InlineData("\"1 1/8 in\"", "\"0.002 in\"", "board A1, thickness: 0.002 in cannot be")]
    [InlineData("\"label\": \"A2\"", "\"label\": \"a1\"", "board a1, label: another board has the same label")]
    [InlineData("\"label\": \"A2\"", "\"label\": \" \"", "boards 2, label: it is empty")]
    [InlineData("\"label\": \"A2\", ", "", "the field label is missing; it cannot be left out")]
    [InlineData("\"wood\": \"maple\", \"length\": \"7 in\"", "\"wood\": \"\", \"length\": \"7 in\"", "board A2, wood: it is empty")]
    [InlineData("\"moisture\": 8", "\"moisture\": 0", "board A1, moisture: 0 percent cannot be")]
    [InlineData("\"price\": 12.5", "\"price\": -1", "board A1, price: -1 cannot be")]
    [InlineData("\"to\": \"4 in\"", "\"to\": \"2 in\"", "board A1, defects 1: it goes from 3 in to 2 in")]
    [InlineData("\"to\": \"4 in\"", "\"to\": \"25 in\"", "board A1, defects 1, to: 25 in cannot be")]
    [InlineData("\"cameFrom\": \"A1\"", "\"cameFrom\": \"\"", "board A2, cameFrom: it is empty")]
    [InlineData("\"version\": 1", "\"version\": 2", "a newer Ringwright is needed; the file was left as it is")]
    [InlineData("\"ringwright/rack\"", "\"ringwright/piece\"", "it says \"ringwright/piece\"")]
    public void Bad_input_gets_one_sentence_with_its_place(string good, string bad, string says)
    {
        Assert.Contains(good, Good, StringComparison.Ordinal);
        BadInputException e = Assert.Throws<BadInputException>(() => DocumentJson.ReadRack(Good.Replace(good, bad, StringComparison.Ordinal)));
        Assert.Contains(says, e.Message, StringComparison.Ordinal);
        Assert.DoesNotContain("\n", e.Message, StringComparison.Ordinal);
    }
}
