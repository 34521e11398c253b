using CsCheck;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Resolving;
using Scribeline.Tests;

namespace Scribeline.Store.Tests;

/// <summary>
/// Files that are broken, mistaken or meant to do harm. Each file in Hostile/ has its messages beside it, compared to the letter. Lines of
/// the expected text that begin with # are remarks.
/// </summary>
public class HostileTests
{
    private const long MostBytes = 200_000_000;

    private static string Folder => Path.Combine(AppContext.BaseDirectory, "Hostile");

    public static TheoryData<string> Cases => [.. Directory.EnumerateFiles(Folder, "*.yaml").Select(f => Path.GetFileNameWithoutExtension(f)!).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Cases))]
    public void Says_what_is_wrong(string name)
    {
        var reading = Read(() => DesignFile.Read(Path.Combine(Folder, name + ".yaml")));

        // What a file says may be without fault and yet not fit together: that is told once its airframe is resolved.
        var geometry = reading.Good ? AirframeResolver.Resolve(reading.Design!).Problems.Select(reading.Place) : [];
        var said = string.Join('\n', reading.Problems.Concat(geometry).Select(p => p.ToString()));
        var expected = Path.Combine(Folder, name + ".expected.txt");
        if (Environment.GetEnvironmentVariable("SCRIBELINE_APPROVE") == "1")
        {
            var kept = File.Exists(expected) ? string.Concat(File.ReadLines(expected).Where(l => l.StartsWith('#')).Select(l => l + "\n")) : "";
            File.WriteAllText(Path.Combine(Repository.Folder, "tests", "Scribeline.Store.Tests", "Hostile", name + ".expected.txt"), kept + said + "\n");
            return;
        }

        Assert.True(File.Exists(expected), $"{name} has no expected messages.");
        Assert.Equal(string.Join('\n', File.ReadLines(expected).Where(l => l.Length > 0 && l[0] != '#')), said);
    }

    [Fact]
    public void There_are_sixty_cases_or_more() => Assert.True(Cases.Count >= 60);

    [Fact]
    public void A_hundred_megabytes_are_refused_unread()
    {
        using var folder = new TemporaryFolder();
        var path = folder.Path("rocket.yaml");
        using (var file = File.Create(path)) file.SetLength(100_000_000);
        Assert.Contains("larger than 1 MB", Assert.Single(Problems(() => DesignFile.Read(path), 5_000_000)).Message, StringComparison.Ordinal);
    }

    public static TheoryData<string, string> Generated => new()
    {
        { "brackets", new string('[', 900_000) },
        { "braces", string.Concat(Enumerable.Repeat("{a: ", 200_000)) },
        { "many items", "parts:\n" + string.Concat(Enumerable.Repeat("- a\n", 200_000)) },
        { "many keys", string.Concat(Enumerable.Range(0, 60_000).Select(i => $"k{i}: {i}\n")) },
        { "one long line", "name: " + new string('x', 900_000) },
        { "one long key", new string('x', 900_000) + ": y" },
        { "question marks", string.Concat(Enumerable.Repeat("? ", 400_000)) },
        { "dashes", string.Concat(Enumerable.Repeat("- ", 400_000)) },
        { "anchors", string.Concat(Enumerable.Range(0, 50_000).Select(i => $"- &a{i} x\n")) },
        { "quotes", "name: " + new string('"', 900_000) },
        { "colons", string.Concat(Enumerable.Repeat("a:\n", 200_000)) },
        { "line ends", new string('\n', 900_000) },
        { "carriage returns", new string('\r', 900_000) },
        { "a quantity of digits", "scribeline: 1\nrail: {usable length: " + new string('1', 500_000) + " m}" },
        { "a quantity of points", "scribeline: 1\nrail: {usable length: 1" + new string('.', 500_000) + " m}" },
        { "indents", string.Concat(Enumerable.Range(0, 1200).Select(i => new string(' ', i) + "a:\n")) },
    };

    [Theory]
    [MemberData(nameof(Generated))]
    public void Large_nonsense_is_refused_within_memory(string what, string text)
    {
        Assert.NotEmpty(what);
        Assert.NotEmpty(Problems(() => DesignFile.ReadText(text)));
    }

    [Fact]
    public void A_starter_with_letters_changed_at_random_never_throws()
    {
        var text = PlainDesign.Text("Night Heron");
        var letters = "{}[]:,#&*!|>'\"%@`-? \t\n\r0a°±\u00A0\uD83D";
        Gen.Select(Gen.Int[0, text.Length - 1], Gen.Int[0, 40], Gen.String[Gen.Char[letters], 0, 6]).Array[1, 4].Sample(
            edits =>
            {
                var mangled = text;
                foreach (var (at, cut, insert) in edits)
                {
                    var from = Math.Min(at, mangled.Length);
                    mangled = mangled.Remove(from, Math.Min(cut, mangled.Length - from)).Insert(from, insert);
                }

                var reading = DesignFile.ReadText(mangled);
                return reading.Design is not null || reading.Problems.Count > 0;
            },
            iter: 300);
    }

    [Fact]
    public void A_folder_without_a_design_or_with_two_says_so()
    {
        using var folder = new TemporaryFolder();
        Assert.Contains("holds no design file", Assert.Single(DesignFile.Read(folder.Path("")).Problems).Message, StringComparison.Ordinal);
        File.WriteAllText(folder.Path("a.rocket.yaml"), "");
        File.WriteAllText(folder.Path("b.rocket.yaml"), "");
        Assert.Contains("holds 2 design files", Assert.Single(DesignFile.Read(folder.Path("")).Problems).Message, StringComparison.Ordinal);
        File.WriteAllText(folder.Path("rocket.yaml"), PlainDesign.Text("Night Heron"));
        Assert.True(DesignFile.Read(folder.Path("")).Good);
        Assert.Contains("There is no file", Assert.Single(DesignFile.Read(folder.Path("none.yaml")).Problems).Message, StringComparison.Ordinal);
    }

    private static ValueList<Problem> Problems(Func<DesignReading> read, long most = MostBytes) => Read(read, most).Problems;

    private static DesignReading Read(Func<DesignReading> read, long most = MostBytes)
    {
        // What was allocated in all is an upper bound of what was held at once.
        var before = GC.GetAllocatedBytesForCurrentThread();
        var reading = read();
        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, most);
        Assert.True(reading.Problems.Count <= DesignReading.MostProblems);
        return reading;
    }
}
