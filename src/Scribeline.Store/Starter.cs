namespace Scribeline.Store;

/// <summary>What a new rocket, motor, field or weather starts from: complete, with comments, and free of problems.</summary>
public static class Starter
{
    /// <summary>The text of a new design.</summary>
    /// <param name="name">Name of the rocket, one line.</param>
    public static string Text(string name) => Resource("starter").Replace("name: My rocket", $"name: {YamlWriting.Scalar(name)}", StringComparison.Ordinal);

    /// <summary>The text of a new file that a design names.</summary>
    /// <param name="key">What it holds: <c>motor</c>, <c>site</c> or <c>weather</c>.</param>
    public static string FileFor(string key) => Resource($"starter-{key}");

    private static string Resource(string name)
    {
        using var stream = typeof(Starter).Assembly.GetManifestResourceStream($"Scribeline.Store.{name}.yaml")!;
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
