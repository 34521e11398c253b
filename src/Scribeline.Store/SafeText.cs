using System.Text;
using Scribeline.Engine.Quantities;

namespace Scribeline.Store;

/// <summary>Reads text files that may be anything: missing, a folder, huge, binary, in another encoding.</summary>
internal static class SafeText
{
    /// <summary>Largest file read, bytes.</summary>
    internal const int Largest = 1_000_000;

    /// <summary>The text without a byte-order mark; null with a problem.</summary>
    internal static string? Read(string path, List<Problem> problems)
    {
        byte[] bytes;
        try
        {
            if (Directory.Exists(path)) return Fail(problems, $"{Name(path)} is a folder.", "Name the file itself.");
            if (!File.Exists(path)) return Fail(problems, $"There is no file {Name(path)}.", "Check the name and the folder.");
            using var file = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
            if (file.Length > Largest) return Fail(problems, $"{Name(path)} is larger than 1 MB.", "A file written by hand is far smaller; check which file this is.");
            bytes = new byte[Largest + 1];
            var length = file.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false);
            if (length > Largest) return Fail(problems, $"{Name(path)} is larger than 1 MB.", "A file written by hand is far smaller; check which file this is.");
            Array.Resize(ref bytes, length);
        }
        catch (Exception wrong) when (wrong is IOException or UnauthorizedAccessException or NotSupportedException or ArgumentException)
        {
            return Fail(problems, $"{Name(path)} cannot be opened.", "Check who may read it and whether another program holds it.");
        }

        return Decode(bytes, Name(path), problems);
    }

    /// <summary>Bytes as text; null with a problem.</summary>
    internal static string? Decode(ReadOnlySpan<byte> bytes, string name, List<Problem> problems)
    {
        if (bytes.StartsWith((ReadOnlySpan<byte>)[0xFF, 0xFE]) || bytes.StartsWith((ReadOnlySpan<byte>)[0xFE, 0xFF]))
            return Fail(problems, $"{name} is UTF-16 text.", "Save it as UTF-8.");
        if (bytes.StartsWith((ReadOnlySpan<byte>)[0xEF, 0xBB, 0xBF])) bytes = bytes[3..];
        var zero = bytes.IndexOf((byte)0);
        if (zero >= 0) return Fail(problems, $"{name} is not a text file.", "Check which file this is.");
        string text;
        try
        {
            text = new UTF8Encoding(false, throwOnInvalidBytes: true).GetString(bytes);
        }
        catch (DecoderFallbackException wrong)
        {
            var line = 1 + bytes[..Math.Clamp(wrong.Index, 0, bytes.Length)].Count((byte)'\n');
            problems.Add(new("", $"{name} is not UTF-8 text.", "Save it as UTF-8; signs such as ° and ± are often saved otherwise by old editors.", line));
            return null;
        }

        return Checked(text, name, problems);
    }

    /// <summary>The text if it holds no control characters; null with a problem otherwise.</summary>
    internal static string? Checked(string text, string name, List<Problem> problems)
    {
        if (text.Length > Largest) return Fail(problems, $"{name} is larger than 1 MB.", "A file written by hand is far smaller; check which file this is.");
        for (var i = 0; i < text.Length; i++)
        {
            if (!char.IsControl(text[i]) || text[i] is '\n' or '\r' or '\t') continue;
            var line = text.AsSpan(0, i).Count('\n') + 1;
            problems.Add(new("", $"{name} holds a control character (code {(int)text[i]}).", "Remove it; check whether this is a text file.", line, i - text.LastIndexOf('\n', i)));
            return null;
        }

        return text;
    }

    private static string? Fail(List<Problem> problems, string message, string suggestion)
    {
        problems.Add(new("", message, suggestion));
        return null;
    }

    private static string Name(string path) => System.IO.Path.GetFileName(path.TrimEnd('/', '\\')) is { Length: > 0 } name ? name : path;
}
