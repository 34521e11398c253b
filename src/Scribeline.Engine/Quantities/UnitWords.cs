namespace Scribeline.Engine.Quantities;

/// <summary>What to say where the unit or the number is not as it should be.</summary>
internal static class UnitWords
{
    /// <summary>A few ways to write a number as this kind of quantity.</summary>
    internal static string Such(Dimension dimension, string number)
    {
        var units = dimension.Units.Where(u => u.Word.Length > 0).Take(4).Prepend(dimension.Inch).Prepend(dimension.Metric).Distinct();
        var ways = units.Select(u => $"{number}{u.Gap}{u.Word}").ToList();
        if (dimension.Plain) return $"Write a plain number such as 0.75, or a share such as 75 %.";
        return ways.Count == 1 ? $"Write {ways[0]}." : $"Write {string.Join(", ", ways[..^1])} or {ways[^1]}.";
    }

    internal static TextProblem Bare(string number, int position, Dimension dimension) =>
        new(position, $"{number} does not say its unit; {dimension.Name} belongs here.", Such(dimension, number));

    /// <summary>Says what stands where a number should; null if a number may begin here.</summary>
    internal static TextProblem? NoNumber(string text, int position, Dimension dimension)
    {
        if (position < text.Length && NumberReader.Starts(text[position]) && !(text[position] == '.' && text[position..].Skip(1).FirstOrDefault() is not (>= '0' and <= '9'))) return null;
        var rest = text[position..].Trim();
        if (rest.StartsWith('#')) return new(position, $"{rest} names a screw or a drill; {dimension.Name} belongs here.", Such(dimension, "5"));
        return rest.TrimStart('.').ToUpperInvariant() is "NAN" or "INF" or "INFINITY"
            ? new(position, $"{rest} is not a number a thing can have.", Such(dimension, "5"))
            : new(position, $"'{rest}' does not begin with a number; {dimension.Name} belongs here.", Such(dimension, "5"));
    }

    /// <summary>A word that is no unit of this dimension.</summary>
    internal static TextProblem Unknown(string text, int position, Dimension dimension, string number)
    {
        var word = Word(text, position);
        if (word.Length == 0) return Left(text, position, dimension, number);
        if (dimension.Name == "a force" && word is "lb" or "lbs")
            return new(position, $"{word} is a mass; a force belongs here.", $"Write {number} lbf for pounds of force.");
        if (Dimension.All.FirstOrDefault(d => d.Find(word) is not null) is { } other)
            return new(position, $"{number} {word} is {other.Name}; {dimension.Name} belongs here.", Such(dimension, number));
        var near = dimension.Words.Where(w => w.Length > 1).Select(w => (Word: w, Away: Spelling.Distance(w, word))).OrderBy(w => w.Away).FirstOrDefault();
        return near.Word is not null && near.Away <= Math.Max(1, word.Length / 3)
            ? new(position, $"'{word}' is not a unit.", $"Did you mean {number} {near.Word}?")
            : new(position, $"'{word}' is not a unit of {dimension.Name[(dimension.Name.IndexOf(' ', StringComparison.Ordinal) + 1)..]}.", Such(dimension, number));
    }

    /// <summary>Something after the end of the quantity.</summary>
    internal static TextProblem Left(string text, int position, Dimension dimension, string number)
    {
        var rest = text[position..].Trim();
        return new(position, $"'{rest}' does not belong here.", dimension.Plain ? "Write one plain number." : $"Write one quantity, such as {number.Trim().Split(' ')[0]} {dimension.Metric.Word} or {number.Trim().Split(' ')[0]} {dimension.Metric.Word} ± 2 %.");
    }

    private static string Word(string text, int position)
    {
        var end = position;
        while (end < text.Length && text[end] is not (' ' or '±' or '(' or ')' or ',' or ';')) end++;
        return text[position..end];
    }
}
