using Microsoft.Data.Sqlite;
using Scribeline.Store.Logbooks;

namespace Scribeline.Store.Tests.Logbooks;

public class LogbookTests
{
    private static readonly DateTimeOffset Evening = new(2026, 5, 4, 19, 30, 0, TimeSpan.FromHours(2));

    [Fact]
    public void Keeps_what_was_written_when_opened_again()
    {
        using var folder = new TemporaryFolder();
        using (var book = Open(folder))
        {
            Assert.True(book.Save("a: 1\n", [], "first", Evening).Good);
            Assert.True(book.Save("a: 2\n", [], "", Evening.AddMinutes(1)).Good);
            Assert.True(book.Keep("a: 3\n", Logbook.HashOf("a: 2\n"), Evening.AddMinutes(2)).Good);
            Assert.True(book.Tick("bond/fins", true, "12 g of mix", Evening.AddMinutes(3)).Good);
            Assert.True(book.Measure("parts[0].mass", "312 g ± 1 g", "weigh/Nose", Evening.AddMinutes(4)).Good);
        }

        Assert.Single(Directory.GetFiles(folder.Path("")));
        using var again = Open(folder);
        var revisions = again.Revisions().Value!;
        Assert.Equal(["", "first"], revisions.Select(r => r.Words));
        Assert.Equal(Evening.ToUniversalTime(), revisions[1].Saved);
        Assert.Equal("a: 1\n", again.TextOf(revisions[1]).Value);
        Assert.Equal(new("a: 3\n", revisions[0].Hash, Evening.AddMinutes(2).ToUniversalTime()), again.Unsaved().Value);
        Assert.Equal([new("bond/fins", true, "12 g of mix", Evening.AddMinutes(3).ToUniversalTime())], again.Progress().Value!);
        Assert.Equal([new("parts[0].mass", "312 g ± 1 g", "weigh/Nose", Evening.AddMinutes(4).ToUniversalTime())], again.Measured().Value!);
    }

    [Fact]
    public void Unsaved_work_on_named_files_is_kept_beside_that_on_the_design()
    {
        using var folder = new TemporaryFolder();
        using var book = Open(folder);
        Assert.True(book.Keep("a", "", Evening).Good);
        Assert.True(book.KeepFiles([("../motors/k.yaml", "b", "1"), ("day.yaml", "c", "2")], Evening).Good);
        Assert.Equal([("../motors/k.yaml", "b"), ("day.yaml", "c")], book.UnsavedFiles().Value!.Select(u => (u.File, u.Work.Text)));
        Assert.Equal("a", book.Unsaved().Value!.Text);
        Assert.Equal([("day.yaml", "d")], book.KeepFiles([("day.yaml", "d", "2")], Evening).Value!.Select(u => (u.File, u.Work.Text)));
        Assert.Empty(book.KeepFiles([], Evening).Value!);
        Assert.Equal("a", book.Unsaved().Value!.Text);
    }

    [Fact]
    public void What_another_program_writes_is_noticed()
    {
        using var folder = new TemporaryFolder();
        using var book = Open(folder);
        var before = book.ByOthers;
        Assert.True(book.Measure("a", "1 g", "", Evening).Good);
        Assert.Equal(before, book.ByOthers);
        using (var other = Open(folder)) Assert.True(other.Measure("a", "2 g", "", Evening).Good);
        Assert.NotEqual(before, book.ByOthers);
        Assert.Equal("2 g", Assert.Single(book.Measured().Value!).Value);
    }

    [Fact]
    public void A_closed_logbook_says_so()
    {
        using var folder = new TemporaryFolder();
        var book = Open(folder);
        Assert.True(book.Measure("a", "1 g", "", Evening).Good);
        book.Dispose();
        book.Dispose();
        Assert.Equal("logbook.sqlite is closed.", book.Measured().Problem!.Message);
        Assert.Equal("logbook.sqlite is closed.", book.Measure("a", "2 g", "", Evening).Problem!.Message);
        Assert.Null(book.ByOthers);
        using var again = Open(folder);
        Assert.Equal("1 g", Assert.Single(again.Measured().Value!).Value);
    }

    // SHA-256 of "abc": FIPS 180-4, example of its appendix.
    [Fact]
    public void Names_a_text_by_its_published_hash() =>
        Assert.Equal("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad", Logbook.HashOf("abc"));

    [Fact]
    public void Saving_the_same_text_twice_keeps_one_revision_and_going_back_keeps_a_new_one()
    {
        using var folder = new TemporaryFolder();
        using var book = Open(folder);
        var first = book.Save("a", [], "", Evening).Value;
        Assert.Equal(first, book.Save("a", [], "again", Evening.AddHours(1)).Value);
        book.Save("b", [], "", Evening.AddHours(2));
        book.Save("a", [], "back", Evening.AddHours(3));
        var revisions = book.Revisions().Value!;
        Assert.Equal(["back", "", ""], revisions.Select(r => r.Words));
        Assert.Equal("a", book.TextOf(revisions[0]).Value);
    }

