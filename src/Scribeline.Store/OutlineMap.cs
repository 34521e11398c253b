using Scribeline.Engine.Quantities;

namespace Scribeline.Store;

/// <summary>A group of values of a design, such as a part or its fins.</summary>
/// <param name="Path">Where; empty for the whole design.</param>
/// <param name="Title">Its own name, or what it is.</param>
/// <param name="Kind">What it is, such as tube.</param>
/// <param name="Says">What it means.</param>
/// <param name="Fields">Its own values, those left out included.</param>
/// <param name="Maps">Groups within.</param>
/// <param name="Additions">Groups that can be added within.</param>
public sealed record OutlineMap(
    string Path, string Title, string Kind, string Says, ValueList<OutlineField> Fields, ValueList<OutlineMap> Maps, ValueList<OutlineAddition> Additions)
{
    /// <summary>Whether it is one of several in a list.</summary>
    public bool OneOfMany => Path.EndsWith(']');

    /// <summary>Its key in the map around it, without number.</summary>
    public string Word => Path[(Path.LastIndexOf('.') + 1)..].Split('[')[0];

    /// <summary>This group and all within.</summary>
    public IEnumerable<OutlineMap> All => Maps.SelectMany(m => m.All).Prepend(this);

    /// <summary>The group at a path; null where there is none.</summary>
    public OutlineMap? Find(string path) => All.FirstOrDefault(m => m.Path == path);
}

/// <summary>A group that can be added to a design.</summary>
/// <param name="Path">Where: the list it joins, or the key it is held under.</param>
/// <param name="Word">Its key.</param>
/// <param name="Says">What it means.</param>
/// <param name="Many">Whether it joins a list.</param>
/// <param name="Kinds">Kinds to choose from; empty where there is one.</param>
/// <param name="Needs">Keys it must have, each with an example.</param>
public sealed record OutlineAddition(string Path, string Word, string Says, bool Many, ValueList<string> Kinds, ValueList<OutlineNeed> Needs);

/// <summary>A key that something added must have.</summary>
/// <param name="Kind">Kind that needs it; empty for all.</param>
/// <param name="Word">The key; empty where the value stands alone in a list.</param>
/// <param name="Example">A value.</param>
public sealed record OutlineNeed(string Kind, string Word, string Example);
