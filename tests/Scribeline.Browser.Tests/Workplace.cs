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
    private static readonly TimeSpan Look = TimeSpan.FromSeconds(2);

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
        ExampleCopies.Into(folder);
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
        context.SetDefaultTimeout((float)Bench.Patience.TotalMilliseconds);
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
        // What is waited for is what the page says of itself, not that every picture of it has come.
        await (window ?? Page).GotoAsync(new Uri(Address, $"{Document.Id}/{to}").ToString(), new() { WaitUntil = WaitUntilState.Commit });
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

    /// <summary>Picks a thing in the list of all, by its key: what a question opened above it has moved away cannot be missed so.</summary>
    public async Task Pick(string path, IPage? window = null)
    {
        // Where room is short, the list waits behind its button.
        var turn = (window ?? Page).Locator("#turn-things[aria-expanded='false']");
        if (await turn.IsVisibleAsync()) await turn.PressAsync("Enter");
        var pick = (window ?? Page).Locator($"[id='pick-{path}']");
        await pick.WaitForAsync();
        await pick.PressAsync("Enter");
    }

    /// <summary>
    /// Opens a question and waits until its inside is there. By its key: what is pressed with a pointer while another question opens above it
    /// has moved away before the button is let go.
    /// </summary>
    public async Task<ILocator> Turn(string question)
    {
        await Page.Locator($"#t-{question}").PressAsync("Enter");
        var inside = Page.Locator($"#a-{question}");
        await inside.WaitForAsync();
        return inside;
    }

    /// <summary>Waits until the page has been painted anew, and what it does with every painting was done.</summary>
    public Task Painted() => Page.EvaluateAsync("() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done)))");

    /// <summary>Waits until the page listens.</summary>
    public async Task Live(IPage? window = null) => await (window ?? Page).Locator("html[data-live]").WaitForAsync(new() { State = WaitForSelectorState.Attached });

    /// <summary>Waits until the newest version is answered, whichever that is by then.</summary>
    public async Task Answered(IPage? window = null)
    {
        for (var left = Bench.Patience / Look; ; left--)
        {
            await Document.Settled;
            var version = Document.Answers.Version.ToString(CultureInfo.InvariantCulture);
            try
            {
                await (window ?? Page).Locator($"[data-answered='{version}']").First.WaitForAsync(new() { State = WaitForSelectorState.Attached, Timeout = (float)Look.TotalMilliseconds });
                return;
            }
            catch (TimeoutException) when (left > 0)
            {
                // Another version may have come meanwhile.
            }
            catch (TimeoutException)
            {
                var state = await (window ?? Page).Locator(".questions-state").First.EvaluateAsync<string>("s => s.innerHTML");
                throw new TimeoutException($"Version {version} is answered but not shown. The page says: {state} The design: version {Document.Version}, {string.Join("; ", Document.Problems)}. It complains: {string.Join("; ", Complaints)}");
            }
        }
    }

    /// <summary>Ends the workbench under its window.</summary>
    public ValueTask End() => server.DisposeAsync();

    public async ValueTask DisposeAsync()
    {
        // A page that is left says so, and the server lets go of it at once; of one that is torn away it keeps all for ten minutes.
        foreach (var page in context.Pages) await page.GotoAsync("about:blank");
        await context.DisposeAsync();
        await server.DisposeAsync();
        shelf.Dispose();
        Directory.Delete(Folder, recursive: true);
    }
}
