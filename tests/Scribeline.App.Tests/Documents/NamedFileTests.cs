using Scribeline.App.Documents;
using Scribeline.Store;
using Scribeline.Store.Logbooks;

namespace Scribeline.App.Tests.Documents;

/// <summary>Motor, field and weather edited with the design that names them.</summary>
public sealed class NamedFileTests : IDisposable
{
    private readonly ScratchFolder scratch = ScratchFolder.WithExamples();
    private DesignDocument document;

    public NamedFileTests()
    {
        document = Open();
    }

    private string Motor => scratch.At("motors/k521.yaml");

    private string Thrust => scratch.At("motors/k521.csv");

    private string Design => scratch.At("night-heron/rocket.yaml");

    [Fact]
    public async Task An_edit_of_the_motor_is_answered_undone_and_saved_to_its_file()
    {
        await document.Settled;
        var (before, own) = (Height(), File.ReadAllText(Design));
        Assert.Null(document.Change("motor.loaded mass", "1.6 kg ± 10 g"));
        await document.Settled;
        Assert.True(Height() < before);
        Assert.True(document.IsChanged);
        document.Undo();
        await document.Settled;
        Assert.Equal(before, Height());
        Assert.False(document.IsChanged);
        document.Redo();
        Assert.Null(document.Save());
        Assert.False(document.IsChanged);
        Assert.Equal(own, File.ReadAllText(Design));
        var saved = File.ReadAllText(Motor);
        Assert.Contains("loaded mass: 1.6 kg ± 10 g", saved, StringComparison.Ordinal);
        Assert.StartsWith("# Invented motor", saved, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_point_of_thrust_a_height_and_a_wind_are_answered_and_undone_in_turn()
    {
        await document.Settled;
        var before = document.Answers;
        Assert.Null(document.ChangeThrust((text, at) => ThrustText.Replace(text, at, 3, true, "700")));
        await document.Settled;
        Assert.NotEqual(before.Of("how-high")!.Findings, document.Answers.Of("how-high")!.Findings);
        Assert.Null(document.Change("site.elevation", "4000 ft"));
        Assert.Null(document.Change("weather.layers[1].wind speed", "15 m/s"));
        await document.Settled;
        Assert.NotEqual(before.Of("today")!.Findings, document.Answers.Of("today")!.Findings);
        for (var i = 0; i < 3; i++) document.Undo();
        await document.Settled;
        Assert.Equal(before.Of("how-high")!.Findings, document.Answers.Of("how-high")!.Findings);
        Assert.Equal(File.ReadAllText(Thrust), document.TextOf(Thrust));
        Assert.False(document.CanUndo);
    }

    [Theory]
    [InlineData("motor.diameter", "54 mmm")]
    [InlineData("motor.diameter", "-3 mm")]
    [InlineData("site.elevation", "high")]
    [InlineData("weather.layers[0].wind speed", "7")]
    public void What_cannot_be_read_is_refused_and_changes_nothing(string path, string value)
    {
        var problem = document.Change(path, value);
        Assert.NotEmpty(problem!.Suggestion);
        Assert.False(document.IsChanged);
        Assert.False(document.CanUndo);
    }

    [Fact]
    public void A_thrust_that_cannot_be_is_refused()
    {
        Assert.Contains("rise", document.ChangeThrust((text, at) => ThrustText.Replace(text, at, 3, false, "9"))!.Message, StringComparison.Ordinal);
        Assert.False(document.IsChanged);
    }

    [Fact]
    public void A_malformed_motor_file_tells_its_lines_and_can_be_mended_as_text()
    {
        document.Dispose();
        var good = File.ReadAllText(Motor);
        File.WriteAllText(Motor, good.Replace("54 mm", "54 mn", StringComparison.Ordinal) + "colour: red\n");
        document = Open();
        Assert.Equal([("../motors/k521.yaml", 3), ("../motors/k521.yaml", 11)], document.Problems.Select(p => (p.File, p.Line!.Value)));
        Assert.True(document.Type(good, document.Version, null, Motor));
        Assert.Empty(document.Problems);
        Assert.Null(document.Save());
        Assert.Equal(good, File.ReadAllText(Motor));
    }

    [Fact]
    public void A_missing_file_is_told_and_another_begun_beside_the_design()
    {
        document.Dispose();
        File.Delete(Motor);
        document = Open();
        Assert.Contains("There is no file", Assert.Single(document.Problems).Message, StringComparison.Ordinal);
        Assert.Null(document.Outline!.Find("motor"));
        Assert.NotNull(document.Change("motor.diameter", "38 mm"));
        Assert.Null(document.BeginFile("motor", "My motor"));
        Assert.Empty(document.Problems);
        Assert.Contains("motor: my-motor.yaml", document.Reading.Text, StringComparison.Ordinal);
        Assert.Null(document.Change("motor.diameter", "38 mm"));
        Assert.NotNull(document.BeginFile("motor", "my motor"));
        document.Undo();
        document.Undo();
        Assert.Single(document.Problems);
    }

    [Fact]
    public async Task A_copy_takes_the_edits_and_leaves_the_shared_file_as_it_was()
    {
        var (motor, thrust) = (File.ReadAllText(Motor), File.ReadAllText(Thrust));
        Assert.Null(document.Change("motor.loaded mass", "1.6 kg"));
        Assert.Null(document.ChangeThrust((text, at) => ThrustText.Replace(text, at, 3, true, "700")));
        await document.Settled;
        var height = Height();
        Assert.Null(document.CopyBeside("motor", "K521 of mine"));
        await document.Settled;
        Assert.Equal(height, Height());
        Assert.All(document.Named.Where(n => n.Key.StartsWith("motor", StringComparison.Ordinal)), n => Assert.False(document.IsShared(n)));
        Assert.Contains("thrust: k521-of-mine.csv", File.ReadAllText(scratch.At("night-heron/k521-of-mine.yaml")), StringComparison.Ordinal);
        Assert.Contains("0.15,700", File.ReadAllText(scratch.At("night-heron/k521-of-mine.csv")), StringComparison.Ordinal);
        Assert.Null(document.Save());
        Assert.Equal((motor, thrust), (File.ReadAllText(Motor), File.ReadAllText(Thrust)));
        Assert.Contains("motor: k521-of-mine.yaml", File.ReadAllText(Design), StringComparison.Ordinal);
        Assert.NotNull(document.CopyBeside("motor", "k521 of mine"));
        Assert.NotNull(document.CopyBeside("motor", " "));
        document.Undo();
        await document.Settled;
        Assert.Equal(height, Height());
        Assert.Equal("../motors/k521.yaml", document.Outline!.Fields.Single(f => f.Path == "motor").Typed);
    }

    [Theory]
    [InlineData("../../outside")]
    [InlineData("/tmp/outside")]
    [InlineData("..")]
    public void No_name_leads_out_of_the_folder(string name)
    {
        _ = document.CopyBeside("site", name);
        _ = document.BeginFile("weather", name);
        Assert.All(document.Named, n => Assert.StartsWith(scratch.Path + Path.DirectorySeparatorChar, n.Path, StringComparison.Ordinal));
        Assert.Empty(Directory.EnumerateFiles(Path.GetDirectoryName(scratch.Path)!, "*outside*"));
    }

    [Fact]
    public void A_folder_that_became_a_link_is_not_written_through()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "links need rights there");
        using ScratchFolder other = new();
        File.Copy(Motor, other.At("k521.yaml"));
        Assert.Null(document.Change("motor.loaded mass", "1.6 kg"));
        Directory.Move(scratch.At("motors"), scratch.At("motors-then"));
        Directory.CreateSymbolicLink(scratch.At("motors"), other.Path);
        Assert.Contains("link", document.Save(over: true)!.Message, StringComparison.Ordinal);
        Assert.DoesNotContain("1.6 kg", File.ReadAllText(other.At("k521.yaml")), StringComparison.Ordinal);
    }

