using System.Collections.Concurrent;
using System.Globalization;
using Microsoft.Playwright;
using Scribeline.App.Documents;
using Scribeline.App.Web;
using Scribeline.Tests;

namespace Scribeline.Browser.Tests;

/// <summary>A workbench on a copy of the examples, a window on it, and every request the window made.</summary>
public sealed class Workplace : IAsyncDisposable
{
    private readonly IBrowserContext context;
    private readonly DocumentShelf shelf;
    private readonly WorkbenchServer server;

    private Workplace(string folder, DocumentShelf shelf, WorkbenchServer server, IBrowserContext context, IPage page) =>
        (Folder, this.shelf, this.server, this.context, Page) = (folder, shelf, server, context, page);

    /// <summary>The copy of the examples.</summary>
    public string Folder { get; }

    /// <summary>The window.</summary>
    public IPage Page { get; }

    /// <summary>Where it answers.</summary>
    public Uri Address => server.Address;

    /// <summary>Addresses asked for that are not the workbench's own.</summary>
    public ConcurrentBag<string> Foreign { get; } = [];

    /// <summary>What the browser complained of.</summary>
    public ConcurrentBag<string> Complaints { get; } = [];

    /// <summary>The first design.</summary>
    public DesignDocument Document { get; private set; } = null!;

    internal static async Task<Workplace> Open(IBrowser browser, string example, int cases, int width, int height, bool dark)
    {
        var folder = Directory.CreateTempSubdirectory("scribeline-").FullName;
        Copy(Path.Combine(Approved.Root, "examples"), folder);
        var shelf = new DocumentShelf(new(folder, Path.Combine(folder, "recent"), Path.Combine(Approved.Root, "examples"))
        {
            Cases = cases,
            Rest = TimeSpan.FromMilliseconds(50),
            LookEvery = TimeSpan.FromMilliseconds(200),
        });
        var server = await WorkbenchServer.Start(shelf);
        var context = await browser.NewContextAsync(new()
        {
            ViewportSize = new() { Width = width, Height = height },
            ColorScheme = dark ? ColorScheme.Dark : ColorScheme.Light,
            DeviceScaleFactor = 1,
        });
        context.SetDefaultTimeout(30_000);
        var page = await context.NewPageAsync();
        var place = new Workplace(folder, shelf, server, context, page);
        if (example.Length > 0) place.Document = shelf.Open(Path.Combine(folder, example)).Document!;
        await context.RouteAsync("**/*", async route =>
        {
            if (new Uri(route.Request.Url) is { Scheme: "http", Host: "127.0.0.1" } or { Scheme: "data" or "blob" }) await route.ContinueAsync();
            else
            {
                place.Foreign.Add(route.Request.Url);
                await route.AbortAsync();
            }
        });
        page.Console += (_, message) =>
        {
            if (message.Type == "error") place.Complaints.Add(message.Text);
        };
        page.PageError += (_, error) => place.Complaints.Add(error);
        if (example.Length > 0) await place.Go("desk");
        return place;
    }

    /// <summary>Goes to a place of the first design and waits until it answers and is answered.</summary>
    public async Task Go(string to, IPage? window = null)
    {
        await (window ?? Page).GotoAsync(new Uri(Address, $"{Document.Id}/{to}").ToString());
        await Live(window);
        if (Document.Reading.Good) await Answered(window);
    }

    /// <summary>Another window on the same workbench.</summary>
    public async Task<IPage> Another(string to = "desk")
    {
        var page = await context.NewPageAsync();
        await Go(to, page);
        return page;
    }

    /// <summary>Picks a thing in the list of all.</summary>
    public Task Pick(string path, IPage? window = null) => (window ?? Page).Locator($"[id='pick-{path}']").ClickAsync();

    /// <summary>Waits until the page listens.</summary>
    public async Task Live(IPage? window = null) => await (window ?? Page).Locator("html[data-live]").WaitForAsync(new() { State = WaitForSelectorState.Attached });

    /// <summary>Waits until the newest version is answered.</summary>
    public async Task Answered(IPage? window = null)
    {
        await Document.Settled;
        await (window ?? Page).Locator($"[data-answered='{Document.Answers.Version.ToString(CultureInfo.InvariantCulture)}']").First.WaitForAsync(new() { State = WaitForSelectorState.Attached });
    }

    public async ValueTask DisposeAsync()
    {
        await context.DisposeAsync();
        await server.DisposeAsync();
        shelf.Dispose();
        Directory.Delete(Folder, recursive: true);
    }

    private static void Copy(string from, string to)
    {
        foreach (var file in Directory.EnumerateFiles(from, "*", SearchOption.AllDirectories))
        {
            var target = Path.Combine(to, Path.GetRelativePath(from, file));
            Directory.CreateDirectory(Path.GetDirectoryName(target)!);
            File.Copy(file, target);
        }
    }
}
