using Scribeline.Engine.Design;
using Scribeline.Store.Logbooks;
using Scribeline.Tests;

namespace Scribeline.Store.Tests.Logbooks;

/// <summary>Shots of the ground tests in the logbook, and the line each is kept as.</summary>
public class ShotLogTests
{
    private static readonly DateTimeOffset Morning = new(2026, 5, 9, 8, 15, 0, TimeSpan.Zero);

    private const string Body = "{charge: \"Main A\", powder: \"1.4 g ± 0.02 g\", happened: \"parted\", filmed: {distance: \"12 in\", frames: \"8\", rate: \"240 Hz\"}}";

    [Fact]
    public void Keeps_shots_takes_them_out_and_puts_them_back()
    {
        using var folder = new TemporaryFolder();
        using (var book = Logbook.Open(folder.Path("rocket.yaml")).Value!)
        {
            Assert.Equal(new LoggedShot(1, Body, Morning, false), book.Shoot(Body, Morning).Value);
            book.Shoot("{}", Morning.AddHours(1));
            Assert.Equal([false, false], book.Shots().Value!.Select(s => s.Out));
            Assert.True(book.Mark(1, true, Morning.AddHours(2)).Value!.Out);
            Assert.True(book.Mark(1, true, Morning.AddHours(3)).Value!.Out);
        }

        using var again = Logbook.Open(folder.Path("rocket.yaml")).Value!;
        Assert.Equal([true, false], again.Shots().Value!.Select(s => s.Out));
        Assert.False(again.Mark(1, false, Morning.AddHours(4)).Value!.Out);
        Assert.Equal([Body, "{}"], again.Shots().Value!.Select(s => s.Body));
        Assert.Null(again.Mark(7, true, Morning).Value);
    }

    [Fact]
    public void Another_design_of_the_folder_has_shots_of_its_own()
    {
        using var folder = new TemporaryFolder();
        using var one = Logbook.Open(folder.Path("one.rocket.yaml")).Value!;
        using var other = Logbook.Open(folder.Path("other.rocket.yaml")).Value!;
        var shot = one.Shoot(Body, Morning).Value!;
        Assert.Empty(other.Shots().Value!);
        Assert.Null(other.Mark(shot.Number, true, Morning).Value);
        Assert.False(one.Shots().Value!.Single().Out);
    }

    [Fact]
    public void A_line_reads_as_the_design_file_would()
    {
        var (shot, problems) = ShotText.Read(ShotText.Of([("charge", " Main A "), ("powder", "1.4 g ± 0.02 g"), ("happened", "parted"), ("note", ""), ("filmed", "12 in, 8 frames, 240 fps")]), "shot 1");
        Assert.Empty(problems);
        Assert.Equal(("Main A", ShotWord.Parted, 0.0014), (shot!.Charge, shot.Happened, Math.Round(shot.Powder.Si, 9)));
        Assert.Equal(("shot 1", "shot 1.powder"), (shot.At, shot.Powder.At));
        Assert.Equal((8, 240.0), (shot.Filmed!.Frames, shot.Filmed.Rate.Si));
        Assert.Equal(Body, ShotText.Of([("charge", "Main A"), ("powder", "1.4 g ± 0.02 g"), ("happened", "parted"), ("filmed", "12 in, 8 frames, 240 fps")]));
    }

    [Theory]
    [InlineData("happened", "exploded", "'happened' cannot be 'exploded'.")]
    [InlineData("powder", "-1 g", "'powder' cannot be -1 g.")]
    [InlineData("powder", "1.4 mm", "'powder':")]
    [InlineData("pins", "two", "'pins': 'two' is not a count.")]
    [InlineData("filmed", "fast", "'filmed' holds 'fast' where a map belongs.")]
    [InlineData("note", "}\", charge: \"x", null)]
    [InlineData("note", "line\r\nbreak \\ \0 \u2028 *a &b <script>", null)]
    public void What_is_typed_is_refused_with_a_word_or_kept_as_text(string key, string value, string? refusal)
    {
        var typed = new Dictionary<string, string?> { ["charge"] = "Main A", ["powder"] = "1 g", ["happened"] = "parted", [key] = value };
        var (shot, problems) = ShotText.Read(ShotText.Of(typed.Select(t => (t.Key, t.Value))), "shot 1");
        if (refusal is null)
        {
            Assert.Empty(problems);
            Assert.Equal("Main A", shot!.Charge);
            Assert.NotEmpty(shot.Note!);
        }
        else
        {
            Assert.Null(shot);
            Assert.Contains(problems, p => p.Message.StartsWith(refusal, StringComparison.Ordinal));
        }
    }

    [Fact]
    public void Shots_of_the_logbook_stand_after_those_of_the_file_without_those_taken_out()
    {
        var design = DesignFile.ReadText(PlainDesign.Text("Grey Plover")).Design!;
        var with = ShotRecords.AddTo(design, [new(1, Body, Morning, false), new(2, Body, Morning, true), new(3, "{nonsense", Morning, false)]);
        var shot = Assert.Single(with.Records!.Shots);
        Assert.Equal(("shot 1", "2026-05-09"), (shot.At, shot.Date));
        Assert.Same(design, ShotRecords.AddTo(design, []));
    }
}
