using System.Globalization;

namespace Scribeline.Browser.Tests;

/// <summary>How quickly an edit is answered on screen, and what many edits leave behind. Measured on demand: SCRIBELINE_MEASURE=1.</summary>
[Trait("Category", "Measure")]
public class LiveTests(Bench bench, ITestOutputHelper output)
{
    private const int Edits = 100;
    private const int Warming = 10;
    private const int ManyEdits = 1000;

    // In the page's own clock: from the input event to the change of the page.
    private const string Keypress =
        """
        async ([field, value]) => {
          const state = document.querySelector("[data-shown]");
          const card = document.getElementById("q-weight");
          const input = document.querySelector(field);
          const before = state.dataset.shown;
          const start = performance.now();
          input.value = value;
          input.dispatchEvent(new Event("input", { bubbles: true }));
          const until = (met) => new Promise((resolve) => {
            const look = () => met() && (watch.disconnect(), resolve(performance.now() - start));
            const watch = new MutationObserver(look);
            watch.observe(document.body, { subtree: true, childList: true, attributes: true, characterData: true });
            look();
          });
          const fresh = () => state.dataset.shown !== before;
          return [await until(fresh), await until(() => fresh() && !card.classList.contains("stale")), await until(() => fresh() && state.dataset.answered === state.dataset.shown)];
        }
        """;

    [Theory]
    [InlineData("parts[0]", "parts[0].mass", 318, "g")]
    [InlineData("parts[1]", "parts[1].length", 20, "in")]
    [InlineData("charges[0]", "charges[0].mass", 1, "g")]
    public async Task Every_keypress_is_answered(string thing, string path, double value, string unit)
    {
        Assert.SkipUnless(Environment.GetEnvironmentVariable("SCRIBELINE_MEASURE") == "1", "measured on demand");
        await using var place = await bench.Open();
        await place.Pick(thing);
        await place.Page.Locator($"[data-path='{path}'] input").WaitForAsync();
        List<double[]> times = [];
        var work = TimeSpan.Zero;
        for (var i = 0; i < Edits + Warming; i++)
        {
            // A value never typed before: nothing is answered from what is kept.
            var typed = string.Create(CultureInfo.InvariantCulture, $"{value + (i * 0.003)} {unit}");
            var took = await place.Page.EvaluateAsync<double[]>(Keypress, new object[] { $"[data-path='{path}'] input", typed });
            if (i < Warming) work = Environment.CpuUsage.TotalTime;
            else times.Add(took);
        }

        Assert.True(place.Document.Answers.IsWhole);
        output.WriteLine($"{path}: drawn {Quantiles(times, 0)}; first answers {Quantiles(times, 1)}; all {Quantiles(times, 2)}; processor time of the server {(Environment.CpuUsage.TotalTime - work).TotalMilliseconds / Edits:F0} ms an edit");
    }

    [Fact]
    public async Task Memory_does_not_grow_with_edits()
    {
        Assert.SkipUnless(Environment.GetEnvironmentVariable("SCRIBELINE_MEASURE") == "1", "measured on demand");
        await using var place = await bench.Open();
        List<double> held = [];
        for (var i = 1; i <= ManyEdits; i++)
        {
            Assert.Null(place.Document.Change("parts[1].length", $"{(20 + (i / 1000.0)).ToString(CultureInfo.InvariantCulture)} in", "typing"));
            if (i % 10 == 0) await place.Document.Settled;
            if (i % 250 != 0) continue;
            await place.Answered();
            held.Add(GC.GetTotalMemory(forceFullCollection: true) / 1e6);
        }

        output.WriteLine($"managed memory after 250, 500, 750, 1000 edits, MB: {string.Join(", ", held.Select(h => h.ToString("F1", CultureInfo.InvariantCulture)))}");
        Assert.True(held[^1] < held[0] * 1.5, "memory grows with edits");
    }

    private static string Quantiles(List<double[]> times, int which)
    {
        var sorted = times.Select(t => t[which]).Order().ToList();
        return string.Create(CultureInfo.InvariantCulture, $"{sorted[sorted.Count / 2]:F0} / {sorted[sorted.Count * 95 / 100]:F0} ms");
    }
}
