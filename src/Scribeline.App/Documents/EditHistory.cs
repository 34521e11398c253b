namespace Scribeline.App.Documents;

/// <summary>Everything that was done to a text: to undo and redo without end, and to fit in a change made to an earlier version.</summary>
internal sealed class EditHistory
{
    private readonly List<TextEdit> happened = [];
    private readonly Stack<Step> done = new();
    private readonly Stack<TextEdit> undone = new();

    /// <summary>Number of changes so far, undoing included; the number of the text's version.</summary>
    public int Version => happened.Count;

    /// <summary>Whether there is something to undo.</summary>
    public bool CanUndo => done.Count > 0;

    /// <summary>Whether there is something to redo.</summary>
    public bool CanRedo => undone.Count > 0;

    /// <summary>Notes a change. Changes one after another with the same key, such as letters typed into one field, are undone together.</summary>
    /// <param name="edit">What changed.</param>
    /// <param name="before">The text before it.</param>
    /// <param name="key">What belongs together; null keeps it apart.</param>
    public void Did(TextEdit edit, string before, string? key)
    {
        if (edit.IsNothing) return;
        happened.Add(edit);
        undone.Clear();
        if (key is not null && done.TryPeek(out var last) && last.Key == key)
        {
            done.Pop();
            edit = TextEdit.Between(last.Edit.Inverse.In(before), edit.In(before));
            if (edit.IsNothing) return;
        }

        done.Push(new(edit, key));
    }

    /// <summary>The text without the last change.</summary>
    public string Undo(string text)
    {
        if (!done.TryPop(out var last)) return text;
        undone.Push(last.Edit);
        happened.Add(last.Edit.Inverse);
        return last.Edit.Inverse.In(text);
    }

    /// <summary>The text with the change that was undone last.</summary>
    public string Redo(string text)
    {
        if (!undone.TryPop(out var edit)) return text;
        done.Push(new(edit, null));
        happened.Add(edit);
        return edit.In(text);
    }

    /// <summary>A change made to an earlier version as it must be made now; null where what happened since touches the same letters.</summary>
    public TextEdit? Fit(TextEdit edit, int version)
    {
        TextEdit? now = edit;
        for (var i = version; i < happened.Count && now is not null; i++) now = now.After(happened[i]);
        return now;
    }

    /// <summary>The text of an earlier version.</summary>
    public string TextOf(int version, string now)
    {
        for (var i = happened.Count - 1; i >= version; i--) now = happened[i].Inverse.In(now);
        return now;
    }

    private sealed record Step(TextEdit Edit, string? Key);
}
