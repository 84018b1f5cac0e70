using System.Text;
using Ringwright.Core;
using Ringwright.Core.Documents;

namespace Ringwright.Store.Files;

/// <summary>Reads files within a bound and writes them whole or not at all.</summary>
public static class SafeFile
{
    /// <summary>The text of <paramref name="path"/>.</summary>
    /// <exception cref="BadInputException">The file is missing, too large, or not text in UTF-8.</exception>
    public static string ReadText(string path)
    {
        byte[] bytes = ReadBytes(path, DocumentJson.LargestText);
        try
        {
            return new UTF8Encoding(false, throwOnInvalidBytes: true).GetString(bytes).TrimStart('\uFEFF');
        }
        catch (DecoderFallbackException)
        {
            throw new BadInputException(path, "it is not text in UTF-8", "a JSON file is needed");
        }
    }

    /// <summary>The bytes of <paramref name="path"/>, at most <paramref name="most"/>.</summary>
    /// <exception cref="BadInputException">The file is missing or too large.</exception>
    public static byte[] ReadBytes(string path, int most)
    {
        var file = new FileInfo(path);
        if (Directory.Exists(path)) throw new BadInputException(path, "this is a folder", "a file is needed");
        if (!file.Exists) throw new BadInputException(path, "there is no such file", "check the name and the folder");
        if (file.Length > most)
            throw new BadInputException(path, $"it is {file.Length / (1024 * 1024)} MB large", $"such a file has at most {most / (1024 * 1024)} MB");
        return File.ReadAllBytes(path);
    }

    /// <summary>
    /// Writes to a file beside the target, flushes it to the disk and puts it in place, so that a reader,
    /// or a killed process, only ever sees the old content or the new one.
    /// </summary>
    /// <exception cref="IOException">The disk refuses; the old file is as it was.</exception>
    /// <exception cref="UnauthorizedAccessException">The folder may not be written.</exception>
    public static void Write(string path, Action<Stream> write)
    {
        ArgumentNullException.ThrowIfNull(write);
        string full = Path.GetFullPath(path);
        Directory.CreateDirectory(Path.GetDirectoryName(full)!);
        string beside = full + ".part";
        using (var stream = new FileStream(beside, FileMode.Create, FileAccess.Write, FileShare.None))
        {
            write(stream);
            stream.Flush(flushToDisk: true);
        }

        File.Move(beside, full, overwrite: true);
    }

    /// <summary>Writes bytes, whole or not at all.</summary>
    /// <exception cref="IOException">The disk refuses; the old file is as it was.</exception>
    /// <exception cref="UnauthorizedAccessException">The folder may not be written.</exception>
    public static void Write(string path, byte[] bytes) => Write(path, stream => stream.Write(bytes));

    /// <summary>Writes text in UTF-8, whole or not at all.</summary>
    /// <exception cref="IOException">The disk refuses; the old file is as it was.</exception>
    /// <exception cref="UnauthorizedAccessException">The folder may not be written.</exception>
    public static void Write(string path, string text) => Write(path, Encoding.UTF8.GetBytes(text));
}
