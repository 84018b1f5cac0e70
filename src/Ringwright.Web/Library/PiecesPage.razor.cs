using System.Text;
using Microsoft.AspNetCore.Components.Forms;
using Ringwright.Core;
using Ringwright.Core.Pieces;
using Ringwright.Web.Bench.Fields;

namespace Ringwright.Web.Library;

/// <summary>Where pieces come from and go to.</summary>
public partial class PiecesPage
{
    private static readonly UTF8Encoding StrictUtf8 = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);
    private string? _wrong;

    private void Begin(NewPiece start)
    {
        try
        {
            Piece piece = start.Make(Sheet);
            Bench.Put(piece);
            _wrong = null;
            Navigation.NavigateTo("/shape");
        }
        catch (BadInputException e)
        {
            _wrong = FieldProblem.Capital(e.Message);
        }
    }

    private void Open(string json, string name, bool borrowed = false)
    {
        try
        {
            Bench.Open(json, borrowed);
            _wrong = null;
            Navigation.NavigateTo("/shape");
        }
        catch (BadInputException e)
        {
            _wrong = $"{name} was not opened. {e.Message}";
        }
    }

    private async Task OpenFile(InputFileChangeEventArgs chosen)
    {
        try
        {
            Open(await Text(chosen.File), chosen.File.Name);
        }
        catch (BadInputException e)
        {
            _wrong = $"{chosen.File.Name} was not opened. {e.Message}";
        }
        catch (Exception e) when (e is IOException or OperationCanceledException)
        {
            _wrong = $"{chosen.File.Name} was not opened: it could not be read to its end; try again.";
        }
    }

    private static async Task<string> Text(IBrowserFile file)
    {
        if (file.Size > WebServer.LargestFile)
            throw new BadInputException("file", $"it has {file.Size / (1024 * 1024)} MB", $"a piece file has at most {WebServer.LargestFile / (1024 * 1024)} MB");
        using var bytes = new MemoryStream();
        await using Stream stream = file.OpenReadStream(WebServer.LargestFile);
        await stream.CopyToAsync(bytes);
        try
        {
            return StrictUtf8.GetString(bytes.ToArray());
        }
        catch (DecoderFallbackException)
        {
            throw new BadInputException("file", "it is not text", "a piece file is JSON text in UTF-8");
        }
    }
}
