using Scribeline.Engine.Air;
using Scribeline.Engine.Airframe;
using Scribeline.Engine.Flight;
using Scribeline.Engine.Numerics;

namespace Scribeline.Engine.Tests.Properties.Flight;

/// <summary>
/// Many flights in lanes against the same flights one by one, both integrated finely, so that what is left is the table of air and wind by
/// height; and what lanes, threads and neighbours may not change.
/// </summary>
public sealed class EnsembleTests
{
    private const int Count = 40, Compared = 10;

    private static readonly FlightInputs Nominal = SampleRocket.Inputs with { Options = FlightOptions.OneOfMany };

    public static TheoryData<string> Plans => ["as planned", "main at apogee", "drogue only", "nothing opens", "dive", "in two parts", "motor's charge"];

    [Theory, MemberData(nameof(Plans))]
    public void Every_flight_is_the_one_flown_alone(string plan)
    {
        FlightInputs nominal = Planned(plan);
        nominal = nominal with { Options = nominal.Options with { RelativeTolerance = 1e-6 } };
        EnsembleEnd[] ends = Inputs(nominal).Fly(Compared, i => Case(nominal, i), cancel: TestContext.Current.CancellationToken);
        for (int i = 0; i < Compared; i++)
        {
            EnsembleCase flown = Case(nominal, i);
            FlightInputs alone = nominal with
            {
                Mass = flown.Mass,
                Rail = flown.Rail,
                Air = flown.Air,
                Wind = flown.Wind,
                Recovery = flown.Recovery,
                Factors = new(Impulse: flown.Impulse, Drag: flown.Aerodynamics.Axial, NormalForce: flown.Aerodynamics.Normal),
            };
            FlightResult one = SampleRocket.Fly(alone);
            Assert.False(ends[i].Failed);
            Assert.Equal(one.Apogee!.Height, ends[i].Apogee, 0.02);
            Assert.Equal(one.Landings.Count, ends[i].Landings.Count);
            for (int k = 0; k < one.Landings.Count; k++)
            {
                EnsembleLanding landing = ends[i].Landings[k];
                Assert.Equal(one.Landings[k].East, landing.East, 0.2);
                Assert.Equal(one.Landings[k].North, landing.North, 0.2);
                Assert.Equal(one.Landings[k].DescentRate, landing.DescentRate, 0.01);
                Assert.Equal(one.Landings[k].At.Time, landing.Time, 0.03);
            }
        }
    }

    [Fact]
    public void Neither_lanes_nor_threads_nor_neighbours_change_a_flight()
    {
        EnsembleEnd[] eight = Fly(Nominal, lanes: 8, threads: 2), four = Fly(Nominal, lanes: 4, threads: 1), one = Fly(Nominal, lanes: 1);
        EnsembleEnd[] alone = Inputs(Nominal).Fly(1, _ => Case(Nominal, 23), lanes: 8, cancel: TestContext.Current.CancellationToken);
        Same(eight[23], alone[0]);
        for (int i = 0; i < Count; i++)
        {
            Same(eight[i], four[i]);

            // Math and vectors differ in the last digits of exp, log, sin and cos, which turbulence makes more of.
            Assert.Equal(one[i].Landings[0].East, eight[i].Landings[0].East, 1e-4);
            Assert.Equal(one[i].Landings[0].North, eight[i].Landings[0].North, 1e-4);
            Assert.Equal(one[i].Apogee, eight[i].Apogee, 1e-4);
        }
    }

    [Theory]
    [InlineData("main at apogee"), InlineData("drogue only"), InlineData("nothing opens"), InlineData("dive")]
    public void Going_on_from_the_apogee_of_another_plan_changes_nothing(string plan)
    {
        FlightInputs nominal = Planned(plan);
        EnsembleEnd[] planned = Fly(Nominal), whole = Fly(nominal);
        EnsembleEnd[] gone = (Inputs(nominal) with { From = i => planned[i].Apex }).Fly(Count, i => Case(nominal, i), cancel: TestContext.Current.CancellationToken);
        for (int i = 0; i < Count; i++) Same(whole[i], gone[i]);
    }

    [Fact]
    public void A_case_that_cannot_be_flown_fails_alone()
    {
        EnsembleEnd[] ends = Inputs(Nominal).Fly(Count, i => i switch
        {
            3 => null,
            5 => Case(Nominal, i) with { Impulse = 0.01 },
            7 => Case(Nominal, i) with { Aerodynamics = new(double.NaN, 1, 0) },
            _ => Case(Nominal, i),
        }, cancel: TestContext.Current.CancellationToken);
        EnsembleEnd[] sound = Fly(Nominal);
        for (int i = 0; i < Count; i++)
        {
            Assert.Equal(i is 3 or 5 or 7, ends[i].Failed);
            if (!ends[i].Failed) Same(sound[i], ends[i]);
        }
    }

