using Scribeline.Store.Logbooks;
using Scribeline.Store.Logs;

namespace Scribeline.Store.Tests.Logbooks;

/// <summary>Flights in the logbook: their records, the files of their day, which is asked about.</summary>
public sealed class FlightTests : IDisposable
{
    private static readonly DateTimeOffset Now = new(2026, 10, 4, 9, 30, 0, TimeSpan.Zero);

    private readonly string folder = Directory.CreateTempSubdirectory("flights").FullName;

    private string Design => Path.Combine(folder, "swift", "rocket.yaml");

    public FlightTests() => Directory.CreateDirectory(Path.GetDirectoryName(Design)!);

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void A_flight_comes_back_as_it_was_added()
    {
        byte[] record = [.. Enumerable.Range(0, 5000).Select(i => (byte)(i % 251))];
        using (var book = Logbook.Open(Design).Value!)
        {
            var added = book.AddFlight("4 October", "first", "flight.csv", record, ["pressure = Baro in hPa", "time = T"], [new("rocket.yaml", "name: Swift"), new("../weather/w.yaml", "wind: 3")], Now).Value!;
            Assert.Equal((1, "4 October", "first", "flight.csv", Now), (added.Number, added.Flown, added.Words, added.File, added.Added));
        }

        using var again = Logbook.OpenExisting(Design).Value!;
        var flight = Assert.Single(again.Flights().Value!);
        Assert.Equal(["pressure = Baro in hPa", "time = T"], flight.Columns);
        Assert.Equal(record, again.RecordOf(1).Value);
        Assert.Equal([new KeptFile("rocket.yaml", "name: Swift"), new KeptFile("../weather/w.yaml", "wind: 3")], again.FilesOf(1).Value!);
    }

    [Fact]
    public void The_newest_is_asked_about_until_another_is_chosen_and_anew_after_the_next()
    {
        using var book = Logbook.Open(Design).Value!;
        Assert.Null(book.Asked().Value);
        Add(book, 0);
        Add(book, 1);
        Assert.Equal(2, book.Asked().Value!.Number);
        Assert.Equal(1, book.AskAbout(1, Now.AddMinutes(5)).Value!.Number);
        Assert.Equal(1, book.Asked().Value!.Number);
        Add(book, 9);
        Assert.Equal(3, book.Asked().Value!.Number);
        Assert.Null(book.AskAbout(8, Now.AddMinutes(10)).Value);
        Assert.Equal(3, book.Asked().Value!.Number);
    }

    [Fact]
    public void What_is_taken_out_is_gone_and_asked_about_no_more()
    {
        using var book = Logbook.Open(Design).Value!;
        Add(book, 0);
        Add(book, 1);
        book.AskAbout(1, Now.AddMinutes(5));
        Assert.Equal(1, book.RemoveFlight(1).Value!.Number);
        Assert.Null(book.RemoveFlight(1).Value);
        Assert.Equal(2, Assert.Single(book.Flights().Value!).Number);
        Assert.Equal(2, book.Asked().Value!.Number);
        Assert.Null(book.RecordOf(1).Value);
        Assert.Empty(book.FilesOf(1).Value!);
    }

    [Fact]
    public void Designs_of_one_folder_keep_their_flights_apart()
    {
        using (var book = Logbook.Open(Design).Value!) Add(book, 0);
        using var other = Logbook.Open(Path.Combine(folder, "swift", "other.rocket.yaml")).Value!;
        Assert.Empty(other.Flights().Value!);
        Assert.Null(other.RecordOf(1).Value);
        Assert.Null(other.RemoveFlight(1).Value);
    }

    // A prediction of that day stays what it was, whatever becomes of the files.
    [Fact]
    public void Papers_stand_in_for_files_that_changed()
    {
        var starter = Starter.Text("Swift");
        Directory.CreateDirectory(Path.Combine(folder, "weather"));
        var weather = Path.Combine(folder, "weather", "calm.yaml");
        File.WriteAllText(weather, "wind speed: 2 m/s\nwind from: 250 deg\ntemperature: 10 °C\n");
        File.WriteAllText(Design, starter);
        List<Engine.Quantities.Problem> problems = [];
        var text = starter.Contains("\nweather:", StringComparison.Ordinal) ? starter : starter + "\nweather: ../weather/calm.yaml\n";
        var papers = FlightPapers.Gather(Design, text, starter.Contains("\nweather:", StringComparison.Ordinal) ? null : weather, null, problems);
        Assert.Empty(problems);
        if (File.Exists(weather)) File.WriteAllText(weather, "temperature: 35 °C\n");
        var reading = FlightPapers.Read(Design, papers);
        Assert.Empty(reading.Problems);
        if (papers.Any(p => p.Name == "../weather/calm.yaml")) Assert.Equal(283.15, reading.Design!.Weather!.Value!.Temperature!.Si, 1e-9);
    }

    [Fact]
    public void A_logbook_of_before_flights_is_brought_up_to_date()
    {
        using (var connection = new Microsoft.Data.Sqlite.SqliteConnection($"Data Source={Path.Combine(folder, "swift", Logbook.FileName)};Pooling=False"))
        {
            connection.Open();
            using var command = connection.CreateCommand();
            command.CommandText = Migrations.From(0).First() + $"PRAGMA application_id = {Migrations.ApplicationId}; PRAGMA user_version = 1;";
            command.ExecuteNonQuery();
        }

        using var book = Logbook.Open(Design).Value!;
        Add(book, 0);
        Assert.Single(book.Flights().Value!);
        Assert.Empty(book.Measured().Value!);
    }

    private static void Add(Logbook book, int minutes) =>
        Assert.Null(book.AddFlight("", "", "f.csv", [1, 2, 3], [], [new("rocket.yaml", "name: Swift")], Now.AddMinutes(minutes)).Problem);
}
