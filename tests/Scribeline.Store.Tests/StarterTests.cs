namespace Scribeline.Store.Tests;

public class StarterTests
{
    [Theory]
    [InlineData("Night Heron")]
    [InlineData("No: 5 #2, {odd}")]
    [InlineData("\"quoted\" \\ back")]
    [InlineData("- dash")]
    [InlineData("null")]
    public void Reads_without_problems_under_any_name(string name)
    {
        var reading = DesignFile.ReadText(Starter.Text(name));
        Assert.Empty(reading.Problems);
        Assert.Equal(name, reading.Design!.Name);
    }

    [Fact]
    public void Holds_what_it_says()
    {
        var design = DesignFile.ReadText(Starter.Text("Night Heron")).Design!;
        Assert.Equal(["Nose", "Payload", "Bay", "Booster"], design.Parts.Select(p => p.Name));
        var tube = Assert.IsType<Engine.Design.TubeDesign>(design.Parts[3]);
        Assert.Equal(0.0047625, tube.Fins[0].Thickness.Si);
        Assert.Equal("parts[3].fins.thickness", tube.Fins[0].Thickness.At);
        Assert.Equal("3/16 in", tube.Fins[0].Thickness.Text);
        Assert.Equal(1.3, design.Charges[1].Mass.Share!.Si);
    }

    [Fact]
    public void Reads_the_same_with_other_line_ends_and_a_byte_order_mark() => Assert.Equal(
        DesignFile.ReadText(Starter.Text("Night Heron")).Design,
        DesignFile.ReadText("\uFEFF" + Starter.Text("Night Heron").Replace("\n", "\r\n", StringComparison.Ordinal)).Design);
}
