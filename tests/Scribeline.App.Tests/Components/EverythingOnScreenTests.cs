using System.Text.Json.Nodes;
using AngleSharp.Dom;
using Bunit;
using Microsoft.Extensions.DependencyInjection;
using Scribeline.App.Components;
using Scribeline.App.Documents;
using Scribeline.Tests;

namespace Scribeline.App.Tests.Components;

/// <summary>
/// Every key of the published schema has a way on screen: begun from the starter, everything that the screen offers to add is added with its
/// own buttons, and what can be typed then is held against the schema.
/// </summary>
public sealed class EverythingOnScreenTests : IDisposable
{
    private static readonly JsonObject Definitions = JsonNode.Parse(File.ReadAllText(Path.Combine(Approved.Root, "docs/design-file.schema.json")))!["$defs"]!.AsObject();

    // Keys without a field of their own, and why.
    private static readonly Dictionary<string, string> Elsewhere = new(StringComparer.Ordinal)
    {
        ["parts.kind"] = "chosen when the part is added: another kind is another part",
        ["parts(nose cone).kind"] = "chosen when the part is added: another kind is another part",
        ["parts(tube).kind"] = "chosen when the part is added: another kind is another part",
        ["parts(altimeter bay).kind"] = "chosen when the part is added: another kind is another part",
        ["parts(coupler).kind"] = "chosen when the part is added: another kind is another part",
        ["parts(transition).kind"] = "chosen when the part is added: another kind is another part",
    };

    private readonly ScratchFolder scratch = new();
    private readonly BunitContext page = new();
    private readonly DesignDocument document;
    private readonly ViewState view = new();
    private readonly HashSet<string> seen = new(StringComparer.Ordinal), added = new(StringComparer.Ordinal);

    public EverythingOnScreenTests()
    {
        Assert.Equal(0, Run.In(scratch.Path, "new", "Grey Wagtail").Code);
        document = DesignDocument.Open("grey-wagtail", scratch.At("grey-wagtail/rocket.yaml"), 0, TimeSpan.Zero).Document!;
        page.JSInterop.Mode = JSRuntimeMode.Loose;
        page.Services.AddSingleton(view);
    }

    [Fact]
    public void Every_key_of_the_schema_can_be_typed_or_added_on_screen()
    {
        while (Grow())
        {
        }

        Assert.NotNull(document.Reading.Design);
        var wanted = Keys("rocket", "", []).ToHashSet(StringComparer.Ordinal);
        Assert.True(wanted.Count > 250, $"only {wanted.Count} keys were found in the schema");
        Assert.Empty(wanted.Except(seen).Where(k => !Elsewhere.ContainsKey(k)).Order(StringComparer.Ordinal));
        Assert.All(Elsewhere.Keys, k => Assert.Contains(k, wanted));
    }

    [Fact]
    public void Everything_added_can_be_taken_out_on_screen()
    {
        while (Grow())
        {
        }

        // Innermost last: taking out the outer takes the inner along.
        HashSet<string> gone = new(StringComparer.Ordinal);
        for (var round = 0; round < 400; round++)
        {
            var path = document.Outline!.Maps.Reverse().SelectMany(m => m.All.Reverse()).Select(m => m.Path)
                .FirstOrDefault(p => added.Contains(Pattern(p)) && !gone.Contains(p) && !p.StartsWith("parts[0]", StringComparison.Ordinal));
            if (path is null) break;
            var before = document.Outline.All.Count();
            var panel = Panel(Outer(path));
            var form = DayFile.Keys.Contains(path) ? panel.Find(".day-file") : panel.Find($".thing-form[data-thing='{path}']");
            var button = form.QuerySelectorAll("button.take-out").FirstOrDefault(b => b.GetAttribute("data-out") == path);
            Assert.True(button is not null, $"{path} has no way out on screen");
            button.Click();
            gone.Add(path);
            if (document.Outline!.All.Count() < before) gone.Clear();
        }

        var left = document.Outline!.All.Select(m => m.Path).Where(p => added.Contains(Pattern(p))).ToList();
        Assert.True(left.TrueForAll(p => p.StartsWith("parts[", StringComparison.Ordinal) || p.StartsWith("joints[", StringComparison.Ordinal)) && left.Count < 20, string.Join(", ", left));
    }

