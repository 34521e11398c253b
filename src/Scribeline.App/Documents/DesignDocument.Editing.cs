using Scribeline.Engine.Quantities;
using Scribeline.Store;

namespace Scribeline.App.Documents;

/// <content>How the texts of a design change: one value, by a function, as typed in the text, and back again.</content>
public sealed partial class DesignDocument
{
    /// <summary>Whether there is something to undo.</summary>
    public bool CanUndo
    {
        get
        {
            lock (gate) return history.CanUndo;
        }
    }

    /// <summary>Whether there is something to redo.</summary>
    public bool CanRedo
    {
        get
        {
            lock (gate) return history.CanRedo;
        }
    }

    /// <summary>Changes one value, in the design or in the file it names. Refused, with what to type instead, where the value cannot be read; the text stays as it was then.</summary>
    /// <param name="path">Path of the value, such as <c>parts[2].length</c>.</param>
    /// <param name="value">As typed; empty removes an optional value.</param>
    /// <param name="key">What is undone together with it; null for nothing.</param>
    public Problem? Change(string path, string value, string? key = null) =>
        Change((text, at) => value.Trim().Length == 0 ? DesignText.Remove(text, at) : DesignText.Replace(text, at, value), path, key);

    /// <summary>Changes the design's own text by a function. Refused where it says so, or where the design could be read before and no longer.</summary>
    /// <param name="change">From the text as it is now.</param>
    /// <param name="path">Where, to find the problem that tells why not.</param>
    /// <param name="key">What is undone together with it; null for nothing.</param>
    public Problem? Change(Func<string, TextChange> change, string path, string? key = null) => ChangeIn("", change, path, key);

    /// <summary>Changes the text that holds a path by a function: the design's own, or that of the file it names.</summary>
    /// <param name="change">From the text as it is now, and the path in that text.</param>
    /// <param name="path">Where.</param>
    /// <param name="key">What is undone together with it; null for nothing.</param>
    public Problem? Change(Func<string, string, TextChange> change, string path, string? key = null)
    {
        var (file, at) = Holder(path);
        return file is null ? new(path, "The file that holds this cannot be read.", "Choose another, or begin one.") : ChangeIn(file, text => change(text, at), path, key);
    }

    /// <summary>Takes over a whole text that was typed from an earlier version, without losing what happened since.</summary>
    /// <param name="text">As typed.</param>
    /// <param name="version">The version it was typed from.</param>
    /// <param name="key">What is undone together with it; null for nothing.</param>
    /// <param name="file">The file it is of; empty for the design's own.</param>
    /// <returns>False where both changed the same letters: the text stays as it was.</returns>
    public bool Type(string text, int version, string? key = null, string file = "")
    {
        lock (gate)
        {
            if (TextOf(file) is not { } now) return false;
            var edit = TextEdit.Between(history.TextOf(version, now, file), text.ReplaceLineEndings(NewLine(now)));
            if (history.Fit(edit, version, file) is not { } fits) return false;
            Take(file, fits.In(now), key);
        }

        Changed?.Invoke();
        return true;
    }

    /// <summary>Takes back the last change.</summary>
    public void Undo() => Step(history.Undo);

    /// <summary>Does again what was taken back last.</summary>
    public void Redo() => Step(history.Redo);

    /// <summary>Puts another text in place of one, such as that of an earlier revision, as a change that can be undone.</summary>
    /// <param name="text">All of it.</param>
    /// <param name="file">The file it is of; empty for the design's own.</param>
    public void Become(string text, string file = "")
    {
        lock (gate) Take(file, text, null);
        Changed?.Invoke();
    }

    private Problem? ChangeIn(string file, Func<string, TextChange> change, string path, string? key)
    {
        lock (gate)
        {
            if (TextOf(file) is not { } now) return new(path, "That file is no longer open.", "");
            var made = change(now);
            if (made.Problem is { } refused) return refused with { At = path };
            var next = Read(file, made.Text);
            if (next.Design is null && Blame(next, path) is { } problem) return problem;
            Take(file, made.Text, key, next);
        }

        Changed?.Invoke();
        return null;
    }

    private void Step(Func<IReadOnlyList<FileEdit>> step)
    {
        lock (gate)
        {
            var edits = step();
            if (edits.Count == 0) return;
            var own = reading.Text;
            foreach (var (file, edit) in edits)
            {
                if (file.Length == 0) own = edit.In(own);
                else if (others.TryGetValue(file, out var held)) held.Text = edit.In(held.Text);
            }

            Became(Read("", own));
        }

        Changed?.Invoke();
    }

    private void Take(string file, string text, string? key, DesignReading? next = null)
    {
        next ??= Read(file, text);
        var before = file.Length == 0 ? reading.Text : others[file].Text;
        history.Did(TextEdit.Between(before, text), before, key, file);
        if (file.Length > 0) others[file].Text = text;
        Became(next);
    }

    // What keeps the design from being read: at the changed value if it is to blame.
    private static Problem? Blame(DesignReading next, string path) =>
        next.Problems.FirstOrDefault(p => p.At == path || p.At == path + ".value")
        ?? next.Problems.FirstOrDefault(p => p.At.StartsWith(path, StringComparison.Ordinal));

    private static string NewLine(string text) => text.Contains("\r\n", StringComparison.Ordinal) ? "\r\n" : "\n";
}
