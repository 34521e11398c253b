using System.Globalization;
using System.Text;

namespace Scribeline.Drawing.Sheets;

/// <summary>A line of the list of bookmarks.</summary>
/// <param name="Title">As listed.</param>
/// <param name="Destination">A named destination of the document.</param>
/// <param name="Depth">0 for a chapter, 1 beneath it.</param>
internal sealed record OutlineEntry(string Title, string Destination, int Depth);

/// <summary>
/// Bookmarks, which the canvas library cannot write, added the way the format provides for: as an update after the end of the file (ISO 32000-1,
/// 7.5.6 and 12.3.3). The catalogue is written anew with the outline in it; everything before stays as it was.
/// </summary>
internal static class PdfOutline
{
    /// <summary>The file with bookmarks.</summary>
    /// <param name="pdf">A whole file with a classic cross-reference table.</param>
    /// <param name="entries">In order of the pages.</param>
    public static byte[] AddTo(byte[] pdf, IReadOnlyList<OutlineEntry> entries)
    {
        if (entries.Count == 0) return pdf;
        entries = Nested(entries);
        var text = Encoding.Latin1.GetString(pdf);
        var table = int.Parse(After(text, "startxref", text.LastIndexOf("startxref", StringComparison.Ordinal)).Trim().Split('\n')[0], CultureInfo.InvariantCulture);
        var trailer = After(text, "trailer", text.LastIndexOf("trailer", StringComparison.Ordinal));
        trailer = trailer[..trailer.LastIndexOf("startxref", StringComparison.Ordinal)];
        var (root, size) = (NumberOf(trailer, "/Root"), NumberOf(trailer, "/Size"));
        var catalogue = Catalogue(text, table, root);

        var written = new Writing(pdf);
        for (var i = 0; i < entries.Count; i++) written.Object(size + 1 + i, Item(entries, i, size));
        var chapters = Enumerable.Range(0, entries.Count).Where(i => entries[i].Depth == 0).ToList();
        written.Object(size, $"<</Type /Outlines /First {size + 1 + chapters[0]} 0 R /Last {size + 1 + chapters[^1]} 0 R /Count {chapters.Count}>>");
        written.Object(root, $"{catalogue.TrimEnd()[..^2]}\n/Outlines {size} 0 R\n/PageMode /UseOutlines>>");
        return written.Close(trailer, table, size + 1 + entries.Count);
    }

    // No entry may lie deeper than one beneath the entry before it.
    private static List<OutlineEntry> Nested(IReadOnlyList<OutlineEntry> entries)
    {
        List<OutlineEntry> nested = [];
        foreach (var entry in entries) nested.Add(entry with { Depth = Math.Min(entry.Depth - entries.Min(e => e.Depth), nested.Count == 0 ? 0 : nested[^1].Depth + 1) });
        return nested;
    }

    private static string Item(IReadOnlyList<OutlineEntry> entries, int i, int first)
    {
        var depth = entries[i].Depth;
        var parent = depth == 0 ? first : first + 1 + Enumerable.Range(0, i).Last(k => entries[k].Depth == depth - 1);
        var after = Enumerable.Range(i + 1, entries.Count - i - 1).TakeWhile(k => entries[k].Depth >= depth).Where(k => entries[k].Depth == depth).Take(1);
        var before = Enumerable.Range(0, i).Reverse().TakeWhile(k => entries[k].Depth >= depth).Where(k => entries[k].Depth == depth).Take(1);
        var below = Enumerable.Range(i + 1, entries.Count - i - 1).TakeWhile(k => entries[k].Depth > depth).Where(k => entries[k].Depth == depth + 1).ToList();
        var item = new StringBuilder(string.Create(CultureInfo.InvariantCulture, $"<</Title {Text(entries[i].Title)} /Parent {parent} 0 R /Dest /{entries[i].Destination}"));
        foreach (var k in before) item.Append(CultureInfo.InvariantCulture, $" /Prev {first + 1 + k} 0 R");
        foreach (var k in after) item.Append(CultureInfo.InvariantCulture, $" /Next {first + 1 + k} 0 R");
        if (below.Count > 0)
        {
            // A negative count: closed until somebody opens it.
            item.Append(CultureInfo.InvariantCulture, $" /First {first + 1 + below[0]} 0 R /Last {first + 1 + below[^1]} 0 R /Count {-below.Count}");
        }

        return item.Append(">>").ToString();
    }

    private static string Catalogue(string text, int table, int root)
    {
        // The table begins "xref", "0 n", then twenty bytes for each object.
        var rows = text.IndexOf('\n', text.IndexOf('\n', table) + 1) + 1;
        var at = int.Parse(text.AsSpan(rows + (20 * root), 10), CultureInfo.InvariantCulture);
        var start = text.IndexOf("<<", at, StringComparison.Ordinal);
        return text[start..text.IndexOf("endobj", start, StringComparison.Ordinal)];
    }

    private static int NumberOf(string dictionary, string key)
    {
        var value = After(dictionary, key, dictionary.IndexOf(key, StringComparison.Ordinal)).TrimStart();
        return int.Parse(value.AsSpan(0, value.AsSpan().IndexOfAnyExceptInRange('0', '9')), CultureInfo.InvariantCulture);
    }

    private static string After(string text, string what, int at) => at < 0
        ? throw new InvalidOperationException($"The file has no {what}.")
        : text[(at + what.Length)..];

    private static string Text(string words) => $"<FEFF{Convert.ToHexString(Encoding.BigEndianUnicode.GetBytes(words))}>";

    // Objects after the end of a file, and the table that finds them.
    private sealed class Writing
    {
        private readonly List<byte> file = [];
        private readonly SortedDictionary<int, int> places = [];

        public Writing(byte[] before)
        {
            file.AddRange(before);
            if (before[^1] != '\n') Put("\n");
        }

        public void Object(int number, string content)
        {
            places[number] = file.Count;
            Put(string.Create(CultureInfo.InvariantCulture, $"{number} 0 obj\n{content}\nendobj\n"));
        }

        public byte[] Close(string trailer, int before, int size)
        {
            var table = file.Count;
            Put("xref\n");
            foreach (var (number, place) in places) Put(string.Create(CultureInfo.InvariantCulture, $"{number} 1\n{place:0000000000} 00000 n \n"));
            var old = trailer.Trim();
            var sized = old.Replace(string.Create(CultureInfo.InvariantCulture, $"/Size {NumberOf(old, "/Size")}"), string.Create(CultureInfo.InvariantCulture, $"/Size {size}"), StringComparison.Ordinal);
            Put(string.Create(CultureInfo.InvariantCulture, $"trailer\n{sized[..^2]}\n/Prev {before}>>\nstartxref\n{table}\n%%EOF\n"));
            return [.. file];
        }

        private void Put(string text) => file.AddRange(Encoding.Latin1.GetBytes(text));
    }
}
