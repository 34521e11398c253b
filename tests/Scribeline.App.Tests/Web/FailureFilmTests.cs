using Scribeline.App.Tests.Examples;
using Scribeline.App.Web;
using Scribeline.Engine.Questions;

namespace Scribeline.App.Tests.Web;

/// <summary>The replay of a failure shows the very flight that question if-it-fails tells of.</summary>
public class FailureFilmTests
{
    private static readonly Study Heron = Example.Nominal("night-heron");
    private static readonly Answer Answer = Questionnaire.Named("if-it-fails")!.Ask(Heron);

    public static TheoryData<string> Failures => [.. Heron.Rocket.Failures.Select(f => f.Name).Prepend(WatchedFlight.AsPlanned)];

    [Theory]
    [MemberData(nameof(Failures))]
    public void The_numbers_are_those_of_the_answer(string failure)
    {
        var watched = WatchedFlight.Of(Heron, failure)!;
        var film = watched.Film(inch: false);
        var told = Answer.Tables[2].Rows.Where(r => r.Cells[0].Words == failure).ToList();
        Assert.NotEmpty(told);
        Assert.Equal(told.Select(r => r.Cells[1].Words).Order(), film.Bodies.Where(b => b.Lands).SelectMany(b => film.Pieces.Skip(b.First).Take(b.Last - b.First + 1)).Select(p => p.Name).Order());
        foreach (var row in told)
        {
            var piece = film.Pieces.ToList().FindIndex(p => p.Name == row.Cells[1].Words);
            var body = film.Bodies.Single(b => b.Lands && piece >= b.First && piece <= b.Last);
            Assert.Equal(row.Cells[2].Value!.Value, film.Times[body.From + body.X.Count - 1], 1e-4);
            var landing = watched.Study.Flight.Landings.Single(l => l.At.Time == row.Cells[2].Value);
            Assert.Equal(row.Cells[5].Value, landing.DescentRate);
            Assert.Equal(Shown.Text(landing.Speed, Unit.Speed, false), body.Speed[^1]);
            Assert.Equal(0, body.Z[^1], 0.1);
        }

        // Seen from the side: the farthest place anything reaches lies along the axis, so every landing lies within it.
        var away = told.Max(r => r.Cells[3].Value!.Value);
        Assert.True(film.Far.High >= away - 1, $"the axis ends at {film.Far.High:F0} m, a piece lies {away:F0} m away");

        // The table beside the replay says the same, cell by cell.
        var ground = FailureTables.Ground(watched.Outcome!);
        Assert.Equal(told.Select(r => r.Cells.Skip(1).ToArray()), ground.Rows.Select(r => (TableCell[])[r.Cells[0], r.Cells[1], r.Cells[4], r.Cells[5], r.Cells[2], r.Cells[3]]));
    }

    [Fact]
    public void As_planned_nothing_differs()
    {
        var watched = WatchedFlight.Of(Heron, WatchedFlight.AsPlanned)!;
        Assert.Empty(watched.Differences);
        Assert.Equal(FlightFilm.Of(Heron, false).Text(), watched.Film(false).Text());
    }

    [Fact]
    public void A_dead_altimeter_fires_nothing_and_the_rest_happens_as_it_does()
    {
        var watched = WatchedFlight.Of(Heron, "Primary dead")!;
        Assert.Equal(["Primary: Drogue A", "Primary: Main A"], watched.Differences.Where(d => d.Kind == FlightDifferenceKind.Absent).Select(d => d.What));
        var film = watched.Film(false);

        // The joint parts with the backup's charge, a second and a half after apogee as its row in the design says.
        var backup = film.Events.Single(e => e.Name == "Backup: Drogue B");
        Assert.Equal(film.Breaks[1]!.Value, film.Times[backup.Moment], 1e-4);
        Assert.Equal(1.5, film.Breaks[1]!.Value - watched.Study.Flight.Apogee!.Time, 1e-3);
        var absent = film.Events.Single(e => e.Name == "Primary: Drogue A");
        Assert.Equal(("absent", "planned here, does not happen"), (absent.Differs, absent.Says));
        Assert.Equal(Heron.Flight.Events.Single(e => e.Name == "Primary: Drogue A").Time, film.Times[absent.Moment], 1e-4);
    }

    [Fact]
    public void What_never_parts_is_drawn_in_one_piece_that_falls_on_its_nose()
    {
        var film = WatchedFlight.Of(Heron, "Every altimeter dead")!.Film(false);
        Assert.Single(film.Pieces);
        Assert.Empty(film.Breaks);
        Assert.Empty(film.Canopies);
        var body = Assert.Single(film.Bodies);
        Assert.True(body.Whole);
        Assert.Equal("falling whole", body.Doing[body.Does[^1]]);
        Assert.True(Math.Abs(body.Turn[^1]) > 150, $"the nose points {body.Turn[^1]}° from upright");
    }

    [Fact]
    public void What_follows_stands_on_the_time_line()
    {
        var film = WatchedFlight.Of(Heron, "No drogue charge")!.Film(false);
        var torn = film.Events.Single(e => e.Differs == "follows" && e.Name.Contains("tears", StringComparison.Ordinal));
        Assert.Equal("follows from the failure", torn.Says);
        Assert.Contains(Answer.Tables[3].Rows, r => r.Cells[0].Words == "No drogue charge" && r.Cells[1].Words == torn.Name && Math.Abs(r.Cells[2].Value!.Value - film.Times[torn.Moment]) < 1e-4);
        Assert.Equal(film.Events.Select(e => e.Moment).Order(), film.Events.Select(e => e.Moment));
    }

    [Fact]
    public void A_failure_that_is_not_there_is_not_shown() => Assert.Null(WatchedFlight.Of(Heron, "Parachute eaten by moths"));
}
