using System.ComponentModel;
using System.Diagnostics;

namespace Ringwright.Web;

/// <summary>Opens the user's own browser.</summary>
internal static class Browser
{
    /// <summary>Opens <paramref name="address"/>; where that is not possible nothing happens, the address stands in the console.</summary>
    public static void Open(string address)
    {
        // Over ssh or in a container there is no screen to open a browser on.
        if (OperatingSystem.IsLinux() && Environment.GetEnvironmentVariable("DISPLAY") is null && Environment.GetEnvironmentVariable("WAYLAND_DISPLAY") is null) return;
        try
        {
            using Process? started = Process.Start(new ProcessStartInfo(address) { UseShellExecute = true });
        }
        catch (Exception e) when (e is Win32Exception or InvalidOperationException or PlatformNotSupportedException)
        {
            Console.Error.WriteLine("No browser could be opened; open the address by hand.");
        }
    }
}
