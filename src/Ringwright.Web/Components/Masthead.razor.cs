using System.Text;
using Microsoft.AspNetCore.Components.Forms;
using Ringwright.Core;
using Ringwright.Web.Bench;

namespace Ringwright.Web.Components;

/// <summary>The line at the top: the piece's name, units, steps back and forth, files.</summary>
public partial class Masthead
{
    private static readonly UTF8Encoding StrictUtf8 = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);
    private string? _refused;

    private FieldProblem? NameProblem => Sheet.Problems.FirstOrDefault(p => p.Key == Refusals.NameKey);

    private void OpenExample()
    {
        _refused = null;
        Bench.OpenExample();
    }

    private void Dismiss() => _refused = null;

    private async Task OpenFile(InputFileChangeEventArgs chosen)
    {
        _refused = null;
        try
        {
            Bench.Open(await Text(chosen.File));
        }
        catch (BadInputException e)
        {
            _refused = $"{chosen.File.Name} was not opened. {e.Message}";
        }
        catch (Exception e) when (e is IOException or OperationCanceledException)
        {
            _refused = $"{chosen.File.Name} was not opened: it could not be read to its end; try again.";
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
