using Scribeline.Engine.Air;
using Scribeline.Engine.Flight;
using Scribeline.Engine.Numerics;
using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Tests.Properties.Flight;

/// <summary>The plan happens as planned.</summary>
public sealed class RecoveryProperties
{
    private static readonly FlightEventKind[] Usual =
    [
        FlightEventKind.Ignition, FlightEventKind.LiftOff, FlightEventKind.ForwardGuideExit, FlightEventKind.AftGuideExit,
        FlightEventKind.Burnout, FlightEventKind.Apogee, FlightEventKind.Charge, FlightEventKind.LineStretch, FlightEventKind.FullyOpen,
        FlightEventKind.Charge, FlightEventKind.LineStretch, FlightEventKind.FullyOpen, FlightEventKind.Landing,
    ];

    [Fact]
    public void Events_come_in_their_order()
    {
        FlightResult flight = SampleRocket.Fly(SampleRocket.Inputs);
        Assert.Equal(FlightFailure.None, flight.Failure);
        Assert.Equal(Usual, flight.Events.Select(e => e.Kind));
        Assert.Equal(flight.Apogee!.Time + 0.5, flight.Events.First(e => e.Kind == FlightEventKind.Charge).Time, 1e-9);
        Assert.Equal(0, flight.Landings[0].At.Height, 1e-6);
        Assert.Equal([0, 1], flight.Bodies.Select(b => b.Index));
        Assert.Equal(flight.Bodies[0].End, flight.Bodies[1].Start);
    }

    /// <summary>On a hot day the altimeter reads low and the main opens high.</summary>
    [Fact]
    public void Main_opens_by_the_altimeters_reading()
    {
        DayAir hot = new(1400, 85_800, 308.15, 0);
        FlightResult flight = SampleRocket.Fly(SampleRocket.Inputs with { Air = hot });
        FlightSample at = flight.Events.Last(e => e.Kind == FlightEventKind.Charge).At;
        Assert.Equal(200, at.AltimeterHeight, 1e-6);

        // Error law of a column with the standard lapse, in geopotential heights: T_standard(pad pressure)/T_pad = 0.905970; the true
        // height is geometric, some 5e-4 more.
        Assert.Equal(200 / 0.905970, at.Height, 0.001 * at.Height);
    }

    [Fact]
    public void Lands_at_the_steady_rate_of_its_drag_area()
    {
        FlightResult flight = SampleRocket.Fly(SampleRocket.Inputs with { Wind = new(new CalmWind()) });
        Landing landing = flight.Landings[0];
        double density = SampleRocket.Inputs.Air.At<Scalar>(100).Density, area = 0.05 + 0.09 + 0.22 + 3.5;
        double g = new SiteGravity(45 * Math.PI / 180).At<Scalar>(100);
        Assert.Equal(Math.Sqrt(2 * landing.Mass * g / (density * area)), landing.DescentRate, 5e-3);
    }

    [Fact]
    public void Without_recovery_it_comes_down_fast_and_nose_first()
    {
        FlightResult flight = SampleRocket.Fly(SampleRocket.Inputs with { Recovery = RecoveryPlan.Ballistic });
        Landing landing = Assert.Single(flight.Landings);
        Assert.True(landing.DescentRate > 100);
        Assert.True(landing.At.Tilt > 150 * Math.PI / 180);
        Assert.True(landing.At.AngleOfAttack < 0.05);
    }

    [Fact]
    public void Untethered_sides_fly_and_land_apart()
    {
        RecoveryPlan plan = new(SampleRocket.DualDeployment.Pieces,
        [
            new("separation charge", new AtApogee(), 0, false, [new("fore", 0, 1, 1), new("aft", 1, 2, 1.5)], SeparationSpeed: 6),
        ]);
        FlightResult flight = SampleRocket.Fly(SampleRocket.Inputs with { Recovery = plan });
        Assert.Equal(3, flight.Bodies.Count);
        Assert.Equal(["nose and main bay"], flight.Landings[0].Pieces);
        Assert.Equal(["booster"], flight.Landings[1].Pieces);
        FlightSample whole = flight.At(flight.Bodies[0].End), fore = flight.At(0, 1), aft = flight.At(0, 2);
        Vector3<Scalar> momentum = (Scalar)3.1 * fore.Velocity + (Scalar)4.55 * aft.Velocity - (Scalar)7.65 * whole.Velocity;
        Assert.Equal(0, momentum.Length, 1e-9);
        Assert.Equal(6, (fore.Velocity - aft.Velocity).Length, 1e-9);
        Assert.Equal(2, flight.Openings.Count);
    }

    [Fact]
    public void Main_set_above_apogee_opens_there()
    {
        RecoveryPlan plan = new(SampleRocket.DualDeployment.Pieces,
            [new("main charge", new DescendingThrough(5000), 0, true, [new("main", 0, 3.5, 2.44)])]);
        FlightResult flight = SampleRocket.Fly(SampleRocket.Inputs with { Recovery = plan });
        Assert.Equal(flight.Apogee!.Time, flight.Events.Single(e => e.Kind == FlightEventKind.Charge).Time, 1e-9);
    }

