using Scribeline.Engine.Design;
using Scribeline.Engine.Quantities;

namespace Scribeline.Store;

/// <summary>What can be typed at a place of a design's text.</summary>
/// <param name="From">Letters before what it replaces.</param>
/// <param name="Offers">What can stand there, in the order of the reference; empty where nothing is known.</param>
public sealed record Completion(int From, ValueList<CompletionOffer> Offers);

/// <summary>One thing that can be typed.</summary>
/// <param name="Word">The key or value.</param>
/// <param name="Insert">What is put into the text.</param>
/// <param name="Says">What it means; empty for values.</param>
public sealed record CompletionOffer(string Word, string Insert, string Says);

/// <summary>
/// Completes the text of a design while it is typed: from indentation and brackets alone, because a text being typed is seldom whole. Keys and
/// words come from the same records that read the file.
/// </summary>
public static class DesignCompletion
{
    private const int Most = 40;

    /// <summary>What can be typed where the caret stands.</summary>
    /// <param name="text">The text, whole or not.</param>
    /// <param name="at">Letters before the caret.</param>
    /// <param name="key">What the text holds: empty for a design; <c>motor</c>, <c>site</c> or <c>weather</c> for a file of that sort.</param>
    public static Completion At(string text, int at, string key = "")
    {
        at = Math.Clamp(at, 0, text.Length);
        var place = TextPlace.Of(text, at);
        if (place.InComment || RecordAt(place, key) is not { } shape) return new(at, []);
        var typed = text[place.From..at];
        var offers = place.Key is { } word ? Values(shape, word) : Keys(shape, place);
        return new(place.From, offers.Where(o => o.Word.StartsWith(typed.Trim(), StringComparison.OrdinalIgnoreCase) && o.Word != typed).Take(Most).ToValueList());
    }

    private static IEnumerable<CompletionOffer> Keys(RecordShape shape, TextPlace place)
    {
        if (shape.Kinds is { } kinds)
        {
            yield return new(kinds.Key, $"{kinds.Key}: ", "Which kind it is; what else it holds follows from it.");
            foreach (var key in kinds.Kinds.SelectMany(k => RecordShape.Of(k).Keys).DistinctBy(k => k.Word).Where(k => !place.Siblings.Contains(k.Word))) yield return new(key.Word, $"{key.Word}: ", key.Key.Says);
            yield break;
        }

        foreach (var key in shape.Keys.Where(k => !place.Siblings.Contains(k.Word))) yield return new(key.Word, $"{key.Word}: ", key.Key.Says);
    }

    private static IEnumerable<CompletionOffer> Values(RecordShape shape, string word)
    {
        if (shape.Kinds is { } kinds && word == kinds.Key) return kinds.Kinds.Select(RecordShape.KindWord).Select(w => new CompletionOffer(w, w, ""));
        if (KeyOf(shape, word) is not { } key) return [];
        return key.Value.Form is ValueForm.Word or ValueForm.YesNo or ValueForm.Readable ? key.Value.Examples.Select(e => new CompletionOffer(e, YamlWriting.Scalar(e), "")) : [];
    }

    // Down from what the file holds along the keys that hold the place.
    private static RecordShape? RecordAt(TextPlace place, string file)
    {
        var shape = RecordShape.Of(typeof(RocketDesign));
        if (file.Length > 0)
        {
            if (KeyOf(shape, file)?.Value.Held is not { Form: ValueForm.Record } held) return null;
            shape = RecordShape.Of(held.Type);
        }

        foreach (var word in place.Holders)
        {
            if (KeyOf(shape, word) is not { } key) return null;
            var value = key.Value.Form == ValueForm.File ? key.Value.Held! : key.Value;
            if (value.Form != ValueForm.Record && !value.RecordToo) return null;
            shape = RecordShape.Of(value.Type);
        }

        return shape.Kinds is { } kinds && kinds.Kinds.FirstOrDefault(k => RecordShape.KindWord(k) == place.Kind) is { } chosen && place.Key != kinds.Key ? RecordShape.Of(chosen) : shape;
    }

    private static KeyShape? KeyOf(RecordShape shape, string word) =>
        shape.Keys.FirstOrDefault(k => k.Word == word) ?? shape.Kinds?.Kinds.SelectMany(k => RecordShape.Of(k).Keys).FirstOrDefault(k => k.Word == word);
}
