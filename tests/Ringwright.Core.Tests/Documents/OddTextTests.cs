using System.Text.Json.Nodes;
using Ringwright.Core.Documents;
using Ringwright.Core.Measures;
using Ringwright.Core.Patterns;

namespace Ringwright.Core.Tests.Documents;

/// <summary>Inputs that tests/Ringwright.Fuzz found, kept: half characters, line breaks, endless words, values of another kind.</summary>
public class OddTextTests
{
    private const string Disc = """{"format":"ringwright/piece","version":1,"name":"A","rings":[{"name":"Disc","construction":"wedge disc","segments":24,"diameter":"19 mm","thickness":"35 mm","woods":["maple"]}]}""";

    [Theory]
    [InlineData("typed", "1\n2", "no", "typed: 1 2; no.")]
    [InlineData("a\u2028b", "c\0d", "e\u0085f", "a b: c d; e f.")]
    [InlineData("typed", "“§” is none", "“\U0001F600” is", "typed: “\ufffd” is none; “\U0001F600” is.")]
    public void A_refusal_is_one_line_of_whole_characters(string where, string problem, string right, string sentence) =>
        Assert.Equal(sentence, new BadInputException(where, Halved(problem), right).Message);

    [Fact]
    public void A_long_word_is_quoted_by_its_beginning()
    {
        string word = new('x', 59);
        Assert.Equal($"typed: “{word}a” is none; ask.", new BadInputException("typed", $"“{word}a” is none", "ask").Message);
        Assert.Equal($"typed: “{word}a…” is none; ask.", new BadInputException("typed", $"“{word}ab” is none", "ask").Message);
        Assert.Equal($"typed: “{word}…” is none; ask.", new BadInputException("typed", $"“{word}\U0001F600” is none", "ask").Message);
    }

    [Theory]
    [InlineData("\0", "“ ” cannot be read from character 1 (“ ”)")]
    [InlineData("5§", "“5\ufffd” cannot be read from character 2 (“\ufffd”)")]
    [InlineData("5\U0001F600", "“5\U0001F600” cannot be read from character 2 (“\U0001F600”)")]
    public void A_complaint_about_a_length_shows_whole_characters(string text, string begins)
    {
        Assert.False(Length.TryParse(Halved(text), LengthUnit.Millimetre, out _, out ParseError? error));
        Assert.StartsWith(begins, error.Sentence, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("\"name\":\"A\"", "\"name\":\"\\ud800\"", "name")]
    [InlineData("\"name\":\"A\"", "\"name\":\"A\",\"from elsewhere\":[\"\\udc00\\ud800\"]", "from elsewhere")]
    [InlineData("\"ringwright/piece\"", "\"\\ud800\"", "format")]
    [InlineData("\"name\":\"A\"", "\"name\":\"§\"", "file")]
    public void Half_a_character_is_refused_where_it_stands(string right, string odd, string place) =>
        Assert.Equal(
            $"{place}: a text holds half of a character (an unpaired surrogate); remove or retype the character.",
            Assert.Throws<BadInputException>(() => DocumentJson.ReadPiece(Disc.Replace(right, Halved(odd), StringComparison.Ordinal))).Message);

    [Fact]
    public void A_whole_character_written_as_its_halves_is_read_and_kept() =>
        Assert.Equal("\U0001F600", DocumentJson.ReadPiece(Disc.Replace("\"A\"", "\"\\ud83d\\ude00\"", StringComparison.Ordinal)).Name);

    [Theory]
    [InlineData("rings", "{}", "a list in [ ] is needed")]
    [InlineData("shape", "[]", "a group of fields in { } is needed")]
    [InlineData("notes", "7", "the number 7 stands here; text in quotes is needed")]
    public void A_value_of_another_kind_is_told_with_what_is_needed(string field, string value, string right)
    {
        JsonObject piece = JsonNode.Parse(Disc)!.AsObject();
        piece[field] = JsonNode.Parse(value);
        Assert.Contains(right, Assert.Throws<BadInputException>(() => DocumentJson.ReadPiece(piece.ToJsonString())).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_list_of_odd_words_in_a_files_head_stays_one_sentence() =>
        Assert.True(Assert.Throws<BadInputException>(() => DocumentJson.ReadPiece($$"""{"format":"{{new string('x', 5000)}}"}""")).Message.Length < 200);

    [Theory]
    [InlineData("raise -2147483648", "moved 2147483648 rings down")]
    [InlineData("rotate -2147483648", "turned 2147483648 segments clockwise")]
    public void The_least_whole_number_has_words(string step, string words) =>
        Assert.Contains(words, PatternSteps.Read(["repeat maple,walnut", step]).Describe(), StringComparison.Ordinal);

    [Fact]
    public void A_woods_name_in_a_pattern_is_as_short_as_in_a_ring()
    {
        var lattice = new Lattice([new(12, 0, 50, 20)]);
        BadInputException refused = Assert.Throws<BadInputException>(() => PatternSteps.Read([$"repeat {new string('w', 41)}"]).On(lattice));
        Assert.Contains("longer than 40 characters", refused.Message, StringComparison.Ordinal);
    }

    // An attribute cannot hold half a character; § stands for it there.
    private static string Halved(string text) => text.Replace('§', '\ud83d');
}