    [Fact]
    public void A_revision_keeps_the_files_it_names_and_another_text_of_one_is_another_revision()
    {
        using var folder = new TemporaryFolder();
        using var book = Open(folder);
        KeptFile motor = new("../motors/k.yaml", "length: 1 mm"), day = new("day.yaml", "wind: 3");
        var first = book.Save("a", [motor, day], "", Evening).Value!;
        Assert.Equal(first, book.Save("a", [motor, day], "", Evening.AddHours(1)).Value);
        var second = book.Save("a", [motor with { Text = "length: 2 mm" }, day], "", Evening.AddHours(2)).Value!;
        Assert.NotEqual(first.Number, second.Number);
        Assert.Equal([motor, day], book.FilesOf(first).Value!);
        Assert.Equal("length: 2 mm", book.FilesOf(second).Value![0].Text);
        Assert.Equal("a", book.TextOf(second).Value);
    }

    [Fact]
    public void Unsaved_work_is_replaced_dropped_and_ended_by_saving()
    {
        using var folder = new TemporaryFolder();
        using var book = Open(folder);
        Assert.Null(book.Unsaved().Value);
        book.Keep("a", "", Evening);
        book.Keep("ab", "", Evening);
        Assert.Equal("ab", book.Unsaved().Value!.Text);
        Assert.Equal("ab", book.Drop().Value!.Text);
        Assert.Null(book.Unsaved().Value);
        book.Keep("abc", "", Evening);
        book.Save("abc", [], "", Evening);
        Assert.Null(book.Unsaved().Value);
        book.Keep("abcd", "", Evening);
        book.Save("abc", [], "", Evening);
        Assert.Null(book.Unsaved().Value);
    }

    [Fact]
    public void The_latest_tick_and_value_count_and_earlier_values_stay()
    {
        using var folder = new TemporaryFolder();
        using var book = Open(folder);
        book.Tick("dry fit", true, "", Evening);
        book.Tick("mark", true, "", Evening);
        book.Tick("dry fit", false, "did not fit", Evening.AddMinutes(9));
        Assert.Equal([("mark", true), ("dry fit", false)], book.Progress().Value!.Select(t => (t.Step, t.Done)));
        book.Measure("a", "1 g", "", Evening);
        book.Measure("b", "2 g", "", Evening);
        book.Measure("a", "3 g", "", Evening);
        Assert.Equal(["2 g", "3 g"], book.Measured().Value!.Select(m => m.Value));
        book.Measure("a", "", "", Evening);
        Assert.Equal(["2 g"], book.Measured().Value!.Select(m => m.Value));
        Assert.Equal(["1 g", "3 g", ""], book.MeasuredOf("a").Value!.Select(m => m.Value));
    }

    [Fact]
    public void Two_designs_of_a_folder_do_not_mix()
    {
        using var folder = new TemporaryFolder();
        using var one = Open(folder, "one.rocket.yaml");
        using var two = Open(folder, "two.rocket.yaml");
        one.Save("a", [], "", Evening);
        one.Keep("b", "", Evening);
        one.Tick("s", true, "", Evening);
        one.Measure("m", "1 g", "", Evening);
        Assert.Empty(two.Revisions().Value!);
        Assert.Null(two.Unsaved().Value);
        Assert.Empty(two.Progress().Value!);
        Assert.Empty(two.Measured().Value!);
        two.Save("a", [], "", Evening);
        two.Drop();
        Assert.Equal("b", one.Unsaved().Value!.Text);
        Assert.Equal("a", two.TextOf(two.Revisions().Value![0]).Value);
    }

    [Fact]
    public async Task Many_writers_at_once_lose_nothing()
    {
        using var folder = new TemporaryFolder();
        await Task.WhenAll(Enumerable.Range(0, 8).Select(writer => Task.Run(() =>
        {
            using var book = Open(folder);
            for (var i = 0; i < 25; i++) Assert.True(book.Tick($"{writer}/{i}", true, "", Evening).Good);
        }))).WaitAsync(TestContext.Current.CancellationToken);
        using var reader = Open(folder);
        Assert.Equal(200, reader.Progress().Value!.Count);
        Assert.Equal("", reader.Check());
    }

    [Fact]
    public void Takes_any_text_as_it_is()
    {
        using var folder = new TemporaryFolder();
        using var book = Open(folder, "it's \"$design\"; DROP TABLE tick;.yaml");
        var text = "'; DROP TABLE revision; -- \0 $hash \uFEFF ± ½\r\n" + new string('x', 1_000_000);
        book.Save(text, [], text, Evening);
        var revision = book.Revisions().Value![0];
        Assert.Equal((text, text.Replace('\0', '\uFFFD')), (book.TextOf(revision).Value, revision.Words));
        book.Keep(text, "", Evening);
        Assert.Equal(text, book.Unsaved().Value!.Text);
    }

