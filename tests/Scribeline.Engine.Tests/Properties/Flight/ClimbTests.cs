using Scribeline.Engine.Flight;

namespace Scribeline.Engine.Tests.Properties.Flight;

/// <summary>A flight that goes on from a climb computed before is, to the last bit, the one that computes it itself.</summary>
public sealed class ClimbTests
{
    private static readonly Climb Climb = SampleRocket.Inputs.Climb(SampleRocket.Table);

    public static TheoryData<string, RecoveryPlan> Plans => new()
    {
        { "drogue and main", SampleRocket.DualDeployment },
        { "nothing opens", RecoveryPlan.Ballistic },
        { "main alone", SampleRocket.DualDeployment with { Actions = [SampleRocket.DualDeployment.Actions[1] with { Joint = 0 }] } },
        { "apart without a cord", SampleRocket.DualDeployment with { Actions = [SampleRocket.DualDeployment.Actions[0] with { Tethered = false, SeparationSpeed = 8 }] } },
    };

    [Theory]
    [MemberData(nameof(Plans))]
    public void Goes_on_as_if_never_interrupted(string what, RecoveryPlan plan)
    {
        FlightInputs inputs = SampleRocket.Inputs with { Recovery = plan };
        FlightResult alone = inputs.Fly(SampleRocket.Table), shared = inputs.Fly(SampleRocket.Table, Climb);
        Assert.True(Climb.Serves(plan), what);
        Assert.Equal(alone.Events, shared.Events);
        Assert.Equal(alone.Landings, shared.Landings);
        Assert.Equal(alone.Bodies, shared.Bodies);
        Assert.Equal(alone.Effort, shared.Effort);
        Assert.Equal(alone.Maxima, shared.Maxima);
        Assert.Equal(alone.RailExit, shared.RailExit);
        Assert.Equal(alone.At(alone.Apogee!.Time / 2), shared.At(alone.Apogee.Time / 2));
    }

    [Fact]
    public void One_climb_serves_many_flights()
    {
        FlightResult first = SampleRocket.Inputs.Fly(SampleRocket.Table, Climb);
        _ = (SampleRocket.Inputs with { Recovery = RecoveryPlan.Ballistic }).Fly(SampleRocket.Table, Climb);
        Assert.Equal(first.Events, SampleRocket.Inputs.Fly(SampleRocket.Table, Climb).Events);
    }

    [Fact]
    public void What_opens_before_apogee_is_flown_by_itself()
    {
        RecoveryPlan early = SampleRocket.DualDeployment with { Actions = [SampleRocket.DualDeployment.Actions[0] with { Trigger = new AfterBurnout(1) }] };
        Assert.False(Climb.Serves(early));
        FlightInputs inputs = SampleRocket.Inputs with { Recovery = early };
        Assert.Equal(inputs.Fly(SampleRocket.Table).Events, inputs.Fly(SampleRocket.Table, Climb).Events);
    }

    [Fact]
    public void The_climb_of_another_day_is_refused() => Assert.Throws<ArgumentException>(() =>
        (SampleRocket.Inputs with { Latitude = 0.1 }).Fly(SampleRocket.Table, Climb));

    [Fact]
    public void A_rocket_that_does_not_lift_off_says_so()
    {
        FlightInputs weak = SampleRocket.Inputs with { Factors = new(Impulse: 0.01) };
        Climb climb = weak.Climb(SampleRocket.Table);
        Assert.False(climb.Reached);
        Assert.Equal(FlightFailure.NoLiftOff, weak.Fly(SampleRocket.Table, climb).Failure);
    }
}
