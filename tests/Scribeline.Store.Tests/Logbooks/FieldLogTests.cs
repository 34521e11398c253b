using Scribeline.Engine.Questions;
using Scribeline.Store.Logbooks;
using Scribeline.Tests;

namespace Scribeline.Store.Tests.Logbooks;

/// <summary>What persons confirm and tick off at the field, in the logbook.</summary>
public class FieldLogTests
{
    private static readonly DateTimeOffset Morning = new(2026, 5, 9, 8, 15, 0, TimeSpan.Zero);
    private static readonly DateOnly Day = new(2026, 5, 9);

    [Fact]
    public void A_word_counts_for_its_day_and_what_it_was_given_for()
    {
        using var folder = new TemporaryFolder();
        using (var book = Logbook.Open(folder.Path("rocket.yaml")).Value!)
        {
            Assert.Equal(new Confirmation("N06b", Morning), book.Confirm("N06b", Day, "one", true, Morning).Value);
            book.Confirm("F16", Day, "one", true, Morning.AddMinutes(1));
        }

        using var again = Logbook.Open(folder.Path("rocket.yaml")).Value!;
        Assert.Equal(["N06b", "F16"], again.Confirmed(Day, "one").Value!.Select(c => c.Rule));
        Assert.Empty(again.Confirmed(Day, "other").Value!);
        Assert.Empty(again.Confirmed(Day.AddDays(1), "one").Value!);
        again.Confirm("N06b", Day, "one", false, Morning.AddMinutes(2));
        Assert.Equal(["F16"], again.Confirmed(Day, "one").Value!.Select(c => c.Rule));
        using var neighbour = Logbook.Open(folder.Path("other.rocket.yaml")).Value!;
        Assert.Empty(neighbour.Confirmed(Day, "one").Value!);
    }

    [Fact]
    public void The_latest_tick_of_an_item_counts()
    {
        using var folder = new TemporaryFolder();
        using (var book = Logbook.Open(folder.Path("rocket.yaml")).Value!)
        {
            book.Check([("pad/a", "A: seen"), ("pad/b", "B: seen")], Day, true, Morning);
            book.Check([("pad/a", "A: seen")], Day, false, Morning.AddMinutes(1));
            book.Check([("eve/c", "C: seen")], Day.AddDays(-1), true, Morning.AddDays(-1));
        }

        using var again = Logbook.Open(folder.Path("rocket.yaml")).Value!;
        Assert.Equal(
            [new DayTick("pad/b", "B: seen", Day, true, Morning), new DayTick("pad/a", "A: seen", Day, false, Morning.AddMinutes(1))],
            again.Checked(Day).Value!);
        Assert.Equal(3, again.Checked(Day.AddDays(-1)).Value!.Count);
    }

    [Fact]
    public void The_basis_follows_the_text_the_files_and_what_was_measured()
    {
        using var folder = new TemporaryFolder();
        File.WriteAllText(folder.Path("site.yaml"), "name: Salt Flat\nelevation: 0 m\n");
        File.WriteAllText(folder.Path("air.yaml"), "wind speed: 3 m/s\nwind from: 270 deg\n");
        var text = PlainDesign.Text("Grey Plover") + "site: site.yaml\nweather: air.yaml\n";
        FlightBasis Of(string design, params MeasuredValue[] measured)
        {
            File.WriteAllText(folder.Path("rocket.yaml"), design);
            var reading = DesignFile.Read(folder.Path("rocket.yaml"));
            Assert.Equal(3, reading.Files.Count);
            return FlightBasis.Of(reading, measured)!;
        }

        var basis = Of(text);
        Assert.Equal(basis, Of(text));
        Assert.NotEqual(basis.Ahead, Of(text.Replace("length: 34 in", "length: 33 in", StringComparison.Ordinal)).Ahead);
        Assert.NotEqual(basis.Ahead, Of(text, new MeasuredValue("Payload mass", "700 g", "", Morning)).Ahead);

        // A new wind asks anew for the sky and the people, not for the papers.
        File.WriteAllText(folder.Path("air.yaml"), "wind speed: 4 m/s\nwind from: 270 deg\n");
        Assert.Equal(basis.Ahead, Of(text).Ahead);
        Assert.NotEqual(basis.OnTheDay, Of(text).OnTheDay);
        File.WriteAllText(folder.Path("site.yaml"), "name: Salt Flat\nelevation: 1 m\n");
        Assert.NotEqual(basis.Ahead, Of(text).Ahead);
    }
}
