using System.Diagnostics;
using System.Globalization;

namespace Scribeline.App.Terminal;

/// <summary>A bar on one line for work that takes more than a second; wiped away when done. Shown to a person at a terminal only.</summary>
/// <param name="to">Usually standard error; null where nobody watches.</param>
internal sealed class ProgressLine(TextWriter? to) : IDisposable
{
    private const int Width = 30;

    private readonly Lock gate = new();
    private readonly long began = Stopwatch.GetTimestamp();
    private string shown = "";

    /// <summary>Shows the share done.</summary>
    /// <param name="share">0 to 1; may be told from any thread and out of order.</param>
    /// <param name="elapsed">Time since the start; null to look at the clock.</param>
    public void Show(double share, TimeSpan? elapsed = null)
    {
        if (to is null || (elapsed ?? Stopwatch.GetElapsedTime(began)) < TimeSpan.FromSeconds(1)) return;
        lock (gate)
        {
            var full = (int)(Math.Clamp(share, 0, 1) * Width);
            var line = string.Create(CultureInfo.InvariantCulture, $"{new string('━', full)}{new string('─', Width - full)} {share * 100:F0} %");
            if (line == shown) return;
            shown = line;
            to.Write("\r" + line);
            to.Flush();
        }
    }

    /// <summary>Wipes the bar away.</summary>
    public void Dispose()
    {
        lock (gate)
        {
            if (shown.Length > 0) to!.Write("\r" + new string(' ', Width + 8) + "\r");
            shown = "";
        }
    }
}
