using System.Reflection;
using System.Runtime.CompilerServices;
using System.Xml.Linq;
using Scribeline.Engine.Questions;

namespace Scribeline.Engine.Tests.Rules;

/// <summary>Rules of the house that the compiler does not know.</summary>
public class SourceRuleTests
{
    private static readonly Assembly Engine = typeof(Answer).Assembly;
    private static readonly string[] PhysicsRooms = ["Air", "Motors", "Airframe", "Aerodynamics", "Flight", "Numerics"];

    [Fact]
    public void Nothing_public_can_be_set_after_it_is_made()
    {
        var settable =
            from type in Engine.GetExportedTypes()
            where !type.IsAssignableTo(typeof(Attribute))
            from property in type.GetProperties(BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly)
            where property.SetMethod is { IsPublic: true } set
                && !set.ReturnParameter.GetRequiredCustomModifiers().Contains(typeof(IsExternalInit))
            select $"{type.FullName}.{property.Name}";
        Assert.Empty(settable);
    }

    // A record writes out its properties; one that holds another of itself would never end.
    [Fact]
    public void Every_record_can_be_written_out()
    {
        var endless =
            from type in Engine.GetTypes()
            where type.GetMethod("PrintMembers", BindingFlags.Instance | BindingFlags.NonPublic | BindingFlags.DeclaredOnly) is not null
            from property in type.GetProperties(BindingFlags.Public | BindingFlags.Instance | BindingFlags.DeclaredOnly)
            where property.PropertyType == type
            select $"{type.FullName}.{property.Name}";
        Assert.Empty(endless);
    }

    [Fact]
    public void Nothing_static_changes()
    {
        var changing =
            from type in Engine.GetTypes()
            where type.GetCustomAttribute<CompilerGeneratedAttribute>() is null && type.DeclaringType?.GetCustomAttribute<CompilerGeneratedAttribute>() is null
            from field in type.GetFields(BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.DeclaredOnly)
            where !field.IsLiteral && !field.IsInitOnly && !field.Name.StartsWith('<')
            select $"{type.FullName}.{field.Name}";
        Assert.Empty(changing);
    }

    [Fact]
    public void Every_public_type_of_a_physics_room_says_what_it_is()
    {
        var documented = XDocument.Load(Path.Combine(AppContext.BaseDirectory, "Scribeline.Engine.xml"))
            .Descendants("member").Where(m => m.Element("summary")?.Value.Trim().Length > 0).Select(m => m.Attribute("name")!.Value).ToHashSet();
        var silent = Engine.GetExportedTypes()
            .Where(t => PhysicsRooms.Contains(t.Namespace!.Split('.')[^1]))
            .Select(t => "T:" + t.FullName!.Replace('+', '.'))
            .Where(name => !documented.Contains(name));
        Assert.Empty(silent);
    }

    [Fact]
    public void Every_table_names_its_source()
    {
        var tables = Engine.GetManifestResourceNames().Where(n => n.EndsWith(".csv", StringComparison.Ordinal)).ToList();
        Assert.NotEmpty(tables);
        foreach (var table in tables)
        {
            // A table from one publication names it once, above its header; others name it row by row.
            using var reader = new StreamReader(Engine.GetManifestResourceStream(table)!);
            var first = reader.ReadLine()!;
            if (first.StartsWith('#'))
            {
                Assert.True(first.Length > 20, $"{table}: the first line must name the source");
                continue;
            }

            var header = first.Split(',');
            Assert.True(header[^1] == "source", $"{table}: the last column must be the source");
            while (reader.ReadLine() is { } line)
            {
                var cells = line.Split(',', header.Length);
                Assert.True(cells.Length == header.Length && cells[^1].Trim('"', ' ').Length > 0, $"{table}: no source in: {line}");
            }
        }
    }
}
