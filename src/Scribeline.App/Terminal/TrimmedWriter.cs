using System.Text;

namespace Scribeline.App.Terminal;

/// <summary>Leaves out the blanks at the ends of lines with which tables are filled.</summary>
internal sealed class TrimmedWriter(TextWriter to) : TextWriter
{
    private int blanks;

    public override Encoding Encoding => to.Encoding;

    public override void Write(char value)
    {
        switch (value)
        {
            case ' ':
                blanks++;
                return;
            case '\r':
                return;
            case '\n':
                blanks = 0;
                break;
            default:
                for (; blanks > 0; blanks--) to.Write(' ');
                break;
        }

        to.Write(value);
    }

    public override void Flush() => to.Flush();
}
