using Scribeline.App.Web;
using Scribeline.Engine.Flight;
using Scribeline.Engine.Questions;
using Scribeline.Store;

namespace Scribeline.App.Tests.Web;

/// <summary>The replay shows the flight that was computed.</summary>
public class FlightFilmTests
{
    private static readonly Study Study = Studies.Of(DesignFile.Read(Path.Combine(Run.Examples, "night-heron")).Design!, 1).Nominal!;
    private static readonly FlightFilm Film = FlightFilm.Of(Study, inch: false);

    [Fact]
    public void Every_event_is_a_moment_with_the_words_of_that_very_state()
    {
        Assert.Equal(Study.Flight.Events.Count, Film.Events.Count);
        foreach (var (shown, e) in Film.Events.Zip(Study.Flight.Events))
        {
            Assert.Equal(e.Time, Film.Times[shown.Moment], 1e-4);
            Assert.Equal(Shown.Text(e.Time, Unit.Time, false), Film.Clock[shown.Moment]);
            var body = Film.Bodies[e.Body];
            Assert.Equal(Shown.Text(e.At.Height, Unit.Height, false), body.Height[shown.Moment - body.From]);
        }
    }

    [Fact]
    public void Pieces_part_with_the_first_charge_that_opens_their_joint()
    {
        Assert.Equal(["Nose", "Payload to Bay", "Booster"], Film.Pieces.Select(p => p.Name));
        Assert.Equal(2, Film.Breaks.Count);
        Assert.Equal(At("Primary: Main A"), Film.Breaks[0]!.Value, 1e-4);
        Assert.Equal(At("Primary: Drogue A"), Film.Breaks[1]!.Value, 1e-4);
    }

    [Fact]
    public void Distances_lie_along_the_line_to_the_farthest_place()
    {
        var farthest = Enumerable.Range(0, Study.Flight.Bodies.Count).SelectMany(b => Study.Flight.Series(0.5, b)).Max(s => Math.Sqrt((s.Position.X * s.Position.X) + (s.Position.Y * s.Position.Y)));
        Assert.Equal(farthest, Film.Bodies.SelectMany(b => b.X).Max(), 2.0);
        Assert.All(Film.Bodies.SelectMany(b => b.X), x => Assert.True(Math.Abs(x) <= farthest + 1));
        Assert.Equal(Study.Flight.Apogee!.Height, Film.Bodies.SelectMany(b => b.Z).Max(), 0.1);
    }

    [Fact]
    public void What_hangs_open_is_said()
    {
        var last = Film.Bodies[^1];
        Assert.True(last.Lands);
        Assert.Equal(["under Drogue", "under Drogue and Main"], last.Doing);
        Assert.Equal(Study.Flight.Openings.Select(o => o.Name), Film.Canopies.Select(c => c.Name));
    }

    private static double At(string charge) => Study.Flight.Events.First(e => e.Kind == FlightEventKind.Charge && e.Name == charge).Time;
}
