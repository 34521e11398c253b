using System.Diagnostics;

namespace Scribeline.App.Tests;

/// <summary>The program run as a person would, as a process of its own.</summary>
/// <param name="Code">Exit code.</param>
/// <param name="Output">Standard output.</param>
/// <param name="Error">Standard error.</param>
internal sealed record Run(int Code, string Output, string Error)
{
    /// <summary>Folder of the examples as they are copied beside the tests: without what a person has logged with them.</summary>
    public static string Examples { get; } = Path.Combine(AppContext.BaseDirectory, "examples");

    /// <summary>Names of the examples.</summary>
    public static IReadOnlyList<string> ExampleNames { get; } =
        [.. Directory.GetFiles(Examples, "rocket.yaml", SearchOption.AllDirectories).Select(f => Path.GetFileName(Path.GetDirectoryName(f)!)).Order(StringComparer.Ordinal)];

    /// <summary>Runs the program where the examples are in a folder of that name.</summary>
    public static Run Of(params string[] typed) => In(AppContext.BaseDirectory, typed);

    /// <summary>Runs the program in a folder.</summary>
    public static Run In(string folder, params string[] typed)
    {
        var start = new ProcessStartInfo(Path.Combine(AppContext.BaseDirectory, OperatingSystem.IsWindows() ? "scribeline.exe" : "scribeline"), typed)
        {
            WorkingDirectory = folder,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            StandardOutputEncoding = System.Text.Encoding.UTF8,
            StandardErrorEncoding = System.Text.Encoding.UTF8,
        };
        using var process = Process.Start(start)!;
        var error = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return new Run(process.ExitCode, output, error.GetAwaiter().GetResult());
    }
}
