using Scribeline.Engine.Quantities;
using Scribeline.Store;

namespace Scribeline.App.Documents;

/// <summary>
/// One design while it is worked on, shared by every window that shows it: its text and those of the files it names, what was done to them,
/// and its answers. The texts are the only truth; a change of a quantity is a change of a text in one place. Safe to use from several threads.
/// </summary>
public sealed partial class DesignDocument : IDisposable
{
    private readonly Lock gate = new();
    private readonly EditHistory history = new();
    private readonly LiveAnswers live;
    private DesignReading reading;
    private string saved;
    private DesignJournal journal;
    private (int Turn, OutlineMap? Outline) outlined = (-1, null);
    private int turn;

    private DesignDocument(string id, DesignReading reading, int cases, TimeSpan rest)
    {
        (Id, Path, this.reading, saved) = (id, reading.Path!, reading, reading.Text);
        Disk = new(Path);
        journal = new(Path);
        Hold();
        Unsaved = Kept();
        live = new(cases, rest, () => Changed?.Invoke());
        Ask();
    }

    /// <summary>Name in addresses.</summary>
    public string Id { get; }

    /// <summary>The design file.</summary>
    public string Path { get; private set; }

    /// <summary>Told of every change of text, answers or file, from any thread.</summary>
    public event Action? Changed;

    /// <summary>The design's own text, and what was read from it and from the files it names.</summary>
    public DesignReading Reading
    {
        get
        {
            lock (gate) return reading;
        }
    }

    /// <summary>Every value that can be typed, with what is typed now; while the text is no YAML, as it was last.</summary>
    public OutlineMap? Outline
    {
        get
        {
            lock (gate)
            {
                if (outlined.Turn != turn) outlined = (turn, DesignOutline.Of(reading.Text, NamedTexts()) ?? outlined.Outline);
                return outlined.Outline;
            }
        }
    }

    /// <summary>Number of the text's version.</summary>
    public int Version
    {
        get
        {
            lock (gate) return history.Version;
        }
    }

    /// <summary>The newest answers; those of an older version while the text has problems.</summary>
    public AnswerSheet Answers => live.Sheet;

    /// <summary>Everything wrong with the text, by line.</summary>
    public ValueList<Problem> Problems
    {
        get
        {
            lock (gate) return reading.Problems.Count > 0 ? reading.Problems : Answers.Problems.Select(reading.Place).ToValueList();
        }
    }

    /// <summary>Opens a design file, or the one in a folder; null with problems where there is no file to open.</summary>
    /// <param name="id">Name in addresses.</param>
    /// <param name="path">File or folder.</param>
    /// <param name="cases">Cases drawn from the tolerances.</param>
    /// <param name="rest">How long typing must rest before they are drawn.</param>
    public static (DesignDocument? Document, ValueList<Problem> Problems) Open(string id, string path, int cases, TimeSpan rest)
    {
        var reading = DesignFile.Read(path);
        return reading.Path is null || !File.Exists(reading.Path) || (reading.Text.Length == 0 && reading.Problems.Count > 0)
            ? (null, reading.Problems)
            : (new(id, reading, cases, rest), reading.Problems);
    }

    /// <summary>A page has shown the answers to this version.</summary>
    public void Showed(int version) => live.Showed(version);

    /// <summary>Done when the answers are up to date and unsaved work is kept; for tests.</summary>
    public Task Settled => Task.WhenAll(live.Settle(), journal.Settled);

    public void Dispose()
    {
        live.Dispose();
        journal.Dispose();
    }

    // Whatever changed, in the design's own text or in a file it names, was read anew.
    private void Became(DesignReading next)
    {
        (reading, turn, drawn) = (next, turn + 1, (-1, null));
        Hold();
        journal.Keep(reading.Text, saved, Unwritten());
        Ask();
    }

    private void Ask()
    {
        if (reading.Good) live.Ask(AsBuilt(reading.Design!), history.Version, Confirmations(), Flights);
        else live.Rest();
    }
}