    public void Dispose()
    {
        page.Dispose();
        document.Dispose();
        scratch.Dispose();
    }

    // Looks at every panel, and adds with its button whatever was not added yet; false where nothing is new.
    private bool Grow()
    {
        var grew = false;
        foreach (var picked in Panel(null).FindAll("[id^='pick-']").Select(b => b.Id!["pick-".Length..]).Prepend(null).ToList())
        {
            var panel = Panel(picked);
            foreach (var field in panel.FindAll("[data-path]")) seen.Add(Pattern(field.GetAttribute("data-path")!));
            foreach (var thing in panel.FindAll("[data-thing]")) seen.Add(Pattern(thing.GetAttribute("data-thing")!));
            if (panel.FindAll("[data-key='motor']").Count > 0 && panel.FindAll("#thrust-0-time, [data-path='motor.thrust']").Count > 0) seen.UnionWith(["motor.thrust", "motor.thrust.time", "motor.thrust.thrust"]);
            foreach (var path in panel.FindAll("[data-add]").Select(a => a.GetAttribute("data-add")!).ToList())
            {
                var kinds = Add(panel, path) is { } form ? form.QuerySelectorAll("option").Select(o => o.GetAttribute("value")!).ToList() : [];
                foreach (var kind in (path == "limits" ? kinds.Take(1) : kinds).DefaultIfEmpty(""))
                {
                    if (!added.Add(Pattern(path) + (kind.Length > 0 && path != "limits" ? $"({kind})" : "")) || Add(panel, path) is not { } add) continue;
                    if (kind.Length > 0) add.QuerySelector("select")!.Change(kind);
                    var version = document.Version;
                    Add(panel, path)!.QuerySelector(".add-button")!.Click();
                    Assert.True(document.Version > version, $"{path} {kind} cannot be added: {string.Join(" ", panel.FindAll(".refusal").Select(r => r.TextContent))}");
                    seen.Add(Pattern(path));
                    if (path == "limits") seen.Add("limits");
                    grew = true;
                    panel = Panel(picked);
                }
            }
        }

        return grew;
    }

    private static IElement? Add(IRenderedComponent<ThingPanel> panel, string path) => panel.FindAll("[data-add]").FirstOrDefault(a => a.GetAttribute("data-add") == path);

    private IRenderedComponent<ThingPanel> Panel(string? picked)
    {
        view.Pick(picked);
        return page.Render<ThingPanel>(p => p.AddCascadingValue(document).AddCascadingValue("Inch", true));
    }

    private static string Outer(string path) => path.Split('.')[0];

    // Parts are told by their kind, lists by what they hold.
    private string Pattern(string path)
    {
        var plain = Concerns.PatternOf(path);
        return path.StartsWith("parts[", StringComparison.Ordinal) && path.Contains('.', StringComparison.Ordinal)
            ? $"parts({document.Outline!.Find(path[..(path.IndexOf(']', StringComparison.Ordinal) + 1)])!.Kind}){plain["parts".Length..]}"
            : plain;
    }

    private static IEnumerable<string> Keys(string definition, string path, HashSet<string> within)
    {
        if (!within.Add(definition)) yield break;
        var held = Definitions[definition]!.AsObject();
        foreach (var kind in (held["allOf"]?.AsArray() ?? []).SelectMany(choice => References(choice!["then"])))
        {
            var word = Definitions[kind]!["properties"]!["kind"]!["const"]!.GetValue<string>();
            foreach (var key in Keys(kind, $"{path}({word})", [.. within])) yield return key;
        }

        foreach (var (key, value) in held["properties"]?.AsObject() ?? [])
        {
            var own = path.Length == 0 ? key : $"{path}.{key}";
            yield return own;
            foreach (var inner in References(value!).Where(r => !r.StartsWith("quantity-", StringComparison.Ordinal)).SelectMany(r => Keys(r, own, [.. within]))) yield return inner;
        }
    }

    // Definitions a value leads to, through lists and choices.
    private static IEnumerable<string> References(JsonNode? value) => value switch
    {
        JsonObject one when one["$ref"] is { } reference => [reference.GetValue<string>().Split('/')[^1]],
        JsonObject one => one.Where(p => p.Key is "anyOf" or "oneOf" or "items" or "prefixItems").SelectMany(p => References(p.Value)),
        JsonArray many => many.SelectMany(References),
        _ => [],
    };
}
