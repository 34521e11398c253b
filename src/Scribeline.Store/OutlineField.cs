using Scribeline.Engine.Quantities;

namespace Scribeline.Store;

/// <summary>One value of a design that can be typed.</summary>
/// <param name="Path">Where, such as <c>parts[2].fins.root</c>.</param>
/// <param name="Word">Its key.</param>
/// <param name="Says">What it means.</param>
/// <param name="Kind">How it is typed.</param>
/// <param name="Typed">As typed, without quotes; null where it is left out.</param>
public sealed record OutlineField(string Path, string Word, string Says, OutlineKind Kind, string? Typed)
{
    /// <summary>Whether it must be typed.</summary>
    public bool Required { get; init; }

    /// <summary>Whether others refer to it by what is typed here.</summary>
    public bool Names { get; init; }

    /// <summary>Line in the file, from 1; null where it is left out.</summary>
    public int? Line { get; init; }

    /// <summary>Words it can be, or likely ones.</summary>
    public ValueList<string> Words { get; init; } = [];

    /// <summary>A value to show as an example; empty for none.</summary>
    public string Example { get; init; } = "";

    /// <summary>The same value in the other system of units; empty where there is none.</summary>
    public string Other { get; init; } = "";

    /// <summary>How it is known, where that is typed.</summary>
    public string? Known { get; init; }

    /// <summary>Path of what goes when it is taken out, where it is one of several in a list or the last value of one; null otherwise.</summary>
    public string? Leaves { get; init; }
}

/// <summary>How a value of a design is typed.</summary>
public enum OutlineKind
{
    /// <summary>Any text.</summary>
    Text,

    /// <summary>A whole number.</summary>
    Count,

    /// <summary>Yes or no.</summary>
    YesNo,

    /// <summary>One of some words.</summary>
    Word,

    /// <summary>A quantity with unit and tolerance.</summary>
    Quantity,

    /// <summary>A short text with rules of its own, such as a thread or a clock pattern.</summary>
    Phrase,
}
