using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Design;

/// <summary>Marks a property that a builder may type. Its key is the property's name in lower-case words unless named here.</summary>
/// <param name="says">What it means, for the reference and the schema.</param>
[AttributeUsage(AttributeTargets.Property)]
public sealed class KeyAttribute(string says) : Attribute
{
    /// <summary>What it means.</summary>
    public string Says { get; } = says;

    /// <summary>The key as typed, where it is not the property's name.</summary>
    public string? Name { get; set; }

    /// <summary>Whether it must be typed.</summary>
    public bool Required { get; set; }

    /// <summary>Whether a measure must be above 0 (<see cref="Sign.Above"/>), 0 or more, or may be negative.</summary>
    public Sign Sign { get; set; } = Sign.Any;

    /// <summary>How a measure is known unless typed otherwise.</summary>
    public Basis Known { get; set; }

    /// <summary>A value to show as an example, where the kind of value does not give a good one.</summary>
    public string? Example { get; set; }

    /// <summary>A name that others refer to.</summary>
    public bool Names { get; set; }
}

/// <summary>Which signs a number may have.</summary>
public enum Sign
{
    /// <summary>Any.</summary>
    Any,

    /// <summary>0 or more.</summary>
    NotBelow,

    /// <summary>More than 0.</summary>
    Above,
}

/// <summary>The word for an enumeration's value or a kind of record, where it is not the name in lower-case words.</summary>
/// <param name="word">As typed.</param>
/// <param name="says">What it means; may be empty.</param>
[AttributeUsage(AttributeTargets.Field | AttributeTargets.Class)]
public sealed class WordAttribute(string word, string says = "") : Attribute
{
    /// <summary>As typed.</summary>
    public string Word { get; } = word;

    /// <summary>What it means.</summary>
    public string Says { get; } = says;
}

/// <summary>The kinds a record may be, chosen by the word under one key.</summary>
/// <param name="key">The key, such as <c>kind</c>.</param>
/// <param name="kinds">Derived records, each with a <see cref="WordAttribute"/>.</param>
[AttributeUsage(AttributeTargets.Class)]
public sealed class KindsAttribute(string key, params Type[] kinds) : Attribute
{
    /// <summary>The key, such as <c>kind</c>.</summary>
    public string Key { get; } = key;

    /// <summary>Derived records.</summary>
    public IReadOnlyList<Type> Kinds { get; } = kinds;
}

/// <summary>A record typed as a list of its values in order, such as a corner <c>[0 in, 0 in]</c>.</summary>
[AttributeUsage(AttributeTargets.Class)]
public sealed class InOrderAttribute : Attribute;
