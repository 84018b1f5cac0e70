namespace Ringwright.Store.Tests;

/// <summary>What a failing disk does to a file.</summary>
internal static class Damage
{
    /// <summary>Overwrites pages after the first, which holds the header.</summary>
    public static void Overwrite(string file)
    {
        using var stream = new FileStream(file, FileMode.Open);
        byte[] noise = new byte[4096];
        new Random(1).NextBytes(noise);
        for (long page = 1; page < stream.Length / 4096; page += 2)
        {
            stream.Position = page * 4096;
            stream.Write(noise);
        }
    }

    public static void OverwriteHeader(string file)
    {
        using var stream = new FileStream(file, FileMode.Open);
        stream.Write(new byte[4096]);
    }

    public static void CutOff(string file)
    {
        using var stream = new FileStream(file, FileMode.Open);
        stream.SetLength(stream.Length / 2 - 100);
    }

    public static void Empty(string file) => File.WriteAllBytes(file, []);
}
