using System.Diagnostics;
using System.Reflection;
using System.Text.RegularExpressions;

namespace Ringwright.Web.Tests.Browser;

/// <summary>The app as a user's own process, on a data folder and a port of its own, to be killed; else there is <see cref="RunningApp"/>.</summary>
internal sealed partial class AppProcess : IDisposable
{
    private static readonly string AppPath = typeof(AppProcess).Assembly.GetCustomAttributes<AssemblyMetadataAttribute>().First(a => a.Key == "AppPath").Value!;
    private readonly Process _process;

    private AppProcess(Process process, Uri address)
    {
        _process = process;
        Address = address;
    }

    public Uri Address { get; }

    public int Port => Address.Port;

    /// <summary>The next line the app says.</summary>
    public Task<string?> Line() => _process.StandardOutput.ReadLineAsync();

    /// <summary>Starts the app at any free port and waits for the line with its address.</summary>
    public static async Task<AppProcess> Start(string dataFolder, params string[] more)
    {
        var start = new ProcessStartInfo("dotnet", [Path.GetFullPath(AppPath), "--no-browser", "--port", "0", .. more])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            Environment = { ["RINGWRIGHT_DATA"] = dataFolder, ["DOTNET_TieredPGO"] = "0" },
        };
        Process process = Process.Start(start)!;
        using var limit = new CancellationTokenSource(TimeSpan.FromSeconds(30));
        string? line = await process.StandardOutput.ReadLineAsync(limit.Token);
        Match match = AddressLine().Match(line ?? "");
        if (!match.Success) throw new InvalidOperationException($"The app said “{line}” instead of its address; {await process.StandardError.ReadToEndAsync(limit.Token)}");
        return new(process, new Uri(match.Value));
    }

    /// <summary>Kills the process at once, as a power cut would.</summary>
    public async Task Kill()
    {
        _process.Kill();
        await _process.WaitForExitAsync();
    }

    public void Dispose()
    {
        if (!_process.HasExited) _process.Kill();
        _process.Dispose();
    }

    [GeneratedRegex(@"http://127\.0\.0\.1:\d+")]
    private static partial Regex AddressLine();
}
