namespace Scribeline.Tests;

/// <summary>The examples and what they name, copied to where they may be changed.</summary>
internal static class ExampleCopies
{
    /// <summary>Copies them, without the logbooks that working with them leaves behind.</summary>
    /// <param name="folder">Where to.</param>
    public static void Into(string folder)
    {
        var examples = Path.Combine(Approved.Root, "examples");
        foreach (var file in Directory.EnumerateFiles(examples, "*", SearchOption.AllDirectories).Where(f => !f.Contains(".sqlite", StringComparison.Ordinal)))
        {
            var copy = Path.Combine(folder, Path.GetRelativePath(examples, file));
            Directory.CreateDirectory(Path.GetDirectoryName(copy)!);
            File.Copy(file, copy);
        }
    }
}
