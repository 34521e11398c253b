using Scribeline.Engine.Quantities;
using Scribeline.Store;
using Scribeline.Store.Logbooks;

namespace Scribeline.App.Commands;

/// <summary>Writes a design file for a command, and keeps the revision; what it replaces is one too.</summary>
internal static class DesignSaving
{
    /// <summary>Writes it.</summary>
    /// <param name="book">The design's logbook.</param>
    /// <param name="path">The design file.</param>
    /// <param name="text">All of its new text.</param>
    /// <param name="words">Why, in words.</param>
    /// <param name="now">The time it is.</param>
    /// <param name="problems">Takes why it was not written, or not kept.</param>
    public static void Write(Logbook book, string path, string text, string words, DateTimeOffset now, List<Problem> problems)
    {
        var before = DesignFile.TextOf(path).Text;
        try
        {
            SafeWriting.Write(path, text);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            problems.Add(new("", $"{Path.GetFileName(path)} cannot be written: {failure.Message.TrimEnd('.')}.", "Change the permissions of its folder, and do it again."));
            return;
        }

        if (before is not null) Keep(before, Revision.Replaced);
        Keep(text, words);

        void Keep(string body, string why)
        {
            if (book.Save(body, DesignFile.ReadText(body, path).Kept, why, now).Problem is { } problem) problems.Add(problem);
        }
    }
}
