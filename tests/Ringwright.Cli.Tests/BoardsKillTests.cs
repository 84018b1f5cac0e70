using System.Diagnostics;
using System.Globalization;
using Ringwright.Core.Boards;
using Ringwright.Core.Documents;
using Ringwright.Store;

namespace Ringwright.Cli.Tests;

/// <summary>
/// The program is killed (SIGKILL) while it fits strips to the boards of the kept rack and takes them: the rack is as it was, or
/// the whole job is taken and can be undone. RINGWRIGHT_KILLS sets how often.
/// </summary>
public sealed class BoardsKillTests(ITestOutputHelper output)
{
    private static readonly int Kills = int.Parse(Environment.GetEnvironmentVariable("RINGWRIGHT_KILLS") ?? "2", CultureInfo.InvariantCulture);

    [Fact]
    public async Task Killed_while_the_boards_are_planned_the_rack_is_never_half_taken()
    {
        Rack full = DocumentJson.ReadRack(await File.ReadAllTextAsync(Path.Combine(Runs.Examples, "small-rack.json"), TestContext.Current.CancellationToken));
        var random = new Random(20_263);
        TimeSpan whole = default;
        int before = 0, after = 0, amid = 0;
        for (int kill = -1; kill < Kills; kill++)
        {
            using var runs = new Runs();
            string untouched = Fill(runs.Folder, full);
            var clock = Stopwatch.StartNew();
            using Process job = Start(runs.Folder);
            if (kill < 0)
            {
                string said = await job.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);
                await job.WaitForExitAsync(TestContext.Current.CancellationToken);
                Assert.True(job.ExitCode == 0, said);
                whole = clock.Elapsed;
            }
            else
            {
                await Task.Delay(whole * (0.3 + random.NextDouble()), TestContext.Current.CancellationToken);
                if (!job.HasExited) amid++;
                job.Kill();
                await job.WaitForExitAsync(TestContext.Current.CancellationToken);
            }

            bool taken = Taken(runs.Folder, untouched);
            Assert.True(taken || kill >= 0);
            if (taken) after++;
            else before++;
        }

        output.WriteLine($"{Kills} kills, {amid} of them while it ran: {before} times the rack was as before, {after - 1} times the job was taken whole.");
    }

    private static string Fill(string folder, Rack rack)
    {
        using DataStore store = DataStore.Open(folder, TimeProvider.System);
        store.Rack.Take(rack);
        return DocumentJson.Write(store.Rack.Read());
    }

    private static Process Start(string folder) => Process.Start(new ProcessStartInfo(
        "dotnet",
        [Path.Combine(AppContext.BaseDirectory, "ringwright.dll"), "boards", Path.Combine(Runs.Examples, "two-wood-disc.json"), "--kept", "--done"])
    {
        RedirectStandardOutput = true,
        Environment = { [UserFolder.Variable] = folder },
    })!;

    // Whether the job was taken; whole, for undoing it brings every board back.
    private static bool Taken(string folder, string untouched)
    {
        using DataStore store = DataStore.Open(folder, TimeProvider.System);
        Assert.Null(store.Told);
        if (DocumentJson.Write(store.Rack.Read()) == untouched) return false;
        Assert.Contains("sawn", store.Rack.Undo()?.What, StringComparison.Ordinal);
        Assert.Equal(untouched, DocumentJson.Write(store.Rack.Read()));
        return true;
    }
}
