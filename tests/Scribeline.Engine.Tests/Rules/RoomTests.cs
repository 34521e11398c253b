using System.Xml.Linq;
using ArchUnitNET.Domain;
using ArchUnitNET.Loader;
using Scribeline.Engine.Questions;
using Scribeline.Tests;

namespace Scribeline.Engine.Tests.Rules;

/// <summary>The order of the house: a room uses the rooms before it, never those after it.</summary>
public class RoomTests
{
    private static readonly string[] Rooms =
    [
        "Quantities", "Numerics", "Tables", "Design", "Air", "Motors", "Airframe", "Aerodynamics", "Flight", "Separation", "Recovery", "Shop",
        "Range", "Evidence", "Resolving", "Questions",
    ];

    private static readonly Architecture House = new ArchLoader().LoadAssembly(typeof(Answer).Assembly).Build();

    [Fact]
    public void A_room_uses_only_rooms_before_it()
    {
        var uses =
            (from type in House.Types
             where RoomOf(type.FullName) >= 0
             from target in type.Dependencies.Select(d => d.Target).Distinct()
             where target is not GenericParameter && RoomOf(target.FullName) >= 0
             select (From: type.FullName, To: target.FullName)).ToList();

        // Guards the test itself: many uses of earlier rooms must have been seen.
        Assert.Contains(uses, u => RoomOf(u.To) < RoomOf(u.From));
        Assert.Empty(uses.Where(u => RoomOf(u.To) > RoomOf(u.From)).Select(u => $"{u.From} uses {u.To}"));
    }

    [Fact]
    public void Every_type_stands_in_a_room()
    {
        var homeless = typeof(Answer).Assembly.GetTypes()
            .Where(t => t.Namespace?.StartsWith("Scribeline", StringComparison.Ordinal) == true && RoomOf(t.Namespace) < 0)
            .Select(t => t.FullName);
        Assert.Empty(homeless);
    }

    [Theory]
    [InlineData("Engine")]
    [InlineData("Store", "Engine")]
    [InlineData("Drawing", "Engine")]
    [InlineData("App", "Store", "Drawing")]
    public void A_project_knows_only_those_it_should(string project, params string[] known)
    {
        var path = Path.Combine(Approved.Root, "src", $"Scribeline.{project}", $"Scribeline.{project}.csproj");
        var references = XDocument.Load(path).Descendants("ProjectReference")
            .Select(r => r.Attribute("Include")!.Value.Split('\\', '/')[^1].Replace("Scribeline.", "", StringComparison.Ordinal).Replace(".csproj", "", StringComparison.Ordinal));
        Assert.Equal(known.Order(), references.Order());
    }

    private static int RoomOf(string name)
    {
        var parts = name.Split('.');
        return parts is ["Scribeline", "Engine", var room, ..] ? Array.IndexOf(Rooms, room) : -1;
    }
}
