using Scribeline.Tests;

namespace Scribeline.App.Tests;

/// <summary>A folder of its own for a test, gone afterwards.</summary>
internal sealed class ScratchFolder : IDisposable
{
    /// <summary>The folder.</summary>
    public string Path { get; } = Directory.CreateTempSubdirectory("scribeline-").FullName;

    /// <summary>A folder with a copy of every example and of what they name, without their logbooks.</summary>
    public static ScratchFolder WithExamples()
    {
        var scratch = new ScratchFolder();
        ExampleCopies.Into(scratch.Path);
        return scratch;
    }

    /// <summary>A file or folder in it.</summary>
    public string At(string name) => System.IO.Path.Combine(Path, name);

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
