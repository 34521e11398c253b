using Scribeline.Engine.Design;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Questions;
using UnitsNet;

namespace Scribeline.App.Tests.Examples;

/// <summary>Many flights of the examples over their fields.</summary>
public class LandingTests
{
    private static readonly RocketDesign Heron = Example.Design("night-heron");

    private static Answer Ask(RocketDesign design, string id, int flights) => Questionnaire.Named(id)!.Ask(Studies.Of(design).Nominal!.Flying(flights, null, TestContext.Current.CancellationToken));

    private static RocketDesign At(RocketDesign design, Func<SiteDesign, SiteDesign> change) => design with { Site = new(null, change(design.Site!.Value!)) };

    private static Finding Of(Answer answer, string name) => answer.Findings.First(f => f.Name.StartsWith(name, StringComparison.Ordinal));

    /// <summary>The quick way to draw a case (response of the rocket's numbers, tables by height, lanes) against the whole way, case by case.</summary>
    [Fact]
    public void A_case_comes_down_where_the_whole_resolving_brings_it_down()
    {
        var studies = Studies.Of(Heron);
        var map = Questionnaire.Named("lands-inside")!.Ask(studies.Nominal!.Flying(400, null, TestContext.Current.CancellationToken)).Maps[0];
        var points = map.Clouds[0].Points;
        for (var i = 0; i < 12; i++)
        {
            var landing = studies.Case(i)!.Flight.Landings.Single();

            // Second-order response to some twenty tolerances, and 1e-4 of a step in turbulence: within 3 m of a scatter of a hundred.
            Assert.Equal(landing.East, points[i].East, 3.0);
            Assert.Equal(landing.North, points[i].North, 3.0);
        }
    }

    [Fact]
    public void Without_an_outline_it_is_open_and_says_what_to_type()
    {
        var answer = Ask(At(Heron, s => s with { Boundary = null }), "lands-inside", 200);
        Assert.Equal(Verdict.Open, answer.Verdict);
        Assert.Contains("corners", Assert.Single(answer.Missing), StringComparison.Ordinal);
        Assert.Contains(answer.Findings, f => f.Name.StartsWith("95 % ellipse", StringComparison.Ordinal));
        Assert.Equal(Verdict.Open, Ask(At(Heron, s => s with { Boundary = null }), "aim", 200).Verdict);
    }

    [Fact]
    public void Without_a_wind_or_the_place_of_the_pad_it_is_open()
    {
        Assert.Contains("weather", Ask(Heron with { Weather = null }, "lands-inside", 0).Missing[0], StringComparison.Ordinal);
        Assert.Contains("latitude", Ask(At(Heron, s => s with { Latitude = null, Longitude = null }), "lands-inside", 0).Missing[0], StringComparison.Ordinal);
    }

    [Fact]
    public void A_field_too_small_stops_and_a_larger_one_never_has_more_outside()
    {
        var shares = new[] { 100.0, 400, 900, 3000 }.Select(half => Of(Ask(Squared(half), "lands-inside", 300), "share of flights with anything outside")).ToArray();
        Assert.Equal(Verdict.Stop, shares[0].Verdict);
        Assert.Equal(1, shares[0].Value);
        Assert.True(shares.Zip(shares.Skip(1)).All(p => p.Second.Value <= p.First.Value));
        Assert.Equal(0, shares[^1].Value);
    }

    /// <summary>Where the planned landings are far to one side of a small field, the rail pointed against the drift keeps more inside.</summary>
    [Fact]
    public void The_advised_aim_is_no_worse_and_points_against_the_drift()
    {
        var answer = Ask(Squared(650), "aim", 400);
        Assert.True(Of(answer, "share outside the field, as advised").Value <= Of(answer, "share outside the field, as set").Value);
        Assert.InRange(Of(answer, "advised tilt").Value, 0, 20.001 * Math.PI / 180);

        // The planned flight drifts east-south-east; what is advised leans to the other half of the compass.
        Assert.True(Math.Sin(Of(answer, "advised azimuth").Value) < 0);
    }

    [Fact]
    public void Without_flights_it_tells_the_landing_as_typed()
    {
        var answer = Ask(Heron, "lands-inside", 0);
        Assert.Contains(answer.Findings, f => f.Name.Contains("room to the edge", StringComparison.Ordinal) && f.Value > 0);
        Assert.DoesNotContain(answer.Findings, f => f.Name.StartsWith("share", StringComparison.Ordinal));
    }

    private static RocketDesign Squared(double half) => At(Heron, s => s with
    {
        Boundary = new(null, new OutlineDesign { Corners = [Corner(-half, -half), Corner(half, -half), Corner(half, half), Corner(-half, half)] }),
    });

    private static FieldCornerDesign Corner(double east, double north) => new() { East = Measure.Si<Length>(east, 0, Basis.Estimated, ""), North = Measure.Si<Length>(north, 0, Basis.Estimated, "") };
}
