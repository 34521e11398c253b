namespace Scribeline.Tests;

/// <summary>A design without problems, motor, field or weather, for tests that change it.</summary>
internal static class PlainDesign
{
    /// <summary>Its text.</summary>
    /// <param name="name">Name of the rocket, one line without quotes.</param>
    public static string Text(string name) => File.ReadAllText(Path.Combine(Approved.Root, "tests", "Shared", "plain.yaml")).Replace("name: My rocket", $"name: {name}", StringComparison.Ordinal);
}
