namespace Scribeline.Tests;

/// <summary>
/// Compares what people see with what was approved. After a wanted change, run the tests once with SCRIBELINE_APPROVE=1 and read the
/// difference before committing it.
/// </summary>
internal static class Approved
{
    /// <summary>Root of the repository.</summary>
    public static string Root { get; } = FindRoot();

    /// <summary>Fails if the text differs from the approved file.</summary>
    /// <param name="text">What is seen now.</param>
    /// <param name="file">Approved file, from the root.</param>
    public static void Check(string text, string file)
    {
        var path = Path.Combine(Root, file);
        if (Environment.GetEnvironmentVariable("SCRIBELINE_APPROVE") == "1")
        {
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            File.WriteAllText(path, text);
        }

        Xunit.Assert.True(File.Exists(path), $"{file} is not there: run the tests once with SCRIBELINE_APPROVE=1, and read it");
        Xunit.Assert.Equal(File.ReadAllText(path), text);
    }

    private static string FindRoot()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "Scribeline.slnx"))) return folder.FullName;
        }

        throw new InvalidOperationException("the tests run outside the repository");
    }
}
