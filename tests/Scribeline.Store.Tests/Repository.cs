namespace Scribeline.Store.Tests;

/// <summary>Finds the repository, for tests that hold committed files to what the program makes.</summary>
internal static class Repository
{
    internal static string Folder
    {
        get
        {
            var folder = AppContext.BaseDirectory;
            while (!File.Exists(Path.Combine(folder, "Scribeline.slnx"))) folder = Path.GetDirectoryName(folder) ?? throw new DirectoryNotFoundException("Not in the repository.");
            return folder;
        }
    }
}

/// <summary>A folder that is gone after the test.</summary>
internal sealed class TemporaryFolder : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("scribeline-").FullName;

    internal string Path(string name) => System.IO.Path.Combine(folder, name);

    public void Dispose() => Directory.Delete(folder, recursive: true);
}