    [Fact]
    public void A_named_file_changed_on_disk_is_taken_over_or_told()
    {
        Rewrite(Motor, "404 mm", "405 mm", 1);
        document.Look();
        Assert.Equal("405 mm", Typed("motor.length"));
        Assert.Null(document.Change("motor.length", "406 mm"));
        Rewrite(Motor, "405 mm", "407 mm", 2);
        document.Look();
        Assert.Equal("406 mm", Typed("motor.length"));
        Assert.Equal("../motors/k521.yaml", Assert.Single(document.Told));
        Assert.NotNull(document.Save());
        document.KeepMine();
        Assert.Null(document.Save());
        Assert.Contains("406 mm", File.ReadAllText(Motor), StringComparison.Ordinal);

        Assert.Null(document.Change("motor.length", "408 mm"));
        Rewrite(Motor, "406 mm", "409 mm", 3);
        document.Look();
        document.TakeFile();
        Assert.Equal("409 mm", Typed("motor.length"));
        Assert.False(document.IsChanged);
        document.Undo();
        Assert.Equal("408 mm", Typed("motor.length"));
    }

    [Fact]
    public void A_file_that_goes_and_comes_again_is_noticed()
    {
        File.Move(Motor, Motor + ".away");
        document.Look();
        Assert.Contains("There is no file", Assert.Single(document.Problems).Message, StringComparison.Ordinal);
        File.Move(Motor + ".away", Motor);
        document.Look();
        Assert.Empty(document.Problems);
        Assert.Equal("404 mm", Typed("motor.length"));
    }

