using System.Text;

namespace Scribeline.App.Terminal;

/// <summary>Where a command's words go, and who reads them.</summary>
/// <param name="Output">For results.</param>
/// <param name="Error">For what went wrong, and for progress.</param>
/// <param name="Width">Columns of the output.</param>
/// <param name="Colour">Whether the output may be coloured.</param>
/// <param name="Watched">Whether a person watches <paramref name="Error"/>.</param>
internal sealed record Screen(TextWriter Output, TextWriter Error, int Width, bool Colour, bool Watched)
{
    private const int Narrowest = 40;
    private const int Widest = 100;

    /// <summary>The process's own: 80 columns without colour unless a person looks at it; no colour where NO_COLOR asks for none.</summary>
    public static Screen OfProcess()
    {
        // A stream's own encoding may lack the signs we use; a mark at the start of the text would be read as a letter by other programs.
        Console.OutputEncoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
        var person = !Console.IsOutputRedirected;
        var colour = person
            && string.IsNullOrEmpty(Environment.GetEnvironmentVariable("NO_COLOR"))
            && Environment.GetEnvironmentVariable("TERM") != "dumb";
        return new Screen(Console.Out, Console.Error, person ? WindowWidth() : Page.PlainWidth, colour, !Console.IsErrorRedirected);
    }

    /// <summary>A page on the output.</summary>
    public Page OpenPage() => new(Output, Width, Colour);

    /// <summary>A bar on the error stream, if a person watches.</summary>
    public ProgressLine Progress() => new(Watched ? Error : null);

    private static int WindowWidth()
    {
        try
        {
            return Console.WindowWidth is > 0 and var width ? Math.Clamp(width, Narrowest, Widest) : Page.PlainWidth;
        }
        catch (IOException)
        {
            return Page.PlainWidth;
        }
    }
}
