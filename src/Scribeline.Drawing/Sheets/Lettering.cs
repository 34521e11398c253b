using System.Collections.Concurrent;
using System.Text;
using SkiaSharp;

namespace Scribeline.Drawing.Sheets;

/// <summary>A size and weight of letters, and what words take up in it.</summary>
/// <param name="Size">mm.</param>
/// <param name="SemiBold">Heavier.</param>
internal sealed record Lettering(double Size, bool SemiBold = false)
{
    private static readonly ConcurrentDictionary<(double, bool), SKFont> Fonts = new();

    /// <summary>Running text.</summary>
    public static Lettering Body { get; } = new(3.1);

    /// <summary>Running text that stands out.</summary>
    public static Lettering Strong { get; } = new(3.1, true);

    /// <summary>Sources, notes, labels.</summary>
    public static Lettering Small { get; } = new(2.55);

    /// <summary>Small, standing out.</summary>
    public static Lettering SmallStrong { get; } = new(2.55, true);

    /// <summary>Heading of a question.</summary>
    public static Lettering Heading { get; } = new(3.7, true);

    /// <summary>Heading of a chapter.</summary>
    public static Lettering Chapter { get; } = new(5.6, true);

    /// <summary>Name of the rocket.</summary>
    public static Lettering Name { get; } = new(9, true);

    /// <summary>From one line to the next, mm.</summary>
    public double Leading => Size * 1.36;

    /// <summary>Height of a capital, mm.</summary>
    public double Capital => Size * 0.698;

    /// <summary>For the canvas.</summary>
    public SKFont Font => Fonts.GetOrAdd((Size, SemiBold), k => PrintFont.Of(k.Item2 ? PrintFont.SemiBold : PrintFont.Regular, (float)k.Item1));

    /// <summary>Width of words on one line, mm.</summary>
    public double Width(string words) => Font.MeasureText(Known(words));

    /// <summary>Words with what the typeface has no letter for put as a question mark, and no line breaks or controls.</summary>
    public static string Known(string words)
    {
        if (words.All(c => c is >= ' ' and <= '~')) return words;
        var known = new StringBuilder(words.Length);
        foreach (var rune in words.EnumerateRunes())
        {
            if (Rune.IsControl(rune)) known.Append(' ');
            else if (rune.Value != 0xFEFF && rune.Value != 0x200B) known.Append(Body.Font.GetGlyph(rune.Value) != 0 ? rune.ToString() : "?");
        }

        return known.ToString();
    }

    /// <summary>Words broken into lines of a width. A word too long for a line is broken anywhere.</summary>
    /// <param name="words">To be set.</param>
    /// <param name="width">mm.</param>
    public IReadOnlyList<string> Wrap(string words, double width)
    {
        List<string> lines = [];
        var line = "";
        foreach (var word in Known(words).Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            var longer = line.Length == 0 ? word : $"{line} {word}";
            if (Width(longer) <= width)
            {
                line = longer;
                continue;
            }

            if (line.Length > 0) lines.Add(line);
            line = word;
            while (Width(line) > width && line.Length > 1)
            {
                var fits = Fitting(line, width);
                lines.Add(line[..fits]);
                line = line[fits..];
            }
        }

        if (line.Length > 0 || lines.Count == 0) lines.Add(line);
        return lines;
    }

    /// <summary>Words on one line, cut with an ellipsis where they do not fit.</summary>
    public string Cut(string words, double width)
    {
        var known = Known(words);
        if (Width(known) <= width) return known;
        while (known.Length > 1 && Width(known + "…") > width) known = known[..^1].TrimEnd();
        return known + "…";
    }

    // Breaks after a joint of the word where there is one in its last part.
    private int Fitting(string word, double width)
    {
        var fits = 1;
        while (fits < word.Length && Width(word[..(fits + 1)]) <= width) fits++;
        var joint = word.LastIndexOfAny(['/', '.', '-', '_', ',', '(', '*', '+'], fits - 1);
        if (joint > fits / 2) return joint + 1;
        return char.IsHighSurrogate(word[fits - 1]) && fits > 1 ? fits - 1 : fits;
    }
}