    [Fact]
    public async Task Unsaved_work_on_a_motor_is_there_after_a_sudden_end()
    {
        Assert.Null(document.Change("motor.length", "412 mm"));
        Assert.Null(document.ChangeThrust((text, at) => ThrustText.Replace(text, at, 3, true, "700")));
        await document.Settled;
        using var again = Open();
        Assert.NotNull(again.Unsaved);
        again.TakeUp();
        Assert.Equal("412 mm", again.Outline!.Find("motor")!.Fields.Single(f => f.Word == "length").Typed);
        Assert.Equal("700", again.ThrustRows[3].Thrust);
        Assert.Null(again.Save());
        using var third = Open();
        Assert.Null(third.Unsaved);
    }

    [Fact]
    public async Task What_is_saved_is_unsaved_no_longer()
    {
        Assert.Null(document.Change("motor.length", "412 mm"));
        await document.Settled;
        Assert.Null(document.Save());
        await document.Settled;
        Rewrite(Motor, "412 mm", "404 mm", 1);
        using (var again = Open()) Assert.Null(again.Unsaved);

        // Neither by what still waits to be kept when it is saved.
        for (var i = 0; i < 20; i++)
        {
            Assert.Null(document.Change("motor.length", $"{413 + i} mm"));
            Assert.Null(document.Save(over: true));
        }

        await document.Settled;
        Rewrite(Motor, "432 mm", "404 mm", 2);
        using var last = Open();
        Assert.Null(last.Unsaved);
    }

    [Fact]
    public async Task What_was_typed_into_a_motor_is_kept_when_another_is_named_in_its_place()
    {
        Assert.Null(document.Change("motor.length", "412 mm"));
        Assert.Null(document.Change("motor", "../motors/l1053.yaml"));
        await document.Settled;

        // After a sudden end, and after saving.
        using (var again = Open())
        {
            again.TakeUp();
            Assert.Equal("../motors/l1053.yaml", again.Named.Single(n => n.Key == "motor").Name);
            Assert.Null(again.Change("motor", "../motors/k521.yaml"));
            Assert.Equal("412 mm", again.Outline!.Find("motor")!.Fields.Single(f => f.Word == "length").Typed);
        }

        // Another program's text is not written over unseen.
        Rewrite(Motor, "404 mm", "405 mm", 1);
        document.Look();
        Assert.Equal("../motors/k521.yaml", Assert.Single(document.Told));
        Assert.NotNull(document.Save());
        Assert.Null(document.Save(over: true));
        Assert.False(document.IsChanged);
        Assert.Contains("412 mm", File.ReadAllText(Motor), StringComparison.Ordinal);
        Assert.Contains("l1053", File.ReadAllText(Design), StringComparison.Ordinal);
        Assert.Equal(["rocket.yaml", "../motors/k521.yaml"], document.TakeUp(document.Revisions[1]));
        Assert.Equal("405 mm", Typed("motor.length"));
    }