    [Fact]
    public void A_file_that_is_no_database_stays_as_it_is()
    {
        using var folder = new TemporaryFolder();
        var words = string.Concat(Enumerable.Repeat("Dear diary, today the paint ran. ", 100));
        File.WriteAllText(folder.Path(Logbook.FileName), words);
        Assert.Equal("logbook.sqlite is damaged, or is not a logbook.", Refused(folder));
        Assert.Equal(words, File.ReadAllText(folder.Path(Logbook.FileName)));
        Assert.Single(Directory.GetFiles(folder.Path("")));
    }

    [Fact]
    public void Another_programs_database_stays_as_it_is()
    {
        using var folder = new TemporaryFolder();
        Sql(folder, "CREATE TABLE recipe (flour TEXT);");
        var bytes = File.ReadAllBytes(folder.Path(Logbook.FileName));
        Assert.Equal("logbook.sqlite is a database of another program.", Refused(folder));
        Assert.Equal(bytes, File.ReadAllBytes(folder.Path(Logbook.FileName)));
    }

    [Fact]
    public void A_newer_version_stays_as_it_is()
    {
        using var folder = new TemporaryFolder();
        using (Open(folder))
        {
        }

        Sql(folder, $"PRAGMA user_version = {Migrations.Newest + 1};");
        Assert.Equal($"logbook.sqlite was written by a newer version of this program (its format {Migrations.Newest + 1}, ours {Migrations.Newest}).", Refused(folder));
        using var connection = Connection(folder);
        using var version = new SqliteCommand("PRAGMA user_version;", connection);
        Assert.Equal((long)Migrations.Newest + 1, version.ExecuteScalar());
    }

    [Fact]
    public void A_file_cut_short_is_refused_or_said_to_be_damaged()
    {
        using var folder = new TemporaryFolder();
        using (var book = Open(folder)) book.Save(new string('x', 200_000), [], "", Evening);
        using (var file = File.OpenWrite(folder.Path(Logbook.FileName))) file.SetLength(file.Length / 3);
        var opened = Logbook.Open(folder.Path("rocket.yaml"));
        using var cut = opened.Value;
        var problem = opened.Problem ?? cut!.TextOf(new(1, Evening, Logbook.HashOf(new string('x', 200_000)), "")).Problem;
        Assert.Equal("logbook.sqlite is damaged, or is not a logbook.", problem?.Message);
    }

    [Fact]
    public void A_file_held_by_another_program_says_so_and_works_once_it_is_free()
    {
        using var folder = new TemporaryFolder();
        using var book = Logbook.Open(folder.Path("rocket.yaml"), patience: 1).Value!;
        using (var other = Connection(folder))
        {
            using var hold = other.BeginTransaction(deferred: false);
            Assert.Equal("logbook.sqlite is held by another program.", book.Tick("a", true, "", Evening).Problem?.Message);
            Assert.Empty(book.Progress().Value!);
        }

        Assert.True(book.Tick("a", true, "", Evening).Good);
    }

    [Fact]
    public void A_folder_of_that_name_or_no_folder_at_all_is_told()
    {
        using var folder = new TemporaryFolder();
        Directory.CreateDirectory(folder.Path(Logbook.FileName));
        Assert.Equal("logbook.sqlite cannot be opened or written.", Refused(folder));
        Assert.Equal("logbook.sqlite cannot be opened or written.", Logbook.Open(folder.Path("none/rocket.yaml")).Problem?.Message);
    }

    [Fact]
    public void A_file_that_may_not_be_written_says_so()
    {
        using var folder = new TemporaryFolder();
        using (Open(folder))
        {
        }

        // Permissions do not hold back every user that tests may run as; a connection that may only read always does.
        using var book = Logbook.OpenAs(folder.Path(Logbook.FileName), "rocket.yaml", SqliteOpenMode.ReadOnly, 1).Value!;
        Assert.Equal("logbook.sqlite cannot be opened or written.", book.Tick("a", true, "", Evening).Problem?.Message);
        Assert.Empty(book.Progress().Value!);
    }

    [Fact]
    public void A_folder_that_nobody_may_write_says_so()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "Only there is a folder that nobody may write always to be found.");
        Assert.Equal("logbook.sqlite cannot be opened or written.", Logbook.Open("/proc/rocket.yaml").Problem?.Message);
    }

    internal static Logbook Open(TemporaryFolder folder, string design = "rocket.yaml")
    {
        var opened = Logbook.Open(folder.Path(design), patience: 30);
        Assert.Null(opened.Problem);
        return opened.Value!;
    }

    private static string Refused(TemporaryFolder folder)
    {
        var opened = Logbook.Open(folder.Path("rocket.yaml"), patience: 1);
        Assert.Null(opened.Value);
        Assert.NotEmpty(opened.Problem!.Suggestion);
        return opened.Problem.Message;
    }

    private static SqliteConnection Connection(TemporaryFolder folder)
    {
        var connection = new SqliteConnection($"Data Source={folder.Path(Logbook.FileName)};Pooling=False");
        connection.Open();
        return connection;
    }

    private static void Sql(TemporaryFolder folder, string sql)
    {
        using var connection = Connection(folder);
#pragma warning disable CA2100 // The test's own words.
        using var command = new SqliteCommand(sql, connection);
#pragma warning restore CA2100
        command.ExecuteNonQuery();
    }
}
