using Scribeline.Engine.Questions;
using Spectre.Console;

namespace Scribeline.App.Terminal;

/// <summary>A verdict as word and shape, so that it is never told by colour alone.</summary>
internal static class VerdictMark
{
    /// <summary>The shape alone.</summary>
    public static string Shape(Verdict verdict) => verdict switch
    {
        Verdict.Clear => "●",
        Verdict.Watch => "▲",
        Verdict.Stop => "■",
        _ => "○",
    };

    /// <summary>The word alone.</summary>
    public static string Word(Verdict verdict) => AnswerText.Word(verdict);

    /// <summary>Shape and word.</summary>
    public static string Of(Verdict verdict) => $"{Shape(verdict)} {Word(verdict)}";

    /// <summary>How it looks where there is colour.</summary>
    public static Style Style(Verdict verdict) => verdict switch
    {
        Verdict.Clear => new Style(Color.Blue, decoration: Decoration.Bold),
        Verdict.Watch => new Style(Color.Olive, decoration: Decoration.Bold),
        Verdict.Stop => new Style(Color.Maroon, decoration: Decoration.Bold),
        _ => new Style(decoration: Decoration.Bold),
    };
}
