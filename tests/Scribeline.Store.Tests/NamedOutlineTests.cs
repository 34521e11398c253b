using Scribeline.Tests;

namespace Scribeline.Store.Tests;

/// <summary>The outline of a design with the files it names, and what can be added to lists of single values.</summary>
public class NamedOutlineTests
{
    private static readonly string Text = PlainDesign.Text("Heron") + "motor: ../motors/plain.yaml\nweather: day.yaml\nlimits: {stable.margin: 1.5}\n";

    private static readonly OutlineMap Root = DesignOutline.Of(Text, new Dictionary<string, string>
    {
        ["motor"] = Starter.FileFor("motor"),
        ["weather"] = "wind speed: 9 mph\nlayers:\n  - {height: 300 m, wind speed: 7 m/s}\n",
    })!;

    [Fact]
    public void What_a_file_holds_stands_where_it_would_stand_in_the_design()
    {
        Assert.Equal("54 mm", Root.Find("motor")!.Fields.Single(f => f.Path == "motor.diameter").Typed);
        Assert.Equal("../motors/plain.yaml", Root.Fields.Single(f => f.Path == "motor").Typed);
        Assert.Equal("7 m/s", Root.Find("weather.layers[0]")!.Fields.Single(f => f.Word == "wind speed").Typed);
        Assert.Contains(Root.Find("weather")!.Additions, a => a is { Path: "weather.layers", Many: true });
        Assert.Contains(Root.Additions, a => a.Path == "site");
    }

    [Theory]
    [InlineData("motor")]
    [InlineData("site")]
    [InlineData("weather")]
    public void Every_starter_of_a_file_can_be_read(string key)
    {
        var file = Starter.FileFor(key);
        Assert.NotEmpty(file);
        var whole = DesignText.Put(Starter.Text("Heron"), key, $"{{{string.Join(", ", file.Split('\n').Where(l => l.Length > 0 && l[0] != '#').Select(l => l.Split("  #")[0].TrimEnd()))}}}");
        Assert.Empty(DesignFile.ReadText(whole.Text).Problems);
    }

    [Fact]
    public void Limits_can_be_added_and_go_with_the_last_one()
    {
        var limits = Root.Find("limits")!;
        Assert.Equal("1.5", Assert.Single(limits.Fields).Typed);
        Assert.DoesNotContain("stable.margin", Assert.Single(limits.Additions).Kinds);
        Assert.DoesNotContain("limits", DesignText.Remove(Text.Replace("limits: {", "limits:\n  ", StringComparison.Ordinal).Replace("1.5}", "1.5", StringComparison.Ordinal), "limits.stable.margin").Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_list_of_single_values_can_grow_and_shrink()
    {
        var guides = Root.Find("parts[3].rail guides")!;
        Assert.Equal(["parts[3].rail guides.from aft end[0]", "parts[3].rail guides.from aft end[1]"], guides.Fields.Select(f => f.Leaves).OfType<string>());
        Assert.Contains(guides.Additions, a => a.Path == "parts[3].rail guides.from aft end" && a.Needs is [{ Word: "" }]);
    }

    [Fact]
    public void Text_of_a_named_file_is_completed_with_its_own_keys()
    {
        Assert.Contains(DesignCompletion.At("name: A\nloa", 11, "motor").Offers, o => o.Word == "loaded mass");
        Assert.Contains(DesignCompletion.At("wind s", 6, "weather").Offers, o => o.Word == "wind speed");
        Assert.Empty(DesignCompletion.At("wind s", 6, "motor.thrust").Offers);
        Assert.DoesNotContain(DesignCompletion.At("loa", 3).Offers, o => o.Word == "loaded mass");
    }
}
