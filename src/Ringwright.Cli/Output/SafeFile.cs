using System.Text;
using Ringwright.Core;
using Ringwright.Core.Documents;

namespace Ringwright.Cli.Output;

/// <summary>Reads files within a bound and writes them whole or not at all.</summary>
internal static class SafeFile
{
    /// <summary>The text of <paramref name="path"/>.</summary>
    /// <exception cref="BadInputException">The file is missing, too large, or not text in UTF-8.</exception>
    public static string ReadText(string path)
    {
        var file = new FileInfo(path);
        if (Directory.Exists(path)) throw new BadInputException(path, "this is a folder", "a file is needed");
        if (!file.Exists) throw new BadInputException(path, "there is no such file", "check the name and the folder");
        if (file.Length > DocumentJson.LargestText)
            throw new BadInputException(path, $"it is {file.Length / (1024 * 1024)} MB large", "a piece or shop file has at most 16 MB");
        try
        {
            return new UTF8Encoding(false, throwOnInvalidBytes: true).GetString(File.ReadAllBytes(path)).TrimStart('\uFEFF');
        }
        catch (DecoderFallbackException)
        {
            throw new BadInputException(path, "it is not text in UTF-8", "a JSON file is needed");
        }
    }

    /// <summary>Writes <paramref name="bytes"/> to a file beside the target and then puts it in place, so that a fault leaves the old file.</summary>
    public static void Write(string path, ReadOnlySpan<byte> bytes)
    {
        string full = Path.GetFullPath(path);
        Directory.CreateDirectory(Path.GetDirectoryName(full)!);
        string beside = full + ".part";
        using (var stream = new FileStream(beside, FileMode.Create, FileAccess.Write, FileShare.None))
        {
            stream.Write(bytes);
            stream.Flush(flushToDisk: true);
        }

        File.Move(beside, full, overwrite: true);
    }

    /// <summary>Writes text in UTF-8, whole or not at all.</summary>
    public static void Write(string path, string text) => Write(path, Encoding.UTF8.GetBytes(text));
}
