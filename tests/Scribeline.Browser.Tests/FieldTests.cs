using System.Globalization;
using System.Net;
using System.Text.RegularExpressions;
using Microsoft.Playwright;
using Scribeline.App.Web;
using static Microsoft.Playwright.Assertions;

namespace Scribeline.Browser.Tests;

/// <summary>The day at the field: on the laptop, and on a phone that joined it.</summary>
public class FieldTests(Bench bench)
{
    private static CancellationToken Cancel => Xunit.TestContext.Current.CancellationToken;

    [Theory]
    [InlineData(1500, false)]
    [InlineData(390, true)]
    public async Task Conditions_and_lists_are_ticked_on_screen_and_kept(int width, bool dark)
    {
        await using var place = await bench.Open(width: width, dark: dark);
        await place.Go("field");
        await Expect(place.Page.Locator(".field-verdicts li").First).ToContainTextAsync("Do the rules allow this flight?");

        // As many are listed as are counted above them.
        var counted = Regex.Matches(await place.Page.Locator(".field-board .verdict-count").InnerTextAsync(), @"(\d+) (stop|open|watch)").Sum(m => int.Parse(m.Groups[1].Value, CultureInfo.InvariantCulture));
        Assert.True(counted > 0);
        await Expect(place.Page.Locator(".field-verdicts li")).ToHaveCountAsync(counted);
        await place.Turn("allowed");
        await place.Page.Locator("#c-N06b input").CheckAsync();
        await Expect(place.Page.Locator("#c-N06b .build-more")).ToContainTextAsync("confirmed by a person");
        await Expect(place.Page.Locator("#c-N06c input")).ToHaveCountAsync(0);

        await place.Turn("checklist");
        await place.Page.Locator(".day-list[open] input").First.PressAsync("Space");
        await Expect(place.Page.Locator(".day > .strong")).ToContainTextAsync("1 of ");
        await place.Page.HasNoSeriousFault("the field");

        // After a closed lid everything is where it was; a changed design takes the words back, and not the ticks.
        await place.Go("field");
        await place.Turn("allowed");
        await place.Turn("checklist");
        await Expect(place.Page.Locator("#c-N06b input")).ToBeCheckedAsync();
        await Expect(place.Page.Locator(".day > .strong")).ToContainTextAsync("1 of ");
        Assert.Null(place.Document.Change("parts[1].length", "21.6 in"));
        await place.Answered();
        await Expect(place.Page.Locator("#c-N06b input")).Not.ToBeCheckedAsync();
        await Expect(place.Page.Locator(".day > .strong")).ToContainTextAsync("1 of ");
        Assert.Empty(place.Foreign);
        Assert.Empty(place.Complaints);
    }

    [Fact]
    public async Task A_phone_joins_with_its_code_reads_and_ticks()
    {
        await using var place = await bench.Open();
        var gate = new PhoneGate(TimeProvider.System);
        await using var server = await PhoneServer.Start(place.Document, gate, IPAddress.Loopback, cancel: Cancel);
        await using var phone = await bench.Browser.NewContextAsync(new() { ViewportSize = new() { Width = 390, Height = 844 }, JavaScriptEnabled = true });
        phone.SetDefaultTimeout((float)Bench.Patience.TotalMilliseconds);
        var page = await phone.NewPageAsync();
        await page.GotoAsync(gate.Invitation!.ToString());
        await page.GetByRole(AriaRole.Button, new() { Name = "Join with this phone" }).ClickAsync();
        await Expect(page.Locator("h1")).ToHaveTextAsync("Night Heron");
        await page.Locator("#night-before-motor button").ClickAsync();
        await Expect(page.Locator("#night-before-motor button")).ToHaveAttributeAsync("aria-pressed", "true");
        await Expect(page.Locator("#night-before-motor .quiet")).ToContainTextAsync("ticked");
        await page.IsNotWiderThanItsWindow("the page of the phone");
        await page.HasNoSeriousFault("the page of the phone");
        if (Environment.GetEnvironmentVariable("SCRIBELINE_SHOW") is { Length: > 0 } folder) await page.ScreenshotAsync(new() { Path = Path.Combine(folder, "phone.png"), FullPage = false });

        // The laptop sees the tick at once.
        await place.Go("field");
        await place.Turn("checklist");
        await Expect(place.Page.Locator(".day > .strong")).ToContainTextAsync("1 of ");
        if (Environment.GetEnvironmentVariable("SCRIBELINE_SHOW") is { Length: > 0 } shown) await place.Page.ScreenshotAsync(new() { Path = Path.Combine(shown, "field.png"), FullPage = true });
    }
}
