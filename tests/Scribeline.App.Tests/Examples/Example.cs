using Scribeline.Engine.Questions;
using Scribeline.Store;

namespace Scribeline.App.Tests.Examples;

/// <summary>The designs under examples/, read from the copies beside the tests.</summary>
public static class Example
{
    private static readonly string Folder = Path.Combine(AppContext.BaseDirectory, "examples");

    public static TheoryData<string> Names => new(Directory.GetDirectories(Folder).Where(d => File.Exists(Path.Combine(d, "rocket.yaml"))).Select(d => Path.GetFileName(d)!).Order());

    /// <summary>Those without faults planted in them.</summary>
    public static TheoryData<string> Sound => new(Names.Select(n => n.Data).Where(n => n != "corn-crake"));

    public static Studies Studies(string name)
    {
        var reading = DesignFile.Read(Path.Combine(Folder, name));
        Assert.Empty(reading.Problems);
        var studies = Engine.Questions.Studies.Of(reading.Design!);
        Assert.Empty(studies.Problems);
        return studies;
    }

    public static Study Nominal(string name) => Studies(name).Nominal!;
}
