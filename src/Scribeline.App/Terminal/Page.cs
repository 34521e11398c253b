using Spectre.Console;
using Spectre.Console.Rendering;

namespace Scribeline.App.Terminal;

/// <summary>Where a command writes: a width, colour or none, and nothing else of the machine.</summary>
internal sealed class Page
{
    /// <summary>Width of everything that does not go to a person's own terminal.</summary>
    public const int PlainWidth = 80;

    private readonly IAnsiConsole console;

    /// <param name="to">What is written to.</param>
    /// <param name="width">Columns.</param>
    /// <param name="colour">Whether colour and bold may be used.</param>
    public Page(TextWriter to, int width = PlainWidth, bool colour = false)
    {
        Width = width;
        console = AnsiConsole.Create(new AnsiConsoleSettings
        {
            Ansi = colour ? AnsiSupport.Yes : AnsiSupport.No,
            ColorSystem = colour ? ColorSystemSupport.Standard : ColorSystemSupport.NoColors,
            Interactive = InteractionSupport.No,
            Out = new AnsiConsoleOutput(new TrimmedWriter(to)),
            Enrichment = new ProfileEnrichment { UseDefaultEnrichers = false },
        });
        console.Profile.Width = width;
        console.Profile.Capabilities.Unicode = true;
    }

    /// <summary>Columns.</summary>
    public int Width { get; }

    /// <summary>Quiet text: ids, bases, sources.</summary>
    public static Style Quiet { get; } = new(Color.Grey);

    /// <summary>Text that stands out: questions and values.</summary>
    public static Style Bold { get; } = new(decoration: Decoration.Bold);

    /// <summary>Writes something made of lines.</summary>
    public void Write(IRenderable what) => console.Write(what);

    /// <summary>Writes a paragraph, wrapped, every line indented.</summary>
    public void Paragraph(string text, int indent = 0, Style? style = null, string hanging = "")
    {
        var grid = new Grid { Expand = false };
        grid.AddColumn(new GridColumn { Padding = new Padding(indent, 0, 0, 0), NoWrap = true, Width = hanging.Length });
        grid.AddColumn(new GridColumn { Padding = new Padding(0, 0, 0, 0), Width = Width - indent - hanging.Length });
        grid.AddRow(new Text(hanging, style), new Text(text, style));
        Write(grid);
    }

    /// <summary>An empty line.</summary>
    public void Gap() => console.WriteLine();
}
