using System.Diagnostics;
using System.Globalization;
using System.Runtime.CompilerServices;
using CsCheck;
using Scribeline.Store.Logbooks;

namespace Scribeline.Store.Tests.Logbooks;

/// <summary>
/// A logbook whose process is killed while it writes. The writer is this program itself, started again with a word in its environment: it
/// says on its output what the logbook has reported as written, and is killed at some moment.
/// </summary>
public class SuddenEndTests
{
    private const string WriterWord = "SCRIBELINE_TESTS_WRITE";
    private const int Kills = 200;
    private static readonly DateTimeOffset Evening = new(2026, 5, 4, 19, 30, 0, TimeSpan.Zero);

    [Fact]
    public async Task Two_hundred_kills_lose_nothing_that_was_reported_as_written()
    {
        using var folder = new TemporaryFolder();
        var random = new Random(8191);
        int reported = 0, written = 0;
        for (var kill = 0; kill < Kills; kill++)
        {
            // A fresh folder now and then, so that the making of the tables is interrupted too.
            var home = folder.Path($"{kill / 20}");
            Directory.CreateDirectory(home);
            var said = await KilledAfter(home, kill, fromStart: kill % 5 == 0, random.NextDouble() * (kill % 5 == 0 ? 250 : 30));
            reported += said.Count;
            using var book = Logbook.Open(Path.Combine(home, "rocket.yaml"), patience: 30).Value!;
            Assert.Equal("", book.Check());
            var kept = All(book).ToHashSet();
            Assert.All(said, line => Assert.Contains(line, kept));
            written += kept.Count(line => line.EndsWith($" {kill}", StringComparison.Ordinal));
        }

        // At most the write under way was written without being reported.
        Assert.InRange(written, reported, reported + Kills);

        // There was something to lose, however slow the machine: four kills in five wait for a write to be reported.
        Assert.True(reported >= 4 * Kills / 5, $"only {reported} writes were reported before the kills");
        TestContext.Current.TestOutputHelper?.WriteLine($"{reported} reported, {written} written");
    }

    private static async Task<List<string>> KilledAfter(string home, int kill, bool fromStart, double wait)
    {
        var program = Path.Combine(AppContext.BaseDirectory, "Scribeline.Store.Tests" + (OperatingSystem.IsWindows() ? ".exe" : ""));
        var start = new ProcessStartInfo(program) { RedirectStandardOutput = true, UseShellExecute = false };
        start.Environment[WriterWord] = string.Create(CultureInfo.InvariantCulture, $"{kill} {home}");
        using var writer = Process.Start(start)!;
        List<string> said = [];
        if (!fromStart && await writer.StandardOutput.ReadLineAsync() is { } first) said.Add(first);
        var until = Stopwatch.StartNew();
        var rest = Task.Run(async () =>
        {
            while (await writer.StandardOutput.ReadLineAsync() is { } line) said.Add(line);
        });
        await Task.Delay(TimeSpan.FromMilliseconds(Math.Max(0, wait - until.Elapsed.TotalMilliseconds)));
        writer.Kill();
        await writer.WaitForExitAsync();
        await rest;

        // The last line may have been cut by the kill itself.
        if (said.Count > 0 && !said[^1].EndsWith(" .", StringComparison.Ordinal)) said.RemoveAt(said.Count - 1);
        return said.ConvertAll(line => line[..^2]);
    }

    private static IEnumerable<string> All(Logbook book) =>
    [
        .. book.Revisions().Value!.Where(r => book.TextOf(r).Value is { } text && Logbook.HashOf(text) == r.Hash).Select(r => $"saved {r.Words}"),
        .. book.Progress().Value!.Select(t => $"ticked {t.Step} {t.Note}"),
        .. book.Measured().Value!.Select(m => $"measured {m.What} {m.Value}"),
    ];

#pragma warning disable CA2255 // The writer must run in place of the tests, before anything of them.
    [ModuleInitializer]
    internal static void WriteIfAsked()
    {
        if (Environment.GetEnvironmentVariable(WriterWord) is not { } word) return;
        var space = word.IndexOf(' ', StringComparison.Ordinal);
        Write(word[..space], Path.Combine(word[(space + 1)..], "rocket.yaml"));
        Environment.Exit(0);
    }
#pragma warning restore CA2255

    // Ends by being killed; or by itself after half a minute, should the test have been killed first.
    private static void Write(string kill, string design)
    {
        using var output = new StreamWriter(Console.OpenStandardOutput()) { AutoFlush = true };
        using var book = Logbook.Open(design, patience: 30).Value!;
        var clock = Stopwatch.StartNew();
        for (var i = 0; clock.Elapsed.TotalSeconds < 30; i++)
        {
            var unsaved = book.Keep(new string('u', 100 * i), "", Evening);
            var revision = book.Save($"{kill}/{i}\n" + new string('x', 3000), [], $"{i} {kill}", Evening);
            if (unsaved.Good && revision.Good) output.WriteLine($"saved {i} {kill} .");
            if (book.Tick($"{kill}/{i}", true, $"{kill}", Evening).Good) output.WriteLine($"ticked {kill}/{i} {kill} .");
            if (book.Measure($"{kill}/{i}", $"{kill}", "", Evening).Good) output.WriteLine($"measured {kill}/{i} {kill} .");
        }
    }
}