    /// <summary>In a wind that is the same at all heights and no drag area of the pieces worth telling, a canopy drifts wind times time.</summary>
    [Fact]
    public void Drift_is_wind_times_time()
    {
        FlightInputs calm = Planned("main at apogee") with { Wind = new(new CalmWind()) };
        EnsembleEnd still = Inputs(calm).Fly(1, _ => Case(calm, 0) with { Wind = new(new CalmWind()) }, cancel: TestContext.Current.CancellationToken)[0];
        FlightInputs windy = calm with { Wind = new(new PowerLawWind(5, 1.5 * Math.PI, 0)) };
        EnsembleEnd moved = Inputs(windy).Fly(1, _ => Case(windy, 0) with { Wind = windy.Wind }, cancel: TestContext.Current.CancellationToken)[0];
        FlightResult flown = SampleRocket.Fly(windy with { Mass = Case(windy, 0).Mass, Rail = Case(windy, 0).Rail });

        // Up to apogee the wind moves the rocket too, by turning it: that share is taken from the flight itself.
        double climb = flown.Apogee!.Position.X - SampleRocket.Fly(calm with { Rail = Case(calm, 0).Rail }).Apogee!.Position.X;
        double descent = moved.Landings[0].Time - flown.Apogee.Time;
        Assert.Equal(5 * descent, moved.Landings[0].East - still.Landings[0].East - climb, 0.02 * 5 * descent);
    }

    private static EnsembleInputs Inputs(FlightInputs nominal) => new(nominal, SampleRocket.Table, 3000);

    private static EnsembleEnd[] Fly(FlightInputs nominal, int lanes = 0, int threads = 0) =>
        Inputs(nominal).Fly(Count, i => Case(nominal, i), lanes: lanes, threads: threads, cancel: TestContext.Current.CancellationToken);

    private static FlightInputs Planned(string plan)
    {
        RecoveryPlan two = Nominal.Recovery;
        return plan switch
        {
            "main at apogee" => Nominal with { Recovery = two with { Actions = [two.Actions[0], two.Actions[1] with { Trigger = new AtApogee(1) }] } },
            "drogue only" => Nominal with { Recovery = two with { Actions = [two.Actions[0]] } },
            "nothing opens" => Nominal with { Recovery = two with { Actions = [] } },
            "dive" => Nominal with { Recovery = two with { Actions = [] }, Options = Nominal.Options with { NoseFirst = true } },
            "in two parts" => Nominal with { Recovery = two with { Actions = [two.Actions[0] with { Tethered = false, SeparationSpeed = 6 }, two.Actions[1]] } },
            "motor's charge" => Nominal with { Recovery = two with { Actions = [two.Actions[0] with { Trigger = new AfterBurnout(15) }, two.Actions[1]] } },
            _ => Nominal,
        };
    }

    private static EnsembleCase Case(FlightInputs nominal, int number)
    {
        RandomStream draw = new(7, "ensemble", (ulong)number);
        double Near(double middle, double sigma) => middle + (sigma * draw.Normal());
        MassHistory mass = nominal.Mass with { Rigid = nominal.Mass.Rigid with { Mass = Near(7, 0.1), Station = Near(1.15, 0.005) } };
        LaunchRail rail = nominal.Rail with { Elevation = nominal.Rail.Elevation - Math.Abs(Near(0, 0.02)), Azimuth = Near(0.3, 1) };
        DayAir air = new(100, Near(100_000, 500), Near(290, 5), 0.5);
        Wind wind = new LayeredWind([new(10, Math.Abs(Near(4, 1)), 4), new(300, Math.Abs(Near(7, 1)), 4.2), new(1200, Math.Abs(Near(9, 2)), 4.5)], 1.0 / 7);
        GustField gusts = GustField.Draw(4, 4, 3000, draw.Normal, 15);
        return new(mass, rail, air, new(wind, gusts), nominal.Recovery, Near(1, 0.01), new(Near(1, 0.05), Near(1, 0.02), 0));
    }

    private static void Same(EnsembleEnd a, EnsembleEnd b)
    {
        Assert.Equal(a.Apogee, b.Apogee);
        Assert.Equal(a.Landings, b.Landings);
    }
}
