using System.Collections.Concurrent;
using System.Reflection;
using Scribeline.Engine.Design;
using Scribeline.Engine.Quantities;

namespace Scribeline.Store;

/// <summary>What a record of the design may hold: the one description that reading, schema and reference share.</summary>
internal sealed class RecordShape
{
    private static readonly ConcurrentDictionary<Type, RecordShape> Known = [];

    private RecordShape(Type type)
    {
        Type = type;
        InOrder = type.GetCustomAttribute<InOrderAttribute>() is not null;
        Kinds = type.GetCustomAttribute<KindsAttribute>(inherit: false);
        Keys = [.. Lineage(type).SelectMany(t => t.GetProperties(BindingFlags.Public | BindingFlags.Instance | BindingFlags.DeclaredOnly))
            .Select(p => (Property: p, Key: p.GetCustomAttribute<KeyAttribute>()))
            .Where(p => p.Key is not null)
            .Select(p => new KeyShape(p.Property, p.Key!))];
    }

    /// <summary>The record.</summary>
    internal Type Type { get; }

    /// <summary>Whether it is typed as a list of its values.</summary>
    internal bool InOrder { get; }

    /// <summary>Its kinds, where it has some.</summary>
    internal KindsAttribute? Kinds { get; }

    /// <summary>Its keys in order, those shared by all kinds first.</summary>
    internal IReadOnlyList<KeyShape> Keys { get; }

    internal static RecordShape Of(Type type) => Known.GetOrAdd(type, t => new RecordShape(t));

    /// <summary>The word for a kind.</summary>
    internal static string KindWord(Type kind) => kind.GetCustomAttribute<WordAttribute>()!.Word;

    /// <summary>The words of an enumeration, in order, with their values.</summary>
    internal static IReadOnlyList<(string Word, object Value)> Words(Type enumeration) =>
        [.. enumeration.GetFields(BindingFlags.Public | BindingFlags.Static)
            .Select(f => (f.GetCustomAttribute<WordAttribute>()?.Word ?? PlainWords.Of(f.Name), f.GetValue(null)!))];

    private static IEnumerable<Type> Lineage(Type type) => type.BaseType is { } above && above != typeof(object) ? Lineage(above).Append(type) : [type];
}

/// <summary>One key of a record.</summary>
internal sealed class KeyShape
{
    internal KeyShape(PropertyInfo property, KeyAttribute key)
    {
        (Property, Key, Word) = (property, key, key.Name ?? PlainWords.Of(property.Name));
        var type = Nullable.GetUnderlyingType(property.PropertyType) ?? property.PropertyType;
        Many = type.IsGenericType && type.GetGenericTypeDefinition() == typeof(ValueList<>);
        Value = new(Many ? type.GetGenericArguments()[0] : type);
    }

    internal PropertyInfo Property { get; }

    internal KeyAttribute Key { get; }

    /// <summary>As typed.</summary>
    internal string Word { get; }

    /// <summary>Whether it may hold several values.</summary>
    internal bool Many { get; }

    /// <summary>What it holds, or each of several.</summary>
    internal ValueShape Value { get; }
}
