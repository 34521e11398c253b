using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Scribeline.Browser.Tests;

/// <summary>Whether a page is for everybody.</summary>
internal static class Reach
{
    // Where what is in order stands is not asked: on a page of thousands of elements finding that out takes longer than looking for faults.
    private static readonly AxeRunOptions Faults = new() { ResultTypes = [ResultType.Violations] };

    /// <summary>Asserts that nothing on the page is seriously or critically out of reach for somebody.</summary>
    /// <param name="page">The page.</param>
    /// <param name="where">What it shows.</param>
    public static async Task HasNoSeriousFault(this IPage page, string where) => NoneOf(await page.RunAxe(Faults), where);

    /// <summary>The same of a part of a page.</summary>
    /// <param name="part">The part.</param>
    /// <param name="where">What it shows.</param>
    public static async Task HasNoSeriousFault(this ILocator part, string where) => NoneOf(await part.RunAxe(Faults), where);

    /// <summary>Asserts that a page needs no scrolling to the side.</summary>
    /// <param name="page">The page.</param>
    /// <param name="where">What it shows.</param>
    public static async Task IsNotWiderThanItsWindow(this IPage page, string where)
    {
        var over = await page.EvaluateAsync<int>("document.documentElement.scrollWidth - document.documentElement.clientWidth");
        Assert.True(over <= 0, $"{where} is {over} pixels wider than its window");
    }

    private static void NoneOf(AxeResult found, string where) => Assert.Empty(found.Violations
        .Where(v => v.Impact is "serious" or "critical")
        .Select(v => $"{where}: {v.Id}: {v.Help}: {string.Join("; ", v.Nodes.Take(4).Select(n => n.Html))}"));
}
