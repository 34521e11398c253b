namespace Scribeline.App.Components;

/// <summary>How one window looks at a design; gone with the window.</summary>
internal sealed class ViewState
{
    private readonly HashSet<string> opened = new(StringComparer.Ordinal);

    /// <summary>Told when anything here changes.</summary>
    public event Action? Changed;

    /// <summary>Whether inch and pound units are shown; null follows the design.</summary>
    public bool? Inch { get; private set; }

    /// <summary>Path of the thing whose quantities are shown; null for the list of all.</summary>
    public string? Picked { get; private set; }

    /// <summary>Whether the text of the file stands beside.</summary>
    public bool ShowsText { get; private set; }

    /// <summary>Whether the rocket is drawn cut open.</summary>
    public bool CutAway { get; private set; } = true;

    /// <summary>Line of the text to go to; null for none.</summary>
    public int? Line { get; set; }

    public void ShowInch(bool inch) => Do(() => Inch = inch);

    public void Pick(string? path) => Do(() => Picked = path);

    public void ShowText(bool shows) => Do(() => ShowsText = shows);

    public void Cut(bool away) => Do(() => CutAway = away);

    /// <summary>Shows a line of the text.</summary>
    public void GoTo(int line) => Do(() => (ShowsText, Line) = (true, line));

    /// <summary>Whether an answer is open to its working.</summary>
    public bool IsOpened(string question) => opened.Contains(question);

    /// <summary>Opens an answer, or closes it.</summary>
    public void Turn(string question) => Do(() =>
    {
        if (!opened.Remove(question)) opened.Add(question);
    });

    private void Do(Action change)
    {
        change();
        Changed?.Invoke();
    }
}
