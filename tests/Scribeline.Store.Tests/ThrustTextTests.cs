using Scribeline.Engine.Quantities;

namespace Scribeline.Store.Tests;

public class ThrustTextTests
{
    private const string Columns = "# ground test\ntime s,thrust N\n0,0\n0.1, 400\n1.5,0\n";
    private const string Motor = "name: A   # as printed\nthrust: [[0 s, 0 N], [0.1 s, 400 N], [1.5 s, 0 N]]\n";

    [Fact]
    public void Points_are_told_as_typed_with_their_lines()
    {
        Assert.Equal([new("0", "0", 3), new("0.1", "400", 4), new("1.5", "0", 5)], ThrustText.Rows(Columns, null));
        Assert.Equal([new("0 s", "0 N", 2), new("0.1 s", "400 N", 2), new("1.5 s", "0 N", 2)], ThrustText.Rows(Motor, "thrust"));
        Assert.Empty(ThrustText.Rows("thrust: a.csv\n", "thrust"));
    }

    [Theory]
    [InlineData("420", "0.1, 420")]
    [InlineData("420 N", "0.1, 420")]
    [InlineData("100 lbf", "0.1, 444.822162")] // 1 lbf = 4.4482216152605 N, exactly: NIST SP 811
    public void One_value_of_columns_is_replaced_and_the_rest_stays(string typed, string line) =>
        Assert.Equal(Columns.Replace("0.1, 400", line, StringComparison.Ordinal), ThrustText.Replace(Columns, null, 1, true, typed).Text);

    [Theory]
    [InlineData("420", "420 N")]
    [InlineData("100 lbf", "100 lbf")]
    public void One_value_of_a_list_keeps_its_unit(string typed, string written) =>
        Assert.Equal(Motor.Replace("400 N", written, StringComparison.Ordinal), ThrustText.Replace(Motor, "thrust", 1, true, typed).Text);

    [Theory]
    [InlineData("4oo")]
    [InlineData("-4")]
    [InlineData("4 kg")]
    [InlineData("")]
    public void What_is_no_thrust_is_refused_with_a_word(string typed)
    {
        foreach (var (text, at) in new[] { (Columns, (string?)null), (Motor, "thrust") })
        {
            var change = ThrustText.Replace(text, at, 1, true, typed);
            Assert.NotEmpty(change.Problem!.Suggestion);
            Assert.Equal(text, change.Text);
        }
    }

    [Fact]
    public void Points_are_added_and_taken_out()
    {
        foreach (var (text, at) in new[] { (Columns, (string?)null), (Motor, "thrust"), (Columns.TrimEnd(), null) })
        {
            var more = ThrustText.Insert(text, at, 2, "0.5", "300");
            Assert.Null(more.Problem);
            Assert.Equal(4, ThrustText.Rows(more.Text, at).Count);
            Assert.StartsWith("0.5", ThrustText.Rows(more.Text, at)[2].Time, StringComparison.Ordinal);
            Assert.Equal(text, ThrustText.TakeOut(more.Text, at, 2).Text);
            Assert.Equal("1.6", ThrustText.Rows(ThrustText.Insert(text, at, 3, "1.6", "0").Text, at)[3].Time.Split(' ')[0]);
        }
    }

    [Fact]
    public void Another_table_takes_the_place_and_comments_stay()
    {
        List<Problem> problems = [];
        Assert.Equal("# ground test\ntime s,thrust N\n0,0\n0.2,500\n2,0\n", ThrustText.Become(Columns, null, "time\tthrust\n0\t0\n0.2\t500\n2\t0\n", problems).Text);
        Assert.Equal("name: A   # as printed\nthrust: [[0 s, 0 N], [2 s, 5 N], [3 s, 0 N]]\n", ThrustText.Become(Motor, "thrust", "0 0\n2 5\n3 0", problems).Text);
        Assert.Empty(problems);
        Assert.Equal(Columns, ThrustText.Become(Columns, null, "0,0\n1,x\n", problems).Text);
        Assert.Equal(2, Assert.Single(problems).Line);
    }

    [Fact]
    public void A_point_between_two_is_midway() => Assert.Equal(("0.8", "200"), ThrustText.Between(ThrustText.Rows(Motor, "thrust"), 1));
}