    [Fact]
    public void A_revision_is_compared_and_taken_up_with_the_files_it_names()
    {
        Assert.Null(document.Save());
        Assert.Null(document.Change("motor.length", "412 mm"));
        Assert.Null(document.Change("name", "Grey Heron"));
        Assert.Null(document.Save());
        Assert.Null(document.Save());
        var revisions = document.Revisions;
        Assert.Equal(2, revisions.Count);
        Assert.DoesNotContain(document.Since(revisions[0])!, f => f.IsChanged);
        var changed = document.Since(revisions[1])!.Where(f => f.IsChanged).ToList();
        Assert.Equal(["rocket.yaml", "../motors/k521.yaml"], changed.Select(f => f.Name));
        Assert.Equal(["length: 404 mm", "length: 412 mm"], changed[1].Lines!.Where(l => !l.Same).Select(l => l.Text.Split('#')[0].Trim()));

        Assert.Equal(["rocket.yaml", "../motors/k521.yaml"], document.TakeUp(revisions[1]));
        Assert.Equal("404 mm", Typed("motor.length"));
        Assert.Equal("Night Heron", document.Reading.Design!.Name);
        document.Undo();
        Assert.Equal("412 mm", Typed("motor.length"));
        Assert.Equal("Grey Heron", document.Reading.Design!.Name);
        document.Redo();
        Assert.Null(document.Save());
        Assert.Contains("404 mm", File.ReadAllText(Motor), StringComparison.Ordinal);
        Assert.Empty(document.TakeUp(document.Revisions[0]));
    }

