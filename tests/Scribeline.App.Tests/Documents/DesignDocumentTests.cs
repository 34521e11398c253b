using Scribeline.App.Documents;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Questions;

namespace Scribeline.App.Tests.Documents;

/// <summary>A design while it is worked on, without a browser.</summary>
public sealed class DesignDocumentTests : IDisposable
{
    private readonly ScratchFolder scratch = new();
    private readonly DesignDocument document;

    public DesignDocumentTests()
    {
        Assert.Equal(0, Run.In(scratch.Path, "new", "Grey Wagtail").Code);
        document = Open();
    }

    private string File => scratch.At("grey-wagtail/rocket.yaml");

    [Fact]
    public async Task An_edit_is_answered()
    {
        await document.Settled;
        var before = Mass();
        Assert.Null(document.Change("parts[1].length", "30 in"));
        await document.Settled;
        Assert.Equal(document.Version, document.Answers.Version);
        Assert.True(Mass() > before);
        document.Undo();
        await document.Settled;
        Assert.Equal(before, Mass());
    }

    [Fact]
    public void A_value_that_cannot_be_read_is_refused_and_changes_nothing()
    {
        var text = document.Reading.Text;
        var problem = document.Change("parts[1].length", "30 inchs");
        Assert.NotNull(problem);
        Assert.NotEmpty(problem.Suggestion);
        Assert.Equal(text, document.Reading.Text);
        Assert.False(document.CanUndo);
    }

    [Fact]
    public async Task A_contradiction_is_taken_and_told()
    {
        Assert.Null(document.Change("parts[1].inside", "5 in"));
        await document.Settled;
        Assert.NotEmpty(document.Problems);
        document.Undo();
        await document.Settled;
        Assert.Empty(document.Problems);
    }

    [Fact]
    public async Task What_was_measured_counts_on_this_rocket_alone()
    {
        await document.Settled;
        var before = Mass();
        Assert.Empty(document.Measure(document.Answers.Study!, "Nose mass", "3 kg", DateTimeOffset.UnixEpoch));
        await document.Settled;
        Assert.True(Mass() > before + 1);
        Assert.NotEmpty(document.Measure(document.Answers.Study!, "Nose mass", "heavy", DateTimeOffset.UnixEpoch));
        Assert.Equal("3 kg", Assert.Single(document.Measured).Value);

        Assert.Null(document.SaveAs(scratch.At("other/rocket.yaml")));
        await document.Settled;
        Assert.Empty(document.Measured);
        Assert.Equal(before, Mass());
    }

