using System.Text.RegularExpressions;

namespace Scribeline.Store;

/// <summary>Where a caret stands in a text that may not be whole.</summary>
/// <param name="From">Where the word at the caret begins.</param>
/// <param name="Key">Key whose value is typed; null where a key is.</param>
/// <param name="Holders">Keys that hold the place, outermost first.</param>
/// <param name="Siblings">Keys already there beside it.</param>
/// <param name="Kind">Word typed for the kind of the map; empty for none.</param>
/// <param name="InComment">Whether it is a comment.</param>
internal sealed partial record TextPlace(int From, string? Key, IReadOnlyList<string> Holders, IReadOnlySet<string> Siblings, string Kind, bool InComment)
{
    internal static TextPlace Of(string text, int at)
    {
        var start = at == 0 ? 0 : text.LastIndexOf('\n', at - 1) + 1;
        var line = text[start..at];
        if (Comment().IsMatch(line)) return new(at, null, [], new HashSet<string>(), "", true);

        var (braces, inner) = Braces(line);
        var lead = Lead(line);
        var pairs = (braces.Count == 0 ? line[lead..] : line[inner..]).TrimStart();
        var from = at - pairs.Length;
        string? key = null;
        if (braces.Count > 0)
        {
            var last = pairs.LastIndexOf(',') + 1;
            from += last + (pairs[last..].Length - pairs[last..].TrimStart().Length);
        }

        if (Pair().Match(text[from..at]) is { Success: true } pair)
        {
            key = pair.Groups["key"].Value.Trim();
            from += pair.Length;
        }

        List<string> holders = Above(text, start, lead);
        HashSet<string> siblings;
        var kind = "";
        if (braces.Count > 0)
        {
            // A list item in braces has no key of its own.
            holders.AddRange(braces.Where(b => b.Length > 0));
            siblings = [.. Keys().Matches(text[(start + inner)..NextLine(text, at)]).Select(m => m.Groups["key"].Value.Trim())];
            kind = KindIn(text[(start + inner)..NextLine(text, at)]);
        }
        else
        {
            var block = Block(text, start, lead).ToList();
            siblings = [.. block.Select(l => LineKey(l.Text)).OfType<string>()];
            kind = block.Select(l => KindIn(l.Text)).FirstOrDefault(k => k.Length > 0) ?? "";
        }

        return new(from, key, holders, siblings, kind, false);
    }

    // Keys that open the braces the caret stands in, and where the innermost begins.
    private static (List<string> Keys, int Inner) Braces(string line)
    {
        Stack<(string Key, int At)> open = new();
        for (var i = 0; i < line.Length; i++)
        {
            if (line[i] is '{') open.Push((Before().Match(line[..i]) is { Success: true } key ? key.Groups["key"].Value.Trim() : "", i + 1));
            else if (line[i] is '}' && open.Count > 0) open.Pop();
        }

        return ([.. open.Reverse().Select(o => o.Key)], open.Count > 0 ? open.Peek().At : 0);
    }

    // Keys of the lines above that stand further left, nearest last.
    private static List<string> Above(string text, int start, int lead)
    {
        List<string> keys = [];
        var limit = lead;
        for (var end = start - 1; end > 0 && limit > 0;)
        {
            var begin = text.LastIndexOf('\n', end - 1) + 1;
            var line = text[begin..end];
            var own = Lead(line);
            if (line.Trim().Length > 0 && !line.TrimStart().StartsWith('#') && own < limit)
            {
                if (LineKey(line) is { } key) keys.Add(key);
                limit = own;
            }

            end = begin - 1;
        }

        keys.Reverse();
        return keys;
    }

    // Lines of the same map: as far left, up to the dash that begins its item and down to the next.
    private static IEnumerable<(string Text, int Lead)> Block(string text, int start, int lead)
    {
        var own = Line(text, start);
        yield return (own, lead);
        if (!IsItem(own))
        {
            for (var end = start - 1; end > 0;)
            {
                var begin = text.LastIndexOf('\n', end - 1) + 1;
                var line = text[begin..end];
                end = begin - 1;
                if (line.Trim().Length == 0) continue;
                if (Lead(line) < lead) yield break;
                if (Lead(line) > lead) continue;
                yield return (line, lead);
                if (IsItem(line)) break;
            }
        }

        for (var next = NextLine(text, start) + 1; next < text.Length; next = NextLine(text, next) + 1)
        {
            var line = Line(text, next);
            if (line.Trim().Length == 0) continue;
            if (Lead(line) < lead || (Lead(line) == lead && IsItem(line))) yield break;
            if (Lead(line) == lead) yield return (line, lead);
        }
    }

    private static bool IsItem(string line) => line.TrimStart().StartsWith("- ", StringComparison.Ordinal);

    // Column of the first key of a line, past the dash of a list.
    private static int Lead(string line)
    {
        var at = 0;
        while (at < line.Length && (line[at] == ' ' || (line[at] == '-' && at + 1 < line.Length && line[at + 1] == ' '))) at++;
        return at;
    }

    private static string? LineKey(string line) => Pair().Match(line[Lead(line)..] + " ") is { Success: true } pair ? pair.Groups["key"].Value.Trim() : null;

    private static string KindIn(string text) => Kinds().Match(text) is { Success: true } kind ? kind.Groups["kind"].Value.Trim() : "";

    private static string Line(string text, int start) => text[start..NextLine(text, start)];

    private static int NextLine(string text, int from)
    {
        var end = text.IndexOf('\n', from);
        return end < 0 ? text.Length : end;
    }

    [GeneratedRegex("^(?<key>[A-Za-z][A-Za-z ]*):[ \t]+")]
    private static partial Regex Pair();

    [GeneratedRegex("(?:^|[{,\\[]|- )[ ]*(?<key>[A-Za-z][A-Za-z ]*):[ ]*\\[?[ ]*(?:\\{[^{}]*\\},[ ]*)*$")]
    private static partial Regex Before();

    [GeneratedRegex("(?:^|[{,])[ ]*(?<key>[A-Za-z][A-Za-z ]*):")]
    private static partial Regex Keys();

    [GeneratedRegex("(?:^|[{, -])kind:[ ]*(?<kind>[a-z ]+)")]
    private static partial Regex Kinds();

    [GeneratedRegex("(^|\\s)#")]
    private static partial Regex Comment();
}
