using System.Collections;
using System.Runtime.CompilerServices;

namespace Scribeline.Engine.Quantities;

/// <summary>An immutable list compared by its elements, so that records holding lists keep value equality.</summary>
/// <typeparam name="T">Element type; its own equality decides.</typeparam>
[CollectionBuilder(typeof(ValueList), nameof(ValueList.Of))]
public sealed class ValueList<T> : IReadOnlyList<T>, IEquatable<ValueList<T>>
{
    private readonly T[] items;

    internal ValueList(T[] items) => this.items = items;

    /// <summary>The list without elements.</summary>
    public static ValueList<T> Empty { get; } = new([]);

    /// <inheritdoc/>
    public int Count => items.Length;

    /// <inheritdoc/>
    public T this[int index] => items[index];

    /// <summary>The elements as a span.</summary>
    public ReadOnlySpan<T> Span => items;

    /// <inheritdoc/>
    public bool Equals(ValueList<T>? other) =>
        ReferenceEquals(this, other) || (other is not null && items.AsSpan().SequenceEqual(other.items, EqualityComparer<T>.Default));

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as ValueList<T>);

    /// <inheritdoc/>
    public override int GetHashCode()
    {
        HashCode hash = default;
        foreach (var item in items) hash.Add(item);
        return hash.ToHashCode();
    }

    /// <inheritdoc/>
    public IEnumerator<T> GetEnumerator() => ((IEnumerable<T>)items).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => items.GetEnumerator();

    /// <inheritdoc/>
    public override string ToString() => $"[{string.Join(", ", items)}]";
}

/// <summary>Makes <see cref="ValueList{T}"/> values.</summary>
public static class ValueList
{
    /// <summary>A list of the given elements (copied).</summary>
    public static ValueList<T> Of<T>(ReadOnlySpan<T> items) => items.IsEmpty ? ValueList<T>.Empty : new(items.ToArray());

    /// <summary>A list of the elements of a sequence.</summary>
    public static ValueList<T> ToValueList<T>(this IEnumerable<T> items) => new([.. items]);
}
