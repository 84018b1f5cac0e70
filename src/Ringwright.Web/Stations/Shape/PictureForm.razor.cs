using System.Globalization;
using Microsoft.AspNetCore.Components.Forms;
using Ringwright.Core;
using Ringwright.Core.Patterns;
using Ringwright.Core.Patterns.Pictures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Ringwright.Paper.Pictures;
using Ringwright.Web.Bench.Fields;

namespace Ringwright.Web.Stations;

/// <summary>A picture reduced to the woods at hand. The picture itself is not kept over a restart; all that is typed is.</summary>
public partial class PictureForm
{
    private PixelPicture? _picture;
    private string? _name, _wrong, _words;

    private IEnumerable<string> Woods => Sheet.Good.Rings.SelectMany(r => r.Ring.Cycle).Distinct(StringComparer.OrdinalIgnoreCase).Take(6);

    private PictureSizing Sizing => Enum.TryParse(Sheet.Desk["picture.sizing"], out PictureSizing sizing) && Enum.IsDefined(sizing) ? sizing : PictureSizing.Around;

    private bool On(string name) => Sheet.Desk[name].Length > 0;

    private void Flip(string name) => Bench.Note(name, On(name) ? "" : "on");

    private void Size(PictureSizing sizing) => Bench.Note("picture.sizing", sizing.ToString());

    private async Task Choose(InputFileChangeEventArgs chosen)
    {
        (_wrong, _words) = (null, null);
        try
        {
            if (chosen.File.Size > PixelFile.MostBytes)
                throw new BadInputException(chosen.File.Name, string.Create(CultureInfo.InvariantCulture, $"{chosen.File.Size / 1e6:0.#} MB are too many"), $"give a file of at most {PixelFile.MostBytes / 1_000_000} MB");
            using var bytes = new MemoryStream();
            await using (Stream stream = chosen.File.OpenReadStream(PixelFile.MostBytes)) await stream.CopyToAsync(bytes);
            _picture = PixelFile.Read(bytes.ToArray());
            _name = chosen.File.Name;
            Try();
        }
        catch (BadInputException e)
        {
            _wrong = FieldProblem.Capital(e.Message);
        }
        catch (Exception e) when (e is IOException or OperationCanceledException)
        {
            _wrong = $"{chosen.File.Name} could not be read to its end; try again.";
        }
    }

    private void Try() => Use(painted => Look.Try(Planner.Plan(painted, Sheet.Good.Shop)));

    private void Lay() => Use(painted =>
    {
        Look.Try(null);
        Bench.Change(w => w with { Piece = painted });
    });

    private void Use(Action<Piece> use)
    {
        try
        {
            ImmutableArray<string> woods = Sheet.Desk.List("picture.woods");
            if (woods.IsEmpty) woods = [.. Woods];
            PicturedPattern pattern = PictureReducer.Reduce(_picture!, PieceLattice.Of(Sheet.Good), new()
            {
                Woods = woods,
                Background = woods[0],
                FitTones = On("picture.tones"),
                Spread = On("picture.spread") ? ErrorSpread.Light : ErrorSpread.None,
                Placement = new() { Sizing = Sizing, Middle = double.DegreesToRadians(Sheet.Desk.Number("picture.middle") ?? 0), FromInside = On("picture.inside") },
            });
            use(PieceLattice.Paint(Sheet.Good.Piece, pattern.Rows));
            _wrong = null;
            _words = string.Create(CultureInfo.InvariantCulture, $"Colours differ by {pattern.MeanDifference:0.#} on average (CIEDE2000; about 2 is just seen): {string.Join(", ", pattern.Counts.InAll.Select(c => $"{c.Wood} {c.Pieces}"))}.");
        }
        catch (BadInputException e)
        {
            _wrong = FieldProblem.Capital(e.Message);
        }
    }
}
