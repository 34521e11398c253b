using Scribeline.App.Documents;
using Scribeline.Engine.Questions;
using Scribeline.Store;

namespace Scribeline.App.Tests.Documents;

/// <summary>Places on a plate are written into the text where they are typed, whatever way they were typed.</summary>
public class PlateTableTests
{
    private const string Cups = "{kind: charge cup, count: 2, diameter: 5/8 in, from centre: 1 in, clock: [52 deg, 232 deg]}";
    private const string Wires = "{kind: wire hole, diameter: 1/4 in, from centre: 1 in, clock: [128 deg]}";
    private const string Bolt = "        bolt: {clock: 90 deg, inside width: 3/4 in}\n";

    [Fact]
    public void One_angle_of_a_list_changes_alone()
    {
        var (text, table) = Table(t => t);
        var after = table.Write(text, new PlateMove("charge cup 2", 0.0254, 240 * Math.PI / 180));
        Assert.Null(after.Problem);
        Assert.Equal(First(text, Cups, Cups.Replace("232", "240", StringComparison.Ordinal)), after.Text);
    }

    [Fact]
    public void A_rule_for_several_gives_way_to_a_list()
    {
        var (text, table) = Table(t => First(t, Cups, Cups.Replace("[52 deg, 232 deg]", "[halves from 52 deg]", StringComparison.Ordinal)));
        var after = table.Write(text, "charge cup 2", null, "240 deg");
        Assert.Null(after.Problem);
        Assert.Equal(First(text, "[halves from 52 deg]", "[52 deg, 240 deg]"), after.Text);
    }

    [Fact]
    public void What_was_only_proposed_is_written_in()
    {
        var (text, table) = Table(t => First(t, Wires, "{kind: wire hole, diameter: 1/4 in}"));
        Assert.Equal(["wire hole"], table.Proposed);
        var after = table.Write(text, table.Snapped(new("wire hole", 25.3e-3, 128.4 * Math.PI / 180), fine: false));
        Assert.Null(after.Problem);
        Assert.Equal(First(text, "{kind: wire hole, diameter: 1/4 in}", Wires), after.Text);
    }

    [Fact]
    public void A_bolt_without_a_place_gets_one()
    {
        // The second of three bolts is that of the upper plate of the bay.
        var (text, table) = Table(t =>
        {
            var at = t.IndexOf(Bolt, t.IndexOf("name: Bay top", StringComparison.Ordinal), StringComparison.Ordinal);
            return t.Remove(at, Bolt.Length);
        });
        var after = table.Write(text, "U-bolt", null, "45 deg");
        Assert.Null(after.Problem);
        Assert.Contains("bolt: {clock: 45 deg}", after.Text, StringComparison.Ordinal);
        Assert.NotNull(DesignFile.ReadText(after.Text, Where).Design);
    }

    [Fact]
    public void Rods_are_written_by_their_spacing()
    {
        var (text, table) = Table(t => t);
        var after = table.Write(text, new PlateMove("rod", 0.0254, 0));
        Assert.Null(after.Problem);
        Assert.Equal(First(text, "spacing: 1-3/4 in", "spacing: 2 in"), after.Text);
    }

    // 25.3 mm are 31.9 thirty-seconds of an inch, or 63.7 sixty-fourths.
    [Theory]
    [InlineData(25.3, 74, false, 25.4, 75)]
    [InlineData(25.3, 77.6, false, 25.4, 78)]
    [InlineData(24.8, -1, false, 24.60625, 0)]
    [InlineData(25.1, 74.3, true, 25.003125, 74.5)]
    public void It_snaps_to_a_rule_and_to_every_fifteenth_degree(double from, double clock, bool fine, double snapped, double turned)
    {
        var (_, table) = Table(t => t);
        var move = table.Snapped(new("wire hole", from / 1000, clock * Math.PI / 180), fine);
        Assert.Equal(snapped / 1000, move.FromCentre, 1e-9);
        Assert.Equal(turned * Math.PI / 180, move.Clock, 1e-9);
    }

    [Fact]
    public void Its_like_move_to_the_same_distance()
    {
        var (_, table) = Table(t => t);
        var moved = table.Moved(new("charge cup 1", 0.02, 1));
        Assert.Equal([0.02, 0.02], moved.Where(g => g.Name.StartsWith("charge cup", StringComparison.Ordinal)).Select(g => g.FromCentre!.Value));
        Assert.Equal(table.Groups.Single(g => g.Name == "charge cup 2").Clock, moved.Single(g => g.Name == "charge cup 2").Clock);
        Assert.Equal(table.Groups.Single(g => g.Name == "wire hole"), moved.Single(g => g.Name == "wire hole"));
    }

    private static string Where => Path.Combine(Run.Examples, "night-heron", "rocket.yaml");

    private static (string Text, PlateTable Table) Table(Func<string, string> change)
    {
        var text = change(File.ReadAllText(Where));
        var design = DesignFile.ReadText(text, Where).Design!;
        var study = Studies.Of(design, 1).Nominal!;
        return (text, new PlateTable(design, study, Enumerable.Range(0, study.Plates.Count).First(i => study.Plates[i].Name == "Bay top")));
    }

    // Both plates of the bay carry alike; the upper one comes first.
    private static string First(string text, string old, string now)
    {
        var at = text.IndexOf(old, StringComparison.Ordinal);
        Assert.True(at >= 0, $"The example no longer says {old}");
        return string.Concat(text.AsSpan(0, at), now, text.AsSpan(at + old.Length));
    }
}
