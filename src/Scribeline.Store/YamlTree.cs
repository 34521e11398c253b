using Scribeline.Engine.Quantities;
using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace Scribeline.Store;

/// <summary>
/// Turns text into nodes from the event parser, which holds no tree: depth, number of nodes, anchors, aliases and tags are checked
/// before anything is built.
/// </summary>
internal sealed class YamlTree
{
    /// <summary>Deepest nesting, far beyond what any design file needs.</summary>
    internal const int Deepest = 16;

    /// <summary>Most nodes in one file.</summary>
    internal const int MostNodes = 20_000;

    private readonly Parser parser;
    private readonly List<Problem> problems;
    private int nodes;

    private YamlTree(string text, List<Problem> problems) => (parser, this.problems) = (new(new Scanner(new StringReader(text), skipComments: true)), problems);

    /// <summary>The root of the only document; null if there is none or it cannot be read.</summary>
    internal static YamlNode? Read(string text, List<Problem> problems)
    {
        var hints = YamlHints.In(text);
        problems.AddRange(hints.Where(h => h.Certain).Select(h => h.Problem));
        try
        {
            return new YamlTree(text, problems).Document();
        }
        catch (YamlException wrong)
        {
            // What the parser stumbles over is often not where the slip is: a hint about the slip says it better.
            var near = hints.Where(h => h.Problem.Line <= wrong.Start.Line + 1).ToList();
            problems.AddRange(near.Where(h => !h.Certain).Select(h => h.Problem));
            if (near.Count == 0) problems.Add(YamlHints.Explain(wrong));
            return null;
        }
        catch (StopReading)
        {
            return null;
        }
        catch (Exception lost) when (lost is InvalidOperationException or ArgumentException or IndexOutOfRangeException or NullReferenceException)
        {
            // The parser itself gives up in a few tangles of brackets and keys instead of naming the place.
            problems.Add(new("", "This cannot be read as YAML.", "Check the colons, quotes and brackets."));
            return null;
        }
    }

    private YamlNode? Document()
    {
        Advance();
        while (parser.Current is StreamStart or DocumentStart) Advance();
        if (parser.Current is StreamEnd or DocumentEnd) return null;
        var root = Node(0);
        if (parser.Current is DocumentEnd) Advance();
        if (parser.Current is DocumentStart second)
            problems.Add(At(second.Start, "A second document begins here.", "Keep one document in a file: remove the line of three dashes."));
        return root;
    }

    private void Advance()
    {
        if (!parser.MoveNext()) return;
        if (parser.Current is AnchorAlias alias)
            Stop(alias.Start, $"*{alias.Value} would be replaced by something written elsewhere; such references are not used here.", "Write the value itself, in quotes if it begins with a star.");
        if (parser.Current is not NodeEvent node) return;
        if (++nodes > MostNodes) Stop(node.Start, $"The file holds more than {MostNodes} values.", "A design file is far smaller; check what was copied into it.");
        if (!node.Anchor.IsEmpty)
            Stop(node.Start, $"&{node.Anchor.Value} would name a value to repeat elsewhere; such names are not used here.", "Remove it, or put quotes round a text that begins with &.");
        if (!node.Tag.IsEmpty)
            Stop(node.Start, "An exclamation mark here gives a type to a value; such tags are not used here.", "Remove it, or put quotes round a text that begins with an exclamation mark.");
    }

    private YamlNode Node(int depth)
    {
        if (parser.Current is not NodeEvent node) throw new InvalidOperationException("The parser has lost its place.");
        if (depth > Deepest) Stop(node.Start, $"The file is nested more than {Deepest} levels deep.", "Check the brackets and the indentation.");
        switch (node)
        {
            case Scalar scalar:
                Advance();
                return new YamlText(scalar.Value, scalar.Style != ScalarStyle.Plain, scalar.Start, scalar.End);
            case SequenceStart list:
                List<YamlNode> items = [];
                Advance();
                while (parser.Current is not SequenceEnd) items.Add(Node(depth + 1));
                return Close(end => new YamlList(items, list.Style == SequenceStyle.Flow, list.Start, end));
            default:
                var map = (MappingStart)node;
                List<(YamlText, YamlNode)> entries = [];
                Advance();
                while (parser.Current is not MappingEnd)
                {
                    var key = Node(depth + 1);
                    var value = Node(depth + 1);
                    if (key is YamlText text) entries.Add((text, value));
                    else problems.Add(At(key.Start, "A key is one word or a few, not a list or a map.", "Write key: value."));
                }

                return Close(end => new YamlMap(entries, map.Style == MappingStyle.Flow, map.Start, end));
        }
    }

    private YamlNode Close(Func<Mark, YamlNode> node)
    {
        var end = parser.Current!.End;
        Advance();
        return node(end);
    }

    private void Stop(Mark mark, string message, string suggestion)
    {
        problems.Add(At(mark, message, suggestion));
        throw new StopReading();
    }

    private static Problem At(Mark mark, string message, string suggestion) => new("", message, suggestion, (int)mark.Line, (int)mark.Column);

    /// <summary>Leaves the recursion once reading on makes no sense; the problem has been noted.</summary>
    private sealed class StopReading : Exception;
}
