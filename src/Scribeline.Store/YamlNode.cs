using YamlDotNet.Core;

namespace Scribeline.Store;

/// <summary>A node of a file as typed, with its place.</summary>
/// <param name="Start">Where it begins.</param>
/// <param name="End">Just after its end.</param>
internal abstract record YamlNode(Mark Start, Mark End);

/// <summary>A word, a number or a text.</summary>
/// <param name="Value">Without quotes.</param>
/// <param name="Quoted">Whether it was in quotes or a block.</param>
/// <param name="Start">Where it begins.</param>
/// <param name="End">Just after its end.</param>
internal sealed record YamlText(string Value, bool Quoted, Mark Start, Mark End) : YamlNode(Start, End)
{
    /// <summary>Whether nothing was typed.</summary>
    internal bool Empty => !Quoted && Value is "" or "~" or "null";
}

/// <summary>A list.</summary>
/// <param name="Items">In order.</param>
/// <param name="Flow">Whether it is typed in brackets.</param>
/// <param name="Start">Where it begins.</param>
/// <param name="End">Just after its end.</param>
internal sealed record YamlList(List<YamlNode> Items, bool Flow, Mark Start, Mark End) : YamlNode(Start, End);

/// <summary>Keys with their values, in order, duplicates kept.</summary>
/// <param name="Entries">In the order typed.</param>
/// <param name="Flow">Whether it is typed in braces.</param>
/// <param name="Start">Where it begins.</param>
/// <param name="End">Just after its end.</param>
internal sealed record YamlMap(List<(YamlText Key, YamlNode Value)> Entries, bool Flow, Mark Start, Mark End) : YamlNode(Start, End)
{
    /// <summary>The value of a key; null if it is not there.</summary>
    internal YamlNode? this[string key] => Entries.FirstOrDefault(e => e.Key.Value == key).Value;
}
