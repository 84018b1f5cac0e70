namespace Ringwright.Web.Tests.Browser;

/// <summary>Finds the Chromium that is on the machine.</summary>
internal static class InstalledBrowser
{
    private static readonly string[] Usual =
    [
        "/usr/bin/chromium-headless-shell", "/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome",
        "/Applications/Chromium.app/Contents/MacOS/Chromium", "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
        @"C:\Program Files\Google\Chrome\Application\chrome.exe",
    ];

    public static string Path()
    {
        string? named = Environment.GetEnvironmentVariable("RINGWRIGHT_CHROMIUM");
        if (!string.IsNullOrEmpty(named))
            return File.Exists(named) ? named : throw new InvalidOperationException($"RINGWRIGHT_CHROMIUM names {named}, but nothing is there.");
        return Usual.FirstOrDefault(File.Exists)
            ?? throw new InvalidOperationException("No Chromium was found for the browser tests; `node test.mjs` installs it, or RINGWRIGHT_CHROMIUM names one.");
    }
}
