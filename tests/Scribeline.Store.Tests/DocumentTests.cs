using System.Text.Json.Nodes;

namespace Scribeline.Store.Tests;

/// <summary>The committed schema and reference are what the types say now. Run with SCRIBELINE_APPROVE=1 to write them anew.</summary>
public class DocumentTests
{
    private const string Mark = "<!-- Everything below is made from the types by the tests. -->\n";

    private static string Docs(string name) => Path.Combine(Repository.Folder, "docs", name);

    [Fact]
    public void The_schema_is_that_of_the_types()
    {
        if (Environment.GetEnvironmentVariable("SCRIBELINE_APPROVE") == "1") File.WriteAllText(Docs("design-file.schema.json"), DesignSchema.Text());
        Assert.Equal(DesignSchema.Text(), File.ReadAllText(Docs("design-file.schema.json")));
    }

    [Fact]
    public void Every_reference_in_the_schema_leads_somewhere()
    {
        var root = JsonNode.Parse(DesignSchema.Text())!.AsObject();
        var defined = root["$defs"]!.AsObject().Select(d => "#/$defs/" + d.Key).ToHashSet(StringComparer.Ordinal);
        Assert.All(References(root), r => Assert.Contains(r, defined));
    }

    [Fact]
    public void The_reference_is_that_of_the_types()
    {
        var committed = File.ReadAllText(Docs("design-file.md"));
        var made = committed[..(committed.IndexOf(Mark, StringComparison.Ordinal) + Mark.Length)] + "\n" + DesignReference.Text().TrimEnd() + "\n";
        if (Environment.GetEnvironmentVariable("SCRIBELINE_APPROVE") == "1") File.WriteAllText(Docs("design-file.md"), made);
        Assert.Equal(made, File.ReadAllText(Docs("design-file.md")));
    }

    [Fact]
    public void Every_key_has_a_meaning_that_ends_like_a_sentence()
    {
        var rows = DesignReference.Text().Split('\n').Where(l => l.StartsWith("| `", StringComparison.Ordinal) || l.StartsWith("| **", StringComparison.Ordinal)).ToList();
        Assert.True(rows.Count > 150);
        Assert.All(rows, r => Assert.EndsWith(". |", r));
    }

    private static IEnumerable<string> References(JsonNode? node) => node switch
    {
        JsonObject map => map.SelectMany(m => m.Key == "$ref" ? [m.Value!.GetValue<string>()] : References(m.Value)),
        JsonArray list => list.SelectMany(References),
        _ => [],
    };
}
