using Scribeline.Engine.Motors;
using Scribeline.Engine.Tests.Published.Air;
using Row = System.Collections.Generic.Dictionary<string, string>;

namespace Scribeline.Engine.Tests.Published.Motors;

/// <summary>Letter classes against NFPA 1125 as tabled in motor-classes.csv, and the check values of motor-check-values.csv.</summary>
public class MotorClassTests
{
    private const double PoundForce = 4.4482216152605;

    public static TheoryData<string> Letters => [.. AirTable.Read("motor-classes.csv").Select(r => r["class"])];

    public static TheoryData<string> LetterIds => [.. Rows("letter class").Select(r => r["id"])];

    [Theory]
    [MemberData(nameof(Letters))]
    public void Class_bounds(string letter)
    {
        var row = AirTable.Read("motor-classes.csv").Single(r => r["class"] == letter);
        var motorClass = Assert.Single(MotorClass.All, c => c.Letter == letter);
        Assert.Equal(row.Number("lower_exclusive_Ns"), motorClass.Above);
        Assert.Equal(row.Number("upper_inclusive_Ns"), motorClass.To);
        Assert.Equal(1.25 * Math.Pow(2, row.Number("k")), motorClass.To);
        Assert.Equal(row.Number("upper_lbfs"), motorClass.To / PoundForce, 0.0051);
        Assert.Equal(letter, MotorClass.Of(motorClass.To)!.Letter);

        // The range as published begins at the smallest impulse of the class, at its printed digits.
        var range = row["published_range_Ns"].Split('-').Select(s => double.Parse(s, System.Globalization.CultureInfo.InvariantCulture)).ToArray();
        Assert.Equal(letter, MotorClass.Of(range[0])!.Letter);
        Assert.Equal(letter, MotorClass.Of(range[1])!.Letter);
        Assert.NotEmpty(motorClass.Source);
    }

    [Theory]
    [MemberData(nameof(LetterIds))]
    public void Letter_of_an_impulse(string id)
    {
        var row = Rows("letter class").Single(r => r["id"] == id);
        Assert.Equal(row["expected"], MotorClass.Of(Impulse(row["input"]))!.Letter);
    }

    // V14: 14 CFR 101.22(b) prints 9,208 lbf s for 40 960 N s; V15: 14 CFR 1.1 prints 200,000 lbf s for 889 600 N s.
    [Fact]
    public void Upper_bound_of_O_in_pound_seconds() =>
        Assert.Equal(9208.2, MotorClass.All.Single(c => c.Letter == "O").To / PoundForce, 0.1);

    [Fact] // V16
    public void Share_of_the_class() => Assert.Equal(48.4, 100 * MotorClass.Of(1900)!.Share(1900), 0.1);

    [Fact] // V17
    public void Burn_time_from_the_designation() => Assert.Equal(3.17, MotorDesignation.NominalBurnTime(1900, 600), 0.01);

    [Fact] // V18, V19: the class of the summed impulse
    public void Clusters_and_stages_count_together()
    {
        Assert.Equal("J", MotorClass.Of(3 * 280)!.Letter);
        Assert.Equal("L", MotorClass.Of(2000 + 1000)!.Letter);
    }

    [Fact]
    public void Nothing_outside_the_table()
    {
        Assert.Null(MotorClass.Of(0));
        Assert.Null(MotorClass.Of(0.3125));
        Assert.Null(MotorClass.Of(1_310_721));
    }

    private static IEnumerable<Row> Rows(string topic) => AirTable.Read("motor-check-values.csv").Where(r => r["topic"] == topic);

    private static double Impulse(string input) =>
        double.Parse(input.Split(' ')[2], System.Globalization.CultureInfo.InvariantCulture);
}