    [Fact]
    public void Letters_typed_into_one_field_are_undone_together()
    {
        var text = document.Reading.Text;
        foreach (var typed in new[] { "1 in", "12 in", "12.5 in" }) Assert.Null(document.Change("parts[1].length", typed, "field"));
        document.Undo();
        Assert.Equal(text, document.Reading.Text);
        document.Redo();
        Assert.Contains("12.5 in", document.Reading.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Two_windows_do_not_lose_each_others_edits()
    {
        var (text, version) = (document.Reading.Text, document.Version);
        Assert.Null(document.Change("name", "Other"));
        Assert.True(document.Type(text.Replace("length: 16 in", "length: 17 in", StringComparison.Ordinal), version));
        Assert.Contains("name: Other", document.Reading.Text, StringComparison.Ordinal);
        Assert.Contains("length: 17 in", document.Reading.Text, StringComparison.Ordinal);
        Assert.False(document.Type(text.Replace("name: Grey Wagtail", "name: Mine", StringComparison.Ordinal), version));
        Assert.Contains("name: Other", document.Reading.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Broken_text_keeps_the_last_answers_and_says_what_to_mend()
    {
        await document.Settled;
        var answered = document.Answers.Version;
        Assert.True(document.Type(document.Reading.Text.Replace("parts:", "parts: [", StringComparison.Ordinal), document.Version));
        await document.Settled;
        Assert.NotEmpty(document.Problems);
        Assert.Equal(answered, document.Answers.Version);
        Assert.NotEmpty(document.Answers.Answers);
    }

    [Fact]
    public void Saving_writes_the_text_and_opening_reads_it_again()
    {
        Assert.Null(document.Change("name", "Other"));
        Assert.True(document.IsChanged);
        Assert.Null(document.Save());
        Assert.False(document.IsChanged);
        using var again = Open();
        Assert.Equal("Other", again.Reading.Design!.Name);
    }

    [Fact]
    public void A_file_changed_on_disk_is_taken_over_or_told()
    {
        Write("Disk");
        document.Look();
        Assert.Equal("Disk", document.Reading.Design!.Name);

        Assert.Null(document.Change("name", "Mine"));
        Write("Disk again");
        document.Look();
        Assert.Equal("Mine", document.Reading.Design!.Name);
        Assert.True(document.Disk.Told);
        Assert.NotNull(document.Save());
        document.KeepMine();
        Assert.Null(document.Save());
        Assert.Contains("Mine", System.IO.File.ReadAllText(File), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_shelf_closes_only_once_its_look_at_the_files_has_ended()
    {
        var (reached, ended) = (new ManualResetEventSlim(), false);
        var shelf = new DocumentShelf(new(scratch.Path, null, null) { LookEvery = TimeSpan.FromMilliseconds(5), Cases = 0 });
        var looked = shelf.Open(File).Document!;
        await looked.Settled;

        // Nothing can be asked of it, so that only the look tells of the change.
        looked.Changed += () =>
        {
            reached.Set();
            Thread.Sleep(100);
            ended = true;
        };
        System.IO.File.WriteAllText(File, "name: [");
        Assert.True(reached.Wait(TimeSpan.FromMinutes(3), TestContext.Current.CancellationToken));
        shelf.Dispose();
        Assert.True(ended);
    }

    [Fact]
    public void Saving_under_another_name_never_overwrites()
    {
        using var shelf = new DocumentShelf(new(scratch.Path, null, null));
        Assert.NotNull(document.SaveAs(File));
        Assert.Null(document.SaveAs(shelf.PlaceFor("White Wagtail", document)!));
        Assert.True(System.IO.File.Exists(scratch.At("white-wagtail/rocket.yaml")));
    }

    [Fact]
    public void A_part_can_be_added_and_taken_out_with_its_joints()
    {
        var root = document.Outline!;
        var (change, path) = NewThings.Add(root, root.Additions.Single(a => a.Path == "parts"), "tube");
        Assert.Null(document.Change(change, path));
        Assert.True(document.Reading.Good, string.Join('\n', document.Problems));
        Assert.Equal(root.Maps.Count(m => m.Word == "joints") + 1, document.Reading.Design!.Joints.Count);
        Assert.Null(document.Change(NewThings.TakeOut(document.Outline!, path), path));
        Assert.True(document.Reading.Good, string.Join('\n', document.Problems));
        Assert.Equal(root.Maps.Count(m => m.Word == "joints"), document.Reading.Design!.Joints.Count);
    }

    [Fact]
    public void Everything_that_can_be_added_can_be_read()
    {
        var root = document.Outline!;
        foreach (var addition in root.All.SelectMany(m => m.Additions))
        {
            foreach (var kind in addition.Kinds.DefaultIfEmpty(""))
            {
                var (change, path) = NewThings.Add(root, addition, kind);
                var problem = document.Change(change, path);
                Assert.True(problem is null, $"{addition.Path} {kind}: {problem}");
                Assert.NotNull(document.Reading.Design);
                document.Undo();
            }
        }
    }

    [Fact]
    public void A_new_name_goes_wherever_the_old_one_is_mentioned()
    {
        var root = document.Outline!;
        var name = root.Find("parts[3]")!.Fields.Single(f => f.Names);
        Assert.Null(document.Change(NewThings.Rename(root, name, "Fin can"), name.Path));
        Assert.True(document.Reading.Good, string.Join('\n', document.Problems));
        Assert.Contains("Fin can", document.Reading.Design!.Joints[^1].Between);
    }

    [Fact]
    public async Task Answers_are_those_of_the_terminal()
    {
        using var drawn = Open(cases: 6);
        await drawn.Settled;
        var opened = Commands.OpenedDesign.Open(File).Studies!;
        var terminal = Enquiry.Ask(Questionnaire.All, opened.Nominal!, opened.Case, 6, cancel: Xunit.TestContext.Current.CancellationToken);

        // Landings go on being flown on the workbench, for as long as nobody types: the same question, more flights.
        Assert.Equal(terminal.Where(a => !a.Question.FliesMany).Select(Told), drawn.Answers.Answers.Where(a => !a.Question.FliesMany).Select(Told));

        static (string, Verdict, ValueList<Finding>) Told(Answer a) => (a.Question.Id, a.Verdict, a.Findings);
    }

    public void Dispose()
    {
        document.Dispose();
        scratch.Dispose();
    }

    private DesignDocument Open(int cases = 0) => DesignDocument.Open("grey-wagtail", File, cases, TimeSpan.Zero).Document!;

    private double Mass() => document.Answers.Of("weight")!.Findings[0].Value;

    private void Write(string name)
    {
        var lines = System.IO.File.ReadAllLines(File);
        System.IO.File.WriteAllLines(File, lines.Select(l => l.StartsWith("name:", StringComparison.Ordinal) ? $"name: {name}" : l));
        System.IO.File.SetLastWriteTimeUtc(File, DateTime.UtcNow.AddSeconds(name.Length));
    }
}
