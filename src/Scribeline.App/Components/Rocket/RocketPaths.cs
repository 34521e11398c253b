using System.Globalization;
using Scribeline.Engine.Shop;
using Scribeline.Store;

namespace Scribeline.App.Components.Rocket;

/// <summary>Which thing of the design each outline of the drawing is of.</summary>
/// <param name="Root">Outline of the design.</param>
public sealed record RocketPaths(OutlineMap Root)
{
    /// <summary>Nothing can be picked.</summary>
    public static RocketPaths None { get; } = new(new OutlineMap("", "", "", "", [], [], []));

    /// <summary>Path of what an outline is of.</summary>
    public string Of(SideShape shape) => shape.Kind switch
    {
        SideKind.Motor => Named("motor", null) ?? "",
        SideKind.Stowed => Named("stowed", shape.Name) ?? Part(shape.Part),
        SideKind.Plate => Within(shape.Part, "plates", shape.Name),
        SideKind.Ring => Within(shape.Part, "rings", shape.Name),
        SideKind.Mount => Within(shape.Part, "motor mount", null),
        SideKind.Rod => Within(shape.Part, "rods", null),
        SideKind.Fin or SideKind.FinTab => Within(shape.Part, "fins", null),
        SideKind.Guide => Within(shape.Part, "rail guides", null),
        _ => Part(shape.Part),
    };

    /// <summary>Path of a joint.</summary>
    public string Of(SideJoint joint) => Named("joints", joint.Name) ?? string.Create(CultureInfo.InvariantCulture, $"joints[{joint.Joint}]");

    /// <summary>Path of a charge.</summary>
    public string Of(SideCharge charge) => Named("charges", charge.Name) ?? "";

    private string Within(int part, string word, string? title) =>
        Root.Find(Part(part))?.All.FirstOrDefault(m => m.Word == word && (title is null || m.Title == title))?.Path ?? Part(part);

    private string? Named(string word, string? title) => Root.Maps.FirstOrDefault(m => m.Word == word && (title is null || m.Title == title))?.Path;

    private static string Part(int index) => string.Create(CultureInfo.InvariantCulture, $"parts[{index}]");
}
