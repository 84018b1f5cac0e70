using System.Text;

namespace Ringwright.Web.Saving;

/// <summary>Writes a file so that a reader, or a killed process, only ever sees the old text or the new one.</summary>
internal static class AtomicFile
{
    /// <summary>Writes <paramref name="text"/> to a neighbour, flushes it to the disk, and renames it.</summary>
    public static void Write(string path, string text)
    {
        string neighbour = path + ".new";
        using (var stream = new FileStream(neighbour, FileMode.Create, FileAccess.Write, FileShare.None))
        {
            stream.Write(Encoding.UTF8.GetBytes(text));
            stream.Flush(flushToDisk: true);
        }

        File.Move(neighbour, path, overwrite: true);
    }
}
