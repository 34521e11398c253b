using Scribeline.Engine.Quantities;
using Scribeline.Tests;

namespace Scribeline.Store.Tests;

public class OtherFilesTests
{
    private const string Head = "name: Plain 54\ndiameter: 54 mm\nlength: 32 cm\nloaded mass: 1080 g\npropellant mass: 560 g\nthrust: plain.csv\n";

    [Fact]
    public void Reads_motor_site_and_weather_beside_the_design()
    {
        using var folder = Rocket("# ground test\ntime (s), thrust (N)\n0, 0\n0.1; 0\n".Replace("0.1; 0", "0.1, 400\n1.5, 0", StringComparison.Ordinal), Head);
        var reading = DesignFile.Read(folder.Path("heron"));
        Assert.Empty(reading.Problems);
        Assert.Equal([(0.0, 0.0), (0.1, 400), (1.5, 0)], reading.Design!.Motor!.Value!.Thrust.Value!.Points.Select(p => (p.Time.Si, p.Thrust.Si)));
        Assert.Equal(1000 * 0.3048, reading.Design.Site!.Value!.Ceiling!.Si, 9);
        Assert.Equal(4, reading.Files.Count);
    }

    [Fact]
    public void Problems_of_other_files_name_file_and_line()
    {
        using var folder = Rocket("0, 0\n0.2, x\n0.1, 5\n0.1, 6, 7\n", Head.Replace("560 g", "560", StringComparison.Ordinal) + "colour: red\n");
        var problems = DesignFile.Read(folder.Path("heron")).Problems;
        Assert.Contains(problems, p => p.File == "../motors/plain.yaml" && p.Line == 5 && p.Message.Contains("does not say its unit", StringComparison.Ordinal));
        Assert.Contains(problems, p => p.File == "../motors/plain.yaml" && p.Line == 7);

        using var second = Rocket("0, 0\n0.2, x\n0.1, 5\n0.1, 6, 7\n", Head);
        problems = DesignFile.Read(second.Path("heron")).Problems;
        Assert.Contains(problems, p => p.File == "plain.csv" && p.Line == 2);
        Assert.Contains(problems, p => p.File == "plain.csv" && p.Line == 4);
    }

    [Theory]
    [InlineData("../../secret.yaml", "leads out of the folder")]
    [InlineData("/etc/passwd", "is not relative")]
    [InlineData("C:/motor.yaml", "is not relative")]
    [InlineData("..\\motors\\plain.yaml", "has backslashes")]
    [InlineData("../motors/none.yaml", "There is no file")]
    [InlineData("../motors", "is a folder")]
    public void Other_places_are_refused(string name, string why)
    {
        using var folder = Rocket("0, 0\n1, 5\n2, 0\n", Head);
        File.WriteAllText(folder.Path("heron/rocket.yaml"), PlainDesign.Text("Heron") + $"motor: '{name}'\n");
        Assert.Contains(why, Assert.Single(DesignFile.Read(folder.Path("heron")).Problems).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Links_are_not_followed()
    {
        if (OperatingSystem.IsWindows()) return;
        using var folder = Rocket("0, 0\n1, 5\n2, 0\n", Head);
        File.CreateSymbolicLink(folder.Path("heron/link.yaml"), "/etc/passwd");
        File.WriteAllText(folder.Path("heron/rocket.yaml"), PlainDesign.Text("Heron") + "motor: link.yaml\n");
        Assert.Contains("leads through a link", Assert.Single(DesignFile.Read(folder.Path("heron")).Problems).Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("time (ms), thrust (N)\n0, 0\n1, 5\n", 1, "in 'ms'")]
    [InlineData("time, thrust (lbf)\n0, 0\n1, 5\n", 1, "in 'lbf'")]
    [InlineData("0, 0\n1, -5\n2, 0\n", 2, "is negative")]
    [InlineData("0, 0\n1, NaN\n2, 0\n", 2, "not a number")]
    [InlineData("0, 0\n1, 5\n1, 6\n", 3, "must rise")]
    [InlineData("0 0 0\n", 1, "values stand in one line")]
    [InlineData("time (ms) thrust (N)\n0 0\n1 5\n", 1, "in 'ms'")]
    public void Thrust_tables_are_read_closely(string text, int line, string why)
    {
        List<Problem> problems = [];
        Assert.Null(ThrustCsv.Read(text, "motor.thrust", problems));
        Assert.Contains(problems, p => p.Line == line && p.Message.Contains(why, StringComparison.Ordinal));
    }

    [Fact]
    public void Columns_may_be_parted_by_spaces() =>
        Assert.Equal([(0.0, 0.0), (0.1, 520), (2, 0)], ThrustCsv.Read("time (s) thrust (N)\n0 0\n0.1   520\n2 0\n", "motor.thrust", [])!.Points.Select(p => (p.Time.Si, p.Thrust.Si)));

    [Fact]
    public void A_text_at_hand_counts_in_place_of_the_file()
    {
        using var folder = Rocket("0, 0\n1, 5\n2, 0\n", Head);
        var (design, motor) = (folder.Path("heron/rocket.yaml"), folder.Path("motors/plain.yaml"));
        Dictionary<string, string> held = new() { [motor] = Head.Replace("54 mm", "38 mm", StringComparison.Ordinal) };
        var reading = DesignFile.ReadText(File.ReadAllText(design), design, held);
        Assert.Equal(0.038, reading.Design!.Motor!.Value!.Diameter.Si, 9);
        Assert.Equal(["motor", "motor.thrust", "site"], reading.Named.Select(n => n.Key));
        Assert.Equal(motor, reading.Named[0].Path);
        Assert.Equal(0.054, DesignFile.Read(folder.Path("heron")).Design!.Motor!.Value!.Diameter.Si, 9);
    }

    // A contradiction within a file is told where it stands.
    [Fact]
    public void Contradictions_in_other_files_name_file_and_line()
    {
        using var folder = Rocket("0, 0\n1, 5\n2, 0\n", Head.Replace("560 g", "1560 g", StringComparison.Ordinal));
        var problem = Assert.Single(DesignFile.Read(folder.Path("heron")).Problems);
        Assert.Equal(("../motors/plain.yaml", 5), (problem.File, problem.Line));
    }

    private static TemporaryFolder Rocket(string table, string head)
    {
        TemporaryFolder folder = new();
        foreach (var name in (string[])["heron", "motors"]) Directory.CreateDirectory(folder.Path(name));
        File.WriteAllText(folder.Path("heron/rocket.yaml"), PlainDesign.Text("Heron") + "motor: ../motors/plain.yaml\nsite: field.yaml\n");
        File.WriteAllText(folder.Path("heron/field.yaml"), "name: Salt flat\nelevation: 4000 ft\nceiling: 1000 ft\n");
        File.WriteAllText(folder.Path("motors/plain.yaml"), head);
        File.WriteAllText(folder.Path("motors/plain.csv"), table);
        return folder;
    }
}
