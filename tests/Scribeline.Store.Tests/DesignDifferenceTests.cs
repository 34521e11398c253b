using Scribeline.Tests;

namespace Scribeline.Store.Tests;

/// <summary>Two texts of a design, and what a builder would say has changed.</summary>
public class DesignDifferenceTests
{
    private static readonly string Text = PlainDesign.Text("Night Heron");

    [Theory]
    [InlineData("diameter: 60 in,", "diameter: 66 in,", "Main diameter 60 in → 66 in")]
    [InlineData("length: 34 in", "length: {value: 34.02 in, known: measured}", "Booster length 34 in → 34.02 in (measured)")]
    [InlineData("      root: 8 in\n", "      root: 9 in\n", "Booster fins root 8 in → 9 in")]
    [InlineData("in: Booster, canopy: {name: Drogue", "in: Payload, canopy: {name: Drogue", "Drogue in Booster → Payload")]
    [InlineData("descending through: {height: 700 ft", "descending through: {height: 800 ft", "Primary descending through height 700 ft → 800 ft")]
    [InlineData("pins: {screw: \"#2-56 nylon\", count: 2, clock: halves from 60 deg", "pins: {screw: \"#2-56 nylon\", count: 3, clock: halves from 60 deg", "Nose to Payload pins count 2 → 3")]
    [InlineData("from aft end: [1 in, 17 in]", "from aft end: [1 in, 16 in]", "Booster rail guides from aft end 1 in, 17 in → 1 in, 16 in")]
    [InlineData("mass: 240 g}}", "mass: 240 g, strength: 2 kN}}", "Main strength 2 kN, was left out")]
    [InlineData("display: inch ", "display: metric ", "display inch → metric")]
    [InlineData("name: Night Heron", "name: Grey Heron", "name Night Heron → Grey Heron")]
    [InlineData("  - {name: Main A, on: Bay top, into: Payload, powder: 4F, mass: auto}\n", "", "Main A is gone")]
    [InlineData("count: 2, spacing: 1-3/4 in", "count: 2", "Bay rods spacing left out, was 1-3/4 in")]
    public void Is_told_in_one_line(string old, string now, string words)
    {
        Assert.Contains(old, Text, StringComparison.Ordinal);
        var changed = Text.Replace(old, now, StringComparison.Ordinal);
        Assert.Equal([words], DesignDifference.Between(Text, changed)!.Select(c => c.Words));
    }

    [Fact]
    public void Order_comments_and_spacing_do_not_count()
    {
        var charge = "  - {name: Main A, on: Bay top, into: Payload, powder: 4F, mass: auto}\n";
        var moved = Text.Replace(charge, "", StringComparison.Ordinal).Replace("charges:\n", "charges: # first\n  - {mass: auto, name: Main A,  on: Bay top, into: Payload, powder: 4F}\n", StringComparison.Ordinal);
        Assert.Empty(DesignDifference.Between(Text, moved)!);
        Assert.Empty(DesignDifference.Between(Text, Text.Replace("\n", "\r\n", StringComparison.Ordinal))!);
    }

    [Fact]
    public void A_thing_that_came_is_told_once_and_back_again_as_gone()
    {
        var more = Text.Replace("charges:\n", "charges:\n  - {name: Spare, on: Bay top, into: Payload, powder: 4F, mass: 1 g}\n", StringComparison.Ordinal);
        Assert.Equal(["Spare is new"], DesignDifference.Between(Text, more)!.Select(c => c.Words));
        Assert.Equal(["Spare is gone"], DesignDifference.Between(more, Text)!.Select(c => c.Words));
    }

    [Fact]
    public void What_is_no_design_has_no_difference_in_words()
    {
        Assert.Null(DesignDifference.Between(Text, "a: [1"));
        Assert.Null(DesignDifference.Between("", Text));
    }
}
