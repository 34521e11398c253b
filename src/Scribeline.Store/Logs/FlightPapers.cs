using Scribeline.Engine.Quantities;
using Scribeline.Store.Logbooks;

namespace Scribeline.Store.Logs;

/// <summary>The design as it flew, with every file it names: what a prediction of that day needs, whatever changes later.</summary>
public static class FlightPapers
{
    /// <summary>Gathers them.</summary>
    /// <param name="path">The design file.</param>
    /// <param name="text">Its text as it flew.</param>
    /// <param name="weather">Weather file of the day; null for the one the design names.</param>
    /// <param name="motor">Motor file of the day; null for the one the design names.</param>
    /// <param name="problems">Takes what is wrong with them.</param>
    public static ValueList<KeptFile> Gather(string path, string text, string? weather, string? motor, List<Problem> problems)
    {
        foreach (var (key, file) in ((string Key, string? File)[])[("weather", weather), ("motor", motor)])
        {
            if (file is null) continue;
            var change = DesignText.Replace(text, key, DesignReading.NameOf(file, path));
            if (change.Problem is { } problem) problems.Add(new("", $"The {key} of the day cannot take the place of the design's: {problem.Message}", $"Write it into a file, name that in the design, and add the flight again."));
            text = change.Text;
        }

        if (problems.Count > 0) return [];
        var reading = DesignFile.ReadText(text, path);
        problems.AddRange(reading.Problems);
        return problems.Count > 0 ? [] : [new(Path.GetFileName(path), text), .. reading.Kept];
    }

    /// <summary>The design of such papers; what is wrong with it is told by its reading.</summary>
    /// <param name="path">The design file as it is now: where it lies.</param>
    /// <param name="files">The papers.</param>
    public static DesignReading Read(string path, ValueList<KeptFile> files)
    {
        var folder = Path.GetDirectoryName(Path.GetFullPath(path))!;
        return DesignFile.ReadText(files[0].Text, path, files.Skip(1).ToDictionary(f => Path.GetFullPath(Path.Combine(folder, f.Name)), f => f.Text));
    }
}
