using Microsoft.Playwright;

[assembly: AssemblyFixture(typeof(Scribeline.Browser.Tests.Bench))]

namespace Scribeline.Browser.Tests;

/// <summary>One browser for all tests of a run.</summary>
public sealed class Bench : IAsyncLifetime
{
    private static readonly string[] Arguments =
        ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync"];

    private static readonly string[] Places = ["/usr/bin/chromium-headless-shell", "/usr/bin/chromium"];

    /// <summary>How long a state is waited for before it counts as never reached. A laden machine is slow, not wrong.</summary>
    public static readonly TimeSpan Patience = TimeSpan.FromMinutes(3);

    private IPlaywright? playwright;

    /// <summary>The browser.</summary>
    public IBrowser Browser { get; private set; } = null!;

    /// <summary>Where the environment says, or where Debian keeps it: without windows, else with.</summary>
    public static string Chromium => Environment.GetEnvironmentVariable("SCRIBELINE_CHROMIUM") ?? Places.FirstOrDefault(File.Exists) ?? Places[0];

    public async ValueTask InitializeAsync()
    {
        Assert.True(File.Exists(Chromium), $"There is no browser at {Chromium}: apt-get install chromium-headless-shell, or name one in SCRIBELINE_CHROMIUM.");

        Assertions.SetDefaultExpectTimeout((float)Patience.TotalMilliseconds);
        playwright = await Playwright.CreateAsync();
        Browser = await playwright.Chromium.LaunchAsync(new() { ExecutablePath = Chromium, Args = Arguments, Timeout = (float)Patience.TotalMilliseconds });
    }

    public async ValueTask DisposeAsync()
    {
        if (Browser is not null) await Browser.DisposeAsync();
        playwright?.Dispose();
    }

    /// <summary>A workbench of its own on a copy of the examples, with one window on it.</summary>
    public Task<Workplace> Open(string example = "night-heron", int cases = 0, int width = 1500, int height = 1000, bool dark = false) =>
        Workplace.Open(Browser, example, cases, width, height, dark);
}
