using System.Diagnostics;
using Ringwright.Store.Sqlite;

namespace Ringwright.Store.Opening;

/// <summary>
/// A claim on the data folder that ends with the process. Several Ringwrights may share it; only one that has it alone may
/// put another data file in place.
/// </summary>
internal sealed class FolderClaim : IDisposable
{
    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(20);
    private readonly FileStream _file;

    private FolderClaim(FileStream file) => _file = file;

    /// <summary>Shares the folder with others.</summary>
    /// <exception cref="StoreException">The folder cannot be written, or another Ringwright is mending it and does not finish in time.</exception>
    public static FolderClaim Share(string folder, TimeSpan patience) => Wait(folder, FileShare.ReadWrite, patience)
        ?? throw new StoreException(StoreFault.Locked, folder, "another Ringwright is putting it right", "try again in a moment");

    /// <summary>Takes the folder alone; null when another Ringwright keeps it open.</summary>
    public static FolderClaim? Alone(string folder, TimeSpan patience) => Wait(folder, FileShare.None, patience);

    /// <inheritdoc/>
    public void Dispose() => _file.Dispose();

    private static FolderClaim? Wait(string folder, FileShare share, TimeSpan patience)
    {
        string path = Path.Combine(folder, "in-use");
        var waited = Stopwatch.StartNew();
        while (true)
        {
            try
            {
                return new(new FileStream(path, FileMode.OpenOrCreate, FileAccess.ReadWrite, share));
            }
            catch (UnauthorizedAccessException e)
            {
                throw Faults.Unwritable(folder, e);
            }
            catch (IOException e) when (!File.Exists(path) || IsReadOnlyDisk(e))
            {
                throw Faults.Unwritable(folder, e);
            }
            catch (IOException) when (waited.Elapsed < patience)
            {
                Thread.Sleep(Pause);
            }
            catch (IOException)
            {
                return null;
            }
        }
    }

    // EROFS on Linux and macOS.
    private static bool IsReadOnlyDisk(IOException e) => (e.HResult & 0xFFFF) == 30;
}
