using System.Text;
using Microsoft.AspNetCore.Components.Forms;
using Ringwright.Core;
using Ringwright.Store;

namespace Ringwright.Web.Library;

/// <summary>Reads a file that the user chose.</summary>
internal static class UserFile
{
    private static readonly UTF8Encoding StrictUtf8 = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>Hands its text over.</summary>
    /// <returns>Why it was not taken; null when it was. A sentence or two.</returns>
    public static async Task<string?> Read(IBrowserFile file, Action<string> take)
    {
        ArgumentNullException.ThrowIfNull(file);
        ArgumentNullException.ThrowIfNull(take);
        try
        {
            take(await Text(file));
            return null;
        }
        catch (Exception e) when (e is BadInputException or StoreException)
        {
            return $"{file.Name} was not opened. {e.Message}";
        }
        catch (Exception e) when (e is IOException or OperationCanceledException)
        {
            return $"{file.Name} was not opened: it could not be read to its end; try again.";
        }
    }

    private static async Task<string> Text(IBrowserFile file)
    {
        if (file.Size > WebServer.LargestFile)
            throw new BadInputException("file", $"it has {file.Size / (1024 * 1024)} MB", $"at most {WebServer.LargestFile / (1024 * 1024)} MB are read");
        using var bytes = new MemoryStream();
        await using Stream stream = file.OpenReadStream(WebServer.LargestFile);
        await stream.CopyToAsync(bytes);
        try
        {
            return StrictUtf8.GetString(bytes.ToArray());
        }
        catch (DecoderFallbackException)
        {
            throw new BadInputException("file", "it is not text", "JSON text in UTF-8 is needed");
        }
    }
}
