using System.Diagnostics;
using Ringwright.Core.Pieces;

namespace Ringwright.Store.Tests;

/// <summary>Locked by another process, a folder that cannot be written, a full disk: one sentence, and nothing is lost.</summary>
public sealed class FaultTests
{
    [Fact]
    public void While_another_process_writes_a_save_is_refused_reading_goes_on_and_later_it_is_saved()
    {
        using var desk = new Desk();
        using DataStore store = desk.Open();
        long id = store.Pieces.Add(Desk.Piece());
        using var other = new OtherProcess("lock", desk.Folder);
        other.WaitFor("locked");
        StoreException refused = Assert.Throws<StoreException>(() => store.Pieces.SaveDraft(id, "typed"));
        Assert.Equal(StoreFault.Locked, refused.Fault);
        Assert.Equal($"{desk.DataFile}: another program is writing in it; close that program or try again in a moment.", refused.Message);
        Assert.Null(store.Pieces.Read(id).Draft);
        using (DataStore another = desk.Open()) Assert.Single(another.Pieces.List());
        other.End();
        store.Pieces.SaveDraft(id, "typed");
        Assert.Equal("typed", store.Pieces.Read(id).Draft);
    }

    [Fact]
    public async Task A_save_waits_for_another_process_that_is_quick()
    {
        using var desk = new Desk();
        using DataStore store = desk.Open(new() { Patience = TimeSpan.FromSeconds(20) });
        long id = store.Pieces.Add(Desk.Piece());
        using var other = new OtherProcess("lock", desk.Folder);
        other.WaitFor("locked");
        var save = Task.Run(() => store.Pieces.SaveDraft(id, "typed"), TestContext.Current.CancellationToken);
        await Task.Delay(50, TestContext.Current.CancellationToken);
        Assert.False(save.IsCompleted);
        other.End();
        await save;
        Assert.Equal("typed", store.Pieces.Read(id).Draft);
    }

    [Fact]
    public void A_folder_that_cannot_be_made_is_told()
    {
        using var desk = new Desk();
        File.WriteAllText(Path.Combine(desk.Folder, "file"), "");
        string folder = Path.Combine(desk.Folder, "file", "data");
        StoreException refused = Assert.Throws<StoreException>(() => DataStore.Open(folder, desk));
        Assert.Equal(StoreFault.ReadOnly, refused.Fault);
        Assert.Equal($"{folder}: it cannot be written; a folder of your own is needed, and RINGWRIGHT_DATA can name it.", refused.Message);
    }

    // Root passes over permission bits, so as root the folder is made immutable, or put on a file system mounted read-only.
    [Fact]
    public void A_read_only_folder_is_told_and_stays_as_it_is()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "Folders are made read-only as Linux does it.");
        using var desk = new Desk(onDisk: true);
        using (DataStore store = desk.Open()) store.Pieces.Add(Desk.Piece());
        Action undo = MakeReadOnly(desk.Folder);
        try
        {
            string[] before = Directory.GetFiles(desk.Folder);
            Assert.Equal(StoreFault.ReadOnly, Assert.Throws<StoreException>(() => desk.Open()).Fault);
            Assert.Equal(before, Directory.GetFiles(desk.Folder));
        }
        finally
        {
            undo();
        }

        using DataStore again = desk.Open();
        Assert.Single(again.Pieces.List());
    }

    [Fact]
    public void A_full_disk_refuses_the_save_and_keeps_what_was_saved_until_there_is_room()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "A small disk is made as Linux does it.");
        string disk = Directory.CreateTempSubdirectory("ringwright-small-disk-").FullName;
        Assert.SkipUnless(Runs("mount", "-t", "tmpfs", "-o", "size=1m", "tmpfs", disk), "Mounting a small disk is not allowed here; the bound on pages stands in for it in the next test.");
        try
        {
            string folder = Path.Combine(disk, "data");
            using (DataStore store = DataStore.Open(folder, TimeProvider.System, Desk.Quick))
            {
                long id = store.Pieces.Add(Desk.Piece());
                File.WriteAllBytes(Path.Combine(disk, "ballast"), new byte[100_000]);
                (string saved, StoreException refused) = SaveUntilRefused(store, id);
                Assert.True(refused.Fault is StoreFault.DiskFull or StoreFault.Disk, refused.Message);
                Assert.Contains("last change was not saved", refused.Message, StringComparison.Ordinal);
                Assert.Equal(saved, store.Pieces.Read(id).Draft);
                File.Delete(Path.Combine(disk, "ballast"));
                store.Pieces.SaveDraft(id, "after");
                Assert.Equal("after", store.Pieces.Read(id).Draft);
            }

            using DataStore again = DataStore.Open(folder, TimeProvider.System, Desk.Quick);
            Assert.Equal("after", again.Pieces.Read(1).Draft);
        }
        finally
        {
            Assert.True(Runs("umount", disk));
            Directory.Delete(disk);
        }
    }

    [Fact]
    public void A_file_that_may_not_grow_refuses_the_save_and_keeps_what_was_saved()
    {
        using var desk = new Desk();
        using DataStore store = desk.Open(Desk.Quick with { MostPages = 60 });
        long id = store.Pieces.Add(Desk.Piece());
        (string saved, StoreException refused) = SaveUntilRefused(store, id);
        Assert.Equal(StoreFault.DiskFull, refused.Fault);
        Assert.Equal($"{desk.DataFile}: the disk is full, so the last change was not saved; make room and save again; what was saved before is whole.", refused.Message);
        Assert.Equal(saved, store.Pieces.Read(id).Draft);
        store.Pieces.SaveDraft(id, "short");
        using DataStore again = desk.Open();
        Assert.Equal("short", again.Pieces.Read(id).Draft);
    }

    private static (string Saved, StoreException Refused) SaveUntilRefused(DataStore store, long id)
    {
        string saved = "";
        Piece piece = store.Pieces.Read(id).Piece;
        for (int kilobytes = 10; kilobytes < 10_000; kilobytes += 10)
        {
            string draft = new('x', kilobytes * 1000);
            try
            {
                store.Pieces.Save(id, piece, draft);
                saved = draft;
            }
            catch (StoreException e)
            {
                return (saved, e);
            }
        }

        throw new InvalidOperationException("The disk never filled.");
    }

    private static Action MakeReadOnly(string folder)
    {
        if (!Environment.IsPrivilegedProcess && Runs("chmod", "a-w", folder)) return () => Runs("chmod", "u+w", folder);
        if (Runs("chattr", "+i", folder)) return () => Runs("chattr", "-i", folder);
        if (Runs("mount", "--bind", folder, folder) && Runs("mount", "-o", "remount,ro,bind", folder)) return () => Runs("umount", folder);
        Assert.Skip("As root, neither an immutable folder nor a read-only mount is allowed here.");
        throw new InvalidOperationException();
    }

    private static bool Runs(string program, params string[] arguments)
    {
        try
        {
            using Process process = Process.Start(new ProcessStartInfo(program, arguments) { RedirectStandardError = true, RedirectStandardOutput = true })!;
            process.StandardOutput.ReadToEnd();
            process.WaitForExit();
            return process.ExitCode == 0;
        }
        catch (System.ComponentModel.Win32Exception)
        {
            return false;
        }
    }
}