    [Fact]
    public void What_a_saving_replaces_can_be_had_back_whoever_wrote_it()
    {
        var own = File.ReadAllText(Design);
        Assert.Null(document.Change("motor.length", "412 mm"));
        File.AppendAllText(Design, "# by hand\n");
        File.AppendAllText(Motor, "# by hand\n");
        Assert.Null(document.Change("name", "Grey Heron"));
        Assert.NotNull(document.Save());
        Assert.Null(document.Save(over: true));
        Assert.Equal(["", "as it was before"], document.Revisions.Select(r => r.Words));
        Assert.Equal(["rocket.yaml", "../motors/k521.yaml"], document.TakeUp(document.Revisions[1]));
        Assert.Equal(own + "# by hand\n", document.Reading.Text);
        Assert.EndsWith("# by hand\n", document.TextOf(Motor), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_revision_that_named_another_motor_brings_it_back_even_a_lost_one()
    {
        Assert.Null(document.Change("motor.length", "412 mm"));
        Assert.Null(document.Save());
        var then = document.Revisions[0];
        Assert.Null(document.Change("motor", "../motors/l1053.yaml"));
        Assert.Null(document.Save());
        File.WriteAllText(Motor, File.ReadAllText(Motor).Replace("412 mm", "404 mm", StringComparison.Ordinal));
        using (var again = Open())
        {
            Assert.Null(again.Since(then)!.Single(f => f.Name == "../motors/k521.yaml").Lines);
            Assert.Equal(["rocket.yaml", "../motors/k521.yaml"], again.TakeUp(then));
            Assert.Equal("412 mm", again.Outline!.Find("motor")!.Fields.Single(f => f.Word == "length").Typed);
            again.Undo();
            Assert.Empty(again.TakeUp(again.Revisions[0]));
        }

        File.Delete(Motor);
        using var last = Open();
        Assert.Equal(["rocket.yaml", "../motors/k521.yaml"], last.TakeUp(then));
        Assert.Empty(last.Problems);
        last.Undo();
        Assert.Equal("l1053.yaml", Path.GetFileName(last.Named.Single(n => n.Key == "motor").Path));
        last.Redo();
        Assert.Empty(last.Problems);
        await last.Settled;

        // Neither is it lost with a sudden end.
        using (var sudden = Open())
        {
            sudden.TakeUp();
            Assert.Empty(sudden.Problems);
            Assert.Equal("412 mm", sudden.Outline!.Find("motor")!.Fields.Single(f => f.Word == "length").Typed);
        }

        Assert.Null(last.Save());
        Assert.Contains("412 mm", File.ReadAllText(Motor), StringComparison.Ordinal);
        Assert.Contains(last.Since(last.Revisions[1])!, f => f.Name == "rocket.yaml" && f.IsChanged);

        // One that comes by another hand meanwhile is taken over, or told.
        File.Delete(Motor);
        using var gone = Open();
        Assert.Contains("There is no file", Assert.Single(gone.Problems).Message, StringComparison.Ordinal);
        Assert.Equal(["../motors/k521.yaml"], gone.TakeUp(then));
        File.WriteAllText(Motor, then.Words);
        gone.Look();
        Assert.Equal("../motors/k521.yaml", Assert.Single(gone.Told));
        Assert.NotNull(gone.Save());
        Assert.Null(gone.Save(over: true));
        Assert.Contains("412 mm", File.ReadAllText(Motor), StringComparison.Ordinal);
    }

    [Fact]
    public void A_lost_file_taken_up_and_put_back_leaves_nothing_to_copy()
    {
        Assert.Null(document.CopyBeside("motor", "own"));
        Assert.Null(document.Save());
        var own = document.Revisions[0];
        Assert.Null(document.Change("motor", "../motors/l1053.yaml"));
        Assert.Null(document.Save());
        File.Delete(scratch.At("night-heron/own.yaml"));
        using var without = Open();
        Assert.Contains("own.yaml", without.TakeUp(own));
        without.Undo();
        without.Become(without.Reading.Text.Replace("../motors/l1053.yaml", "own.yaml", StringComparison.Ordinal));
        Assert.Null(without.SaveAs(scratch.At("grey-heron/rocket.yaml")));
        Assert.False(File.Exists(scratch.At("grey-heron/own.yaml")));
    }

    [Fact]
    public void Save_as_takes_what_lies_beside_the_design_along()
    {
        Assert.Null(document.CopyBeside("motor", "own"));
        Assert.Null(document.SaveAs(scratch.At("grey-heron/rocket.yaml")));
        Assert.Empty(document.Problems);
        Assert.True(File.Exists(scratch.At("grey-heron/own.yaml")) && File.Exists(scratch.At("grey-heron/own.csv")));
        Assert.Null(document.Change("motor.length", "412 mm"));
        Assert.Null(document.Save());
        Assert.DoesNotContain("412 mm", File.ReadAllText(scratch.At("night-heron/own.yaml")), StringComparison.Ordinal);
    }

    [Fact]
    public void Other_designs_that_name_a_file_are_told() =>
        Assert.Equal(["corn-crake", "mute-swan", "sand-martin"], NearFiles.DesignsNaming(scratch.At("weather/fair-afternoon.yaml"), Design));

    [Fact]
    public async Task What_the_terminal_measures_counts_at_once()
    {
        await document.Settled;
        var before = document.Answers.Of("descends")!.Findings;
        using (var book = Logbook.Open(Design).Value!) Assert.True(book.Measure("Main diameter", "60 in", "", DateTimeOffset.UnixEpoch).Good);
        document.Look();
        await document.Settled;
        Assert.Equal("60 in", Assert.Single(document.Measured).Value);
        Assert.NotEqual(before, document.Answers.Of("descends")!.Findings);
        using (var book = Logbook.Open(Design).Value!) Assert.True(book.Measure("Main diameter", "", "", DateTimeOffset.UnixEpoch).Good);
        document.Look();
        await document.Settled;
        Assert.Equal(before, document.Answers.Of("descends")!.Findings);
    }

    public void Dispose()
    {
        document.Dispose();
        scratch.Dispose();
    }

    private DesignDocument Open() => DesignDocument.Open("night-heron", Design, 0, TimeSpan.Zero).Document!;

    private double Height() => document.Answers.Of("how-high")!.Findings[0].Value;

    private string? Typed(string path) => document.Outline!.All.SelectMany(m => m.Fields).Single(f => f.Path == path).Typed;

    private static void Rewrite(string file, string old, string now, int later)
    {
        File.WriteAllText(file, File.ReadAllText(file).Replace(old, now, StringComparison.Ordinal));
        File.SetLastWriteTimeUtc(file, DateTime.UtcNow.AddSeconds(later));
    }
}
