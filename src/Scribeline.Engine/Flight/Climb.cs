using Scribeline.Engine.Aerodynamics;

namespace Scribeline.Engine.Flight;

/// <summary>A climb from ignition to apogee, kept so that flights which differ only in what opens afterwards need not compute it again.</summary>
public sealed class Climb
{
    private readonly RocketModel model;
    private readonly FlightLog log = new();
    private readonly WholeFlight<RocketModel> whole;

    internal Climb(FlightInputs inputs, AeroTable aerodynamics)
    {
        Inputs = inputs;
        model = new(inputs, aerodynamics);
        RailGeometry rail = model.RailGeometry(inputs.Rail, inputs.Shape.Length);
        whole = new(new(model), rail, model.Knots(), new FiringPlan([]), inputs.Options, log);
        whole.Ignite(RailAttitude.Of(inputs.Rail.Elevation, inputs.Rail.Azimuth, inputs.Rail.ScribeHeading));
        whole.Fly();
    }

    /// <summary>What was flown: without recovery, to apogee.</summary>
    public FlightInputs Inputs { get; }

    /// <summary>Whether it got to apogee; a flight that fails before is flown by itself, so that it says why.</summary>
    public bool Reached => log.Failure == FlightFailure.None && whole.ApogeePassed;

    /// <summary>Whether a plan leaves the climb as it is: everything in it happens at apogee or later.</summary>
    /// <param name="plan">The plan.</param>
    public bool Serves(RecoveryPlan plan) =>
        Reached && FlightProblems.PlanHolds(plan) && plan.Actions.All(a => a.Trigger is AtApogee or DescendingThrough);

    internal FlightResult GoOn(FlightInputs inputs) =>
        FlightComputation<RocketModel>.FromApogee(whole, log, model, inputs.Recovery, inputs.Options, inputs);
}
