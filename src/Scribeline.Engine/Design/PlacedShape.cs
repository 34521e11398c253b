using System.Collections.Frozen;
using System.Reflection;
using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Design;

/// <summary>What can be typed in one kind of thing, in the order it is read: shared keys of a kind first. Found once for every kind.</summary>
internal sealed class PlacedShape
{
    private static readonly FrozenDictionary<Type, PlacedShape> All = typeof(Placed).Assembly.GetTypes()
        .Where(t => t.IsSubclassOf(typeof(Placed)) && !t.IsAbstract)
        .ToFrozenDictionary(t => t, t => new PlacedShape(t));

    private readonly PropertyInfo? name;

    private PlacedShape(Type type)
    {
        name = type.GetProperty("Name") is { } named && named.PropertyType == typeof(string) ? named : null;
        Keys = [.. type.GetProperties(BindingFlags.Public | BindingFlags.Instance)
            .Select(p => (Property: p, Key: p.GetCustomAttribute<KeyAttribute>()))
            .Where(p => p.Key is not null).Select(p => new PlacedKey(p.Property, p.Key!))];
    }

    /// <summary>Its keys.</summary>
    public IReadOnlyList<PlacedKey> Keys { get; }

    /// <summary>Shape of a kind of thing.</summary>
    /// <param name="type">A kind that can be made, of this assembly.</param>
    public static PlacedShape Of(Type type) => All[type];

    /// <summary>What its builder called it; null for a kind without names, or where none was typed.</summary>
    public string? NameOf(Placed record) => name?.GetValue(record) as string;
}

/// <summary>One key of a kind of thing.</summary>
/// <param name="property">What holds its value.</param>
/// <param name="key">How it is typed.</param>
internal sealed class PlacedKey(PropertyInfo property, KeyAttribute key)
{
    /// <summary>What holds its value.</summary>
    public PropertyInfo Property { get; } = property;

    /// <summary>Sign its value may have.</summary>
    public Sign Sign { get; } = key.Sign;

    /// <summary>As typed in the file.</summary>
    public string Word { get; } = key.Name ?? PlainWords.Of(property.Name);

    /// <summary>Kind of quantity it holds; null for anything else.</summary>
    public Type? Quantity { get; } = property.PropertyType.IsGenericType && property.PropertyType.GetGenericTypeDefinition() == typeof(Measure<>)
        ? property.PropertyType.GetGenericArguments()[0]
        : null;
}
