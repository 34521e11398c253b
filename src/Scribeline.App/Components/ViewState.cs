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

    /// <summary>The file whose text stands beside; empty for the design's own.</summary>
    public string TextFile { get; private set; } = "";

    /// <summary>Whether the rocket is drawn cut open.</summary>
    public bool CutAway { get; private set; } = true;

    /// <summary>Whether the drawing is shown where there is no room for it always.</summary>
    public bool ShowsRocket { get; private set; }

    /// <summary>Whether the things and their quantities are shown where there is no room for them always.</summary>
    public bool ShowsThings { get; private set; }

    /// <summary>Whether the flight in time stands above the questions.</summary>
    public bool Watches { get; private set; }

    /// <summary>Name of the failure whose flight is watched; null for the flight as planned.</summary>
    public string? Watched { get; private set; }

    /// <summary>How often a flight was asked for from elsewhere on the page, so that the page can go to it.</summary>
    public int Called { get; private set; }

    /// <summary>Line of the text to go to; null for none.</summary>
    public int? Line { get; set; }

    public void ShowInch(bool inch) => Do(() => Inch = inch);

    public void Pick(string? path) => Do(() => (Picked, ShowsThings) = (path, ShowsThings || path is not null));

    public void ShowRocket(bool shows) => Do(() => ShowsRocket = shows);

    public void ShowThings(bool shows) => Do(() => ShowsThings = shows);

    public void ShowText(bool shows) => Do(() => ShowsText = shows);

    /// <summary>Puts the flight in time away, or shows it.</summary>
    public void Watch(bool watches) => Do(() => Watches = watches);

    /// <summary>Chooses the flight to watch.</summary>
    /// <param name="failure">Name of the failure; null for the flight as planned.</param>
    public void Choose(string? failure) => Do(() => Watched = failure);

    /// <summary>Chooses the flight to watch and goes there.</summary>
    /// <param name="failure">Name of the failure; null for the flight as planned.</param>
    public void Call(string? failure) => Do(() => (Watches, Watched, Called) = (true, failure, Called + 1));

    public void Cut(bool away) => Do(() => CutAway = away);

    /// <summary>Shows the text of a file; empty for the design's own.</summary>
    public void Read(string file) => Do(() => (ShowsText, TextFile) = (true, file));

    /// <summary>Shows a line of a text.</summary>
    public void GoTo(int line, string file = "") => Do(() => (ShowsText, TextFile, Line) = (true, file, line));

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