    [Fact]
    public void Motor_delay_counts_from_burnout()
    {
        RecoveryPlan plan = new(SampleRocket.DualDeployment.Pieces,
            [new("motor charge", new AfterBurnout(8), 0, true, [new("main", 0, 3.5, 2.44)])]);
        FlightResult flight = SampleRocket.Fly(SampleRocket.Inputs with { Recovery = plan });
        FlightEvent charge = flight.Events.Single(e => e.Kind == FlightEventKind.Charge);
        Assert.Equal(flight.Burnout!.Time + 8, charge.Time, 1e-9);
        Assert.True(charge.At.VerticalSpeed > 0, "it fires on the way up");
        Assert.Equal(1, flight.Events.Single(e => e.Kind == FlightEventKind.Apogee).Body);
        Assert.True(flight.Openings[0].PeakForce.Value > 500);
    }

    [Fact]
    public void Timer_counts_from_lift_off()
    {
        RecoveryPlan plan = new(SampleRocket.DualDeployment.Pieces,
            [new("timer", new AfterLiftOff(20), 0, true, ValueList<FlightCanopy>.Empty)]);
        FlightResult flight = SampleRocket.Fly(SampleRocket.Inputs with { Recovery = plan });
        double liftOff = flight.Events.Single(e => e.Kind == FlightEventKind.LiftOff).Time;
        Assert.Equal(liftOff + 20, flight.Events.Single(e => e.Kind == FlightEventKind.Charge).Time, 1e-9);
    }

    [Fact]
    public void A_second_charge_changes_nothing_that_has_happened()
    {
        RecoveryPlan plan = SampleRocket.DualDeployment, doubled = plan with
        {
            Actions = [.. plan.Actions, plan.Actions[0] with { Name = "second drogue charge", Trigger = new AtApogee(2) }],
        };
        FlightResult one = SampleRocket.Fly(SampleRocket.Inputs), two = SampleRocket.Fly(SampleRocket.Inputs with { Recovery = doubled });
        Assert.Equal(one.Openings.Count, two.Openings.Count);
        Assert.Equal(one.Landings[0].DescentRate, two.Landings[0].DescentRate, 1e-5);
        Assert.Contains(two.Events, e => e.Name == "second drogue charge");
    }

    /// <summary>Without its drogue charge it falls whole until the main opens, hard.</summary>
    [Fact]
    public void Main_alone_opens_in_the_fall()
    {
        RecoveryPlan plan = SampleRocket.DualDeployment;
        FlightResult flight = SampleRocket.Fly(SampleRocket.Inputs with { Recovery = plan with { Actions = [plan.Actions[1]] } });
        CanopyOpening main = Assert.Single(flight.Openings);
        Assert.True(main.LineStretch.Airspeed > 100);
        Assert.True(main.PeakForce.Value > 10 * SampleRocket.Fly(SampleRocket.Inputs).Openings[1].PeakForce.Value);
    }

    [Fact]
    public void Ends_where_asked()
    {
        FlightResult rail = SampleRocket.Fly(SampleRocket.Inputs with { Options = new(Extent: FlightExtent.RailExit) });
        Assert.Null(rail.Apogee);
        Assert.Equal(rail.RailExit!.Aft.Time, rail.End);
        FlightResult apogee = SampleRocket.Fly(SampleRocket.Inputs with { Options = new(Extent: FlightExtent.Apogee) });
        Assert.Equal(apogee.Apogee!.Time, apogee.End);
        Assert.Empty(apogee.Landings);
    }

    [Fact]
    public void Too_few_steps_are_said_not_thrown()
    {
        FlightResult flight = SampleRocket.Fly(SampleRocket.Inputs with { Options = new(MaximumSteps: 30) });
        Assert.Equal(FlightFailure.TooManySteps, flight.Failure);
        Assert.Empty(flight.Landings);
        Assert.True(double.IsFinite(flight.At(flight.End).Height));
    }

    [Fact]
    public void Impossible_inputs_have_problems()
    {
        FlightInputs good = SampleRocket.Inputs;
        Assert.Empty(FlightProblems.In(good));
        RecoveryPlan plan = good.Recovery;
        Says("latitude", good with { Latitude = double.NaN });
        Says("rail", good with { Rail = good.Rail with { Length = 0 } });
        Says("rail guides", good with { Rail = good.Rail with { ForwardGuide = 2.15 } });
        Says("rail guides", good with { Rail = good.Rail with { Length = 0.5 } });
        Says("pieces", good with { Recovery = plan with { Pieces = [plan.Pieces[0]], Actions = [] } });
        Says("action drogue charge", good with { Recovery = plan with { Actions = [plan.Actions[0] with { Joint = 1 }] } });
        Says("canopy main", good with { Recovery = plan with { Actions = [plan.Actions[1] with { Canopies = [plan.Actions[1].Canopies[0] with { Piece = 2 }] }] } });
        Says("factors", good with { Factors = new(Impulse: 0) });

        static void Says(string at, FlightInputs inputs)
        {
            Assert.Contains(FlightProblems.In(inputs), p => p.At == at);
            FlightResult flight = inputs.Fly(SampleRocket.Table);
            Assert.True(flight.Failure != FlightFailure.None || at is "pieces" or "rail guides" or "rail", $"{at}: {flight.Failure}");
        }
    }
}
