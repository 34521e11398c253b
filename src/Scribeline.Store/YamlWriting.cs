using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace Scribeline.Store;

/// <summary>Writes single values as YAML.</summary>
internal static class YamlWriting
{
    /// <summary>A text so that it reads back the same, in quotes only where they are needed.</summary>
    internal static string Scalar(string text)
    {
        var line = text.ReplaceLineEndings(" ").Trim();
        return ReadsBack(line) ? line : $"\"{line.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal)}\"";
    }

    // Inside braces is the strictest place; what reads back there reads back everywhere.
    private static bool ReadsBack(string line)
    {
        if (line.Length == 0 || line is "~" or "null" || line[0] is '"' or '\'') return false;
        try
        {
            var parser = new Parser(new StringReader($"{{a: {line}, b: c}}"));
            while (parser.MoveNext() && parser.Current is not MappingStart)
            {
            }

            return parser.MoveNext() && parser.Current is Scalar { Value: "a" }
                && parser.MoveNext() && parser.Current is Scalar value && value.Value == line && value.Anchor.IsEmpty && value.Tag.IsEmpty
                && parser.MoveNext() && parser.Current is Scalar { Value: "b" }
                && parser.MoveNext() && parser.Current is Scalar { Value: "c" };
        }
        catch (YamlException)
        {
            return false;
        }
    }
}
