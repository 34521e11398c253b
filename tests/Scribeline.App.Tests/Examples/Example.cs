using Scribeline.Engine.Design;
using Scribeline.Engine.Questions;
using Scribeline.Store;

namespace Scribeline.App.Tests.Examples;

/// <summary>The designs under examples/, read from the copies beside the tests.</summary>
public static class Example
{
    public static TheoryData<string> Names => new(Directory.GetDirectories(Run.Examples).Where(d => File.Exists(Path.Combine(d, "rocket.yaml"))).Select(d => Path.GetFileName(d)!).Order());

    /// <summary>Those without faults planted in them.</summary>
    public static TheoryData<string> Sound => new(Names.Select(n => n.Data).Where(n => n != "corn-crake"));

    public static Studies Studies(string name)
    {
        var reading = DesignFile.Read(Path.Combine(Run.Examples, name));
        Assert.Empty(reading.Problems);
        var studies = Engine.Questions.Studies.Of(reading.Design!);
        Assert.Empty(studies.Problems);
        return studies;
    }

    /// <summary>As typed, its files read.</summary>
    public static RocketDesign Design(string name) => DesignFile.Read(Path.Combine(Run.Examples, name)).Design!;

    public static Study Nominal(string name) => Studies(name).Nominal!;
}
