using Scribeline.Engine.Quantities;
using Scribeline.Tests;

namespace Scribeline.Store.Tests;

public class DesignOutlineTests
{
    private static readonly OutlineMap Root = DesignOutline.Of(PlainDesign.Text("Night Heron"))!;

    [Fact]
    public void Holds_every_word_and_number_of_a_design()
    {
        // Read apart from the outline: every scalar of the text that is a value.
        List<Problem> problems = [];
        var typed = Scalars(YamlTree.Read(PlainDesign.Text("Night Heron"), problems)!).Order(StringComparer.Ordinal);
        var held = Root.All.SelectMany(m => m.Fields).Select(f => f.Typed).OfType<string>()
            .Concat(Root.All.SelectMany(m => m.Fields).Select(f => f.Known).OfType<string>().Where(k => k.Length > 0))
            .Concat(Root.Maps.Where(m => m.Word == "parts").Select(m => m.Kind)).Order(StringComparer.Ordinal);
        Assert.Equal(typed, held);
    }

    [Fact]
    public void Every_field_can_be_replaced_by_what_it_holds()
    {
        var text = PlainDesign.Text("Night Heron");
        foreach (var field in Root.All.SelectMany(m => m.Fields).Where(f => f.Typed is not null))
        {
            var change = DesignText.Replace(text, field.Path, field.Typed!);
            Assert.True(change.Problem is null, field.Path);
            Assert.Equal(DesignFile.ReadText(text).Design, DesignFile.ReadText(change.Text).Design);
        }
    }

    [Fact]
    public void A_quantity_tells_itself_in_the_other_system()
    {
        var outside = Root.Find("parts[1]")!.Fields.Single(f => f.Word == "outside");
        Assert.Equal(OutlineKind.Quantity, outside.Kind);
        Assert.Equal("78.74 mm", outside.Other); // 3.1 x 25.4
        Assert.True(outside.Required);
    }

    [Fact]
    public void A_reference_offers_the_names_it_can_mean()
    {
        var charge = Root.Find("charges[0]")!;
        Assert.Contains("Bay bottom", charge.Fields.Single(f => f.Word == "on").Words);
        Assert.Contains("Booster", charge.Fields.Single(f => f.Word == "into").Words);
        Assert.Contains("glass epoxy", Root.Find("parts[1]")!.Fields.Single(f => f.Word == "material").Words);
    }

    [Fact]
    public void Lists_can_grow_and_what_is_missing_can_be_added()
    {
        Assert.Contains(Root.Additions, a => a is { Path: "parts", Many: true } && a.Kinds.Contains("tube"));
        Assert.Contains(Root.Find("parts[1]")!.Additions, a => a is { Path: "parts[1].motor mount", Many: false });
    }

    [Theory]
    [InlineData("")]
    [InlineData("- 1\n- 2")]
    [InlineData("a: [")]
    public void What_is_no_map_has_no_outline(string text) => Assert.Null(DesignOutline.Of(text));

    [Theory]
    [InlineData("parts: 3\njoints: {}\nname: [1, 2]\nmotor: [1]\nsurface: text")]
    [InlineData("parts:\n  - 3\n  - {kind: submarine}\n  - {kind: tube, fins: [3, {corners: [1, [2]]}]}")]
    public void Odd_text_is_outlined_as_far_as_it_goes(string text) => Assert.NotNull(DesignOutline.Of(text));

    private static IEnumerable<string> Scalars(YamlNode node) => node switch
    {
        YamlMap map => map.Entries.SelectMany(e => Scalars(e.Value)),
        YamlList list => list.Items.SelectMany(Scalars),
        YamlText { Empty: false } text => [text.Value],
        _ => [],
    };
}
