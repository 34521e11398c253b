namespace Scribeline.App.Documents;

/// <summary>
/// Everything that was done to the texts of a design, its own and those of the files it names: to undo and redo without end, and to fit in a
/// change made to an earlier version.
/// </summary>
internal sealed class EditHistory
{
    private readonly List<FileEdit> happened = [];
    private readonly Stack<Step> done = new();
    private readonly Stack<Step> undone = new();

    /// <summary>Number of changes so far, undoing included; the number of the texts' version.</summary>
    public int Version => happened.Count;

    /// <summary>Whether there is something to undo.</summary>
    public bool CanUndo => done.Count > 0;

    /// <summary>Whether there is something to redo.</summary>
    public bool CanRedo => undone.Count > 0;

    /// <summary>Notes a change. Changes one after another with the same key, such as letters typed into one field, are undone together.</summary>
    /// <param name="edit">What changed.</param>
    /// <param name="before">The text before it.</param>
    /// <param name="key">What belongs together; null keeps it apart.</param>
    /// <param name="file">The file; empty for the design's own.</param>
    public void Did(TextEdit edit, string before, string? key, string file = "")
    {
        if (edit.IsNothing) return;
        happened.Add(new(file, edit));
        undone.Clear();
        if (key is not null && done.TryPeek(out var last) && last.Key == key && last.Edits is [var one] && one.File == file)
        {
            done.Pop();
            edit = TextEdit.Between(one.Edit.Inverse().In(before), edit.In(before));
            if (edit.IsNothing) return;
        }

        done.Push(new([new(file, edit)], key));
    }

    /// <summary>Notes changes of several files, which are undone together.</summary>
    public void Did(IEnumerable<FileEdit> edits)
    {
        List<FileEdit> all = [.. edits.Where(e => !e.Edit.IsNothing)];
        if (all.Count == 0) return;
        happened.AddRange(all);
        undone.Clear();
        done.Push(new(all, null));
    }

    /// <summary>Takes the last change back: what must be done for it, in order.</summary>
    public IReadOnlyList<FileEdit> Undo()
    {
        if (!done.TryPop(out var last)) return [];
        undone.Push(last);
        List<FileEdit> back = [.. last.Edits.Reverse().Select(e => new FileEdit(e.File, e.Edit.Inverse()))];
        happened.AddRange(back);
        return back;
    }

    /// <summary>Does the change again that was undone last: what must be done for it, in order.</summary>
    public IReadOnlyList<FileEdit> Redo()
    {
        if (!undone.TryPop(out var step)) return [];
        done.Push(step with { Key = null });
        happened.AddRange(step.Edits);
        return step.Edits;
    }

    /// <summary>A change made to an earlier version as it must be made now; null where what happened since touches the same letters.</summary>
    public TextEdit? Fit(TextEdit edit, int version, string file = "")
    {
        TextEdit? now = edit;
        for (var i = version; i < happened.Count && now is not null; i++)
        {
            if (happened[i].File == file) now = now.After(happened[i].Edit);
        }

        return now;
    }

    /// <summary>The text of an earlier version.</summary>
    public string TextOf(int version, string now, string file = "")
    {
        for (var i = happened.Count - 1; i >= version; i--)
        {
            if (happened[i].File == file) now = happened[i].Edit.Inverse().In(now);
        }

        return now;
    }

    private sealed record Step(IReadOnlyList<FileEdit> Edits, string? Key);
}
