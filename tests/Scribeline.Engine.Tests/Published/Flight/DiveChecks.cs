using Scribeline.Engine.Flight;
using Scribeline.Engine.Tests.Properties.Flight;

namespace Scribeline.Engine.Tests.Published.Flight;

/// <summary>A whole rocket that dives from apogee, against the closed form of a fall with drag and against the flight with its attitude.</summary>
public sealed class DiveChecks
{
    private static readonly FlightOptions NoseFirst = Flights.Tight with { NoseFirst = true };

    // Closed form v = v_t sqrt(1 - exp(-2 g h/v_t²)), v_t = sqrt(2 m g/(ρ C_D S)), computed apart from this program: 10 kg, 0.10 m, C_D 0.5,
    // 1.2250 kg/m³: v_t 201.9 m/s; from rest at 1500 m 144.8 m/s and 104.8 kJ.
    [Fact]
    public void A_fall_from_rest_in_air_of_one_density()
    {
        BenchModel model = new() { GravityAtPad = 9.80665, Density = 1.2250, Cd = 0.5, BurntMass = 10 };
        FlightResult flight = Flights.Thrown(model, 1e-6, Math.PI / 2, 1500, NoseFirst);
        Landing landing = Assert.Single(flight.Landings);
        Assert.Equal(144.8, landing.DescentRate, 0.002 * 144.8);
        Assert.Equal(104.8e3, 0.5 * landing.Mass * landing.DescentRate * landing.DescentRate, 0.004 * 104.8e3);
        double terminal = Math.Sqrt(2 * 10 * 9.80665 / (1.2250 * 0.5 * model.Area));
        Assert.Equal(201.9, terminal, 0.001 * 201.9);
        Assert.Equal(terminal * Math.Sqrt(1 - Math.Exp(-2 * 9.80665 * 1500 / (terminal * terminal))), landing.DescentRate, 1e-6);
    }

    // In a breeze this rocket turns over by itself, so that holding its nose into the air changes next to nothing.
    [Fact]
    public void A_rocket_that_turns_over_by_itself_dives_as_fast()
    {
        FlightInputs inputs = SampleRocket.Inputs with { Recovery = RecoveryPlan.Ballistic };
        FlightResult free = inputs.Fly(SampleRocket.Table), dive = (inputs with { Options = inputs.Options with { NoseFirst = true } }).Fly(SampleRocket.Table);
        Assert.Equal(free.Landings[0].DescentRate, dive.Landings[0].DescentRate, 0.01 * free.Landings[0].DescentRate);
        Assert.Equal(free.Apogee, dive.Apogee);
        for (double t = dive.Apogee!.Time + 1; t < dive.End; t += 2)
        {
            Assert.Equal(FlightPhase.Dive, dive.At(t).Phase);
            Assert.Equal(0, dive.At(t).AngleOfAttack, 1e-6);
        }
    }

    [Fact]
    public void A_dive_on_a_shared_climb_is_the_same_to_the_last_bit()
    {
        FlightInputs inputs = SampleRocket.Inputs with { Recovery = RecoveryPlan.Ballistic, Options = SampleRocket.Inputs.Options with { NoseFirst = true } };
        FlightResult alone = inputs.Fly(SampleRocket.Table), shared = inputs.Fly(SampleRocket.Table, SampleRocket.Inputs.Climb(SampleRocket.Table));
        Assert.Equal(alone.Landings, shared.Landings);
        Assert.Equal(alone.Events, shared.Events);
    }

    [Fact]
    public void What_opens_at_apogee_knows_nothing_of_a_dive()
    {
        RecoveryPlan prompt = SampleRocket.DualDeployment with
        {
            Actions = [SampleRocket.DualDeployment.Actions[0] with { Trigger = new AtApogee(), Canopies = [SampleRocket.DualDeployment.Actions[0].Canopies[0] with { LineStretchDelay = 0 }] }],
        };
        FlightInputs inputs = SampleRocket.Inputs with { Recovery = prompt };
        FlightResult free = inputs.Fly(SampleRocket.Table), dive = (inputs with { Options = inputs.Options with { NoseFirst = true } }).Fly(SampleRocket.Table);
        Assert.Equal(free.Landings, dive.Landings);
    }
}
