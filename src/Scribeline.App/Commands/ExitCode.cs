namespace Scribeline.App.Commands;

/// <summary>What a command tells the shell. docs/commands.md describes them.</summary>
internal static class ExitCode
{
    /// <summary>Every answer is clear or watch; or the command did what was asked.</summary>
    public const int Good = 0;

    /// <summary>An answer is stop, or open: what is not known may not be flown on.</summary>
    public const int NotReady = 1;

    /// <summary>What was typed, on the command line or in a file, has to be mended first.</summary>
    public const int Input = 2;

    /// <summary>The program itself failed.</summary>
    public const int Internal = 3;

    /// <summary>Ended by Ctrl-C, as shells number it.</summary>
    public const int Stopped = 130;
}
