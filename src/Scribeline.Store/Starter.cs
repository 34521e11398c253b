namespace Scribeline.Store;

/// <summary>The design a new rocket starts from: complete, with comments, and free of problems.</summary>
public static class Starter
{
    /// <summary>The text of a new design.</summary>
    /// <param name="name">Name of the rocket, one line.</param>
    public static string Text(string name)
    {
        using var stream = typeof(Starter).Assembly.GetManifestResourceStream("Scribeline.Store.starter.yaml")!;
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd().Replace("name: My rocket", $"name: {YamlWriting.Scalar(name)}", StringComparison.Ordinal);
    }
}
