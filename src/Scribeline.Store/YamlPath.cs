using System.Globalization;

namespace Scribeline.Store;

/// <summary>Finds nodes by path, such as <c>parts[2].fins.root</c>. Keys may hold dots: the longest key that fits is taken.</summary>
internal static class YamlPath
{
    /// <summary>A node with what holds it.</summary>
    /// <param name="Node">The node; null if only its holder is there.</param>
    /// <param name="Holder">Map or list around it; null for the root.</param>
    /// <param name="Rest">What of the path is not there: a key to add, or empty.</param>
    internal sealed record Found(YamlNode? Node, YamlNode? Holder, string Rest);

    /// <summary>The node at a path, or how far the path leads.</summary>
    internal static Found Find(YamlNode root, string path)
    {
        YamlNode? holder = null;
        var (node, rest) = (root, path);
        while (rest.Length > 0)
        {
            if (rest[0] == '[')
            {
                var close = rest.IndexOf(']', StringComparison.Ordinal);
                if (close < 0 || !int.TryParse(rest.AsSpan(1, close - 1), NumberStyles.None, CultureInfo.InvariantCulture, out var index)) return new(null, null, rest);
                if (node is not YamlList list || index >= list.Items.Count) return new(null, null, rest);
                (holder, node, rest) = (node, list.Items[index], rest[(close + 1)..]);
            }
            else
            {
                var key = rest[0] == '.' ? rest[1..] : rest;
                if (node is not YamlMap map) return new(null, null, rest);
                var entry = map.Entries.Where(e => Leads(key, e.Key.Value)).OrderByDescending(e => e.Key.Value.Length).FirstOrDefault();
                if (entry.Key is null) return new(null, map, key);
                (holder, node, rest) = (map, entry.Value, key[entry.Key.Value.Length..]);
            }
        }

        return new(node, holder, "");
    }

    /// <summary>End of what was typed: block maps and lists end with their last value, not with the comments after it.</summary>
    internal static int End(YamlNode node) => node switch
    {
        YamlMap { Flow: false, Entries: [.., var last] } => End(last.Value),
        YamlList { Flow: false, Items: [.., var last] } => End(last),

        // The parser's end of what stands in brackets lies before the closing one.
        YamlMap { Flow: true } or YamlList { Flow: true } => (int)node.End.Index + 1,
        _ => (int)node.End.Index,
    };

    private static bool Leads(string path, string key) =>
        path.StartsWith(key, StringComparison.Ordinal) && (path.Length == key.Length || path[key.Length] is '.' or '[');
}
