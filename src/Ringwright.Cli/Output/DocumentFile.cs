using Ringwright.Core;

namespace Ringwright.Cli.Output;

/// <summary>Reads a document and, when it is bad, says in which file.</summary>
internal static class DocumentFile
{
    public static T Read<T>(string path, Func<string, T> read)
    {
        string text = SafeFile.ReadText(path);
        try
        {
            return read(text);
        }
        catch (BadInputException e)
        {
            throw new BadInputException($"{Path.GetFileName(path)}, {e.Where}", e.Problem, e.Right);
        }
    }
}
