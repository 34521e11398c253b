using Scribeline.Engine.Aerodynamics;
using Scribeline.Engine.Air;
using Scribeline.Engine.Airframe;
using Scribeline.Engine.Motors;
using Scribeline.Engine.Numerics;

namespace Scribeline.Engine.Flight;

/// <summary>All that decides a flight. Equal inputs give the same flight to the last bit.</summary>
/// <param name="Shape">What the air sees; its base carries the nozzle.</param>
/// <param name="Mass">Mass and balance over the burn, the motor in place.</param>
/// <param name="Motor">The motor.</param>
/// <param name="Air">Still air of the day; its elevation is the pad's.</param>
/// <param name="Wind">How the air moves, by height above the pad.</param>
/// <param name="Latitude">Geodetic, rad: gravity and the turning of the Earth.</param>
/// <param name="Rail">The rail.</param>
/// <param name="Recovery">What comes apart and opens.</param>
public sealed record FlightInputs(
    OuterShape Shape,
    MassHistory Mass,
    Motor Motor,
    DayAir Air,
    AirMotion Wind,
    double Latitude,
    LaunchRail Rail,
    RecoveryPlan Recovery)
{
    /// <summary>Where the thrust acts; on the axis unless set.</summary>
    public ThrustLine ThrustLine { get; init; }

    /// <summary>How this flight differs from the tables; not at all unless set.</summary>
    public FlightFactors Factors { get; init; } = new();

    /// <summary>Tolerance and extent.</summary>
    public FlightOptions Options { get; init; } = FlightOptions.Nominal;

    /// <summary>What decides the climb to apogee alone, whatever opens there or later: flights that differ in nothing else share it.</summary>
    public FlightInputs Climbing() => this with { Recovery = RecoveryPlan.Ballistic, Options = Options with { Extent = FlightExtent.Apogee, NoseFirst = false } };

    /// <summary>The climb to apogee, to be gone on from by <see cref="Fly(AeroTable?, Climb)"/>.</summary>
    /// <param name="aerodynamics">As for <see cref="Fly(AeroTable?)"/>.</param>
    public Climb Climb(AeroTable? aerodynamics = null) => new(Climbing(), aerodynamics ?? AeroTable.Build(Shape));

    /// <summary>
    /// The flight, to the last bit as <see cref="Fly(AeroTable?)"/> gives it, without computing the climb again where nothing opens before
    /// apogee.
    /// </summary>
    /// <param name="aerodynamics">As for <see cref="Fly(AeroTable?)"/>.</param>
    /// <param name="climb">Of inputs that differ in nothing but the recovery.</param>
    /// <exception cref="ArgumentException">The climb is that of another rocket or day.</exception>
    public FlightResult Fly(AeroTable? aerodynamics, Climb climb)
    {
        if (!climb.Inputs.Equals(Climbing())) throw new ArgumentException("The climb is that of another rocket or day.", nameof(climb));
        return Options.Extent == FlightExtent.Landing && climb.Serves(Recovery) ? climb.GoOn(this) : Fly(aerodynamics);
    }

    /// <summary>
    /// The flight. Ask <see cref="FlightProblems.In"/> first: what is wrong there gives a flight that fails, or one that answers another question.
    /// A plan that speaks of pieces the rocket has not is flown to apogee only, and fails.
    /// </summary>
    /// <param name="aerodynamics">Table of <see cref="Shape"/>; null builds it, which takes longer than the flight.</param>
    public FlightResult Fly(AeroTable? aerodynamics = null)
    {
        RocketModel model = new(this, aerodynamics ?? AeroTable.Build(Shape));
        RailGeometry rail = model.RailGeometry(Rail, Shape.Length);
        Quaternion<Scalar> attitude = RailAttitude.Of(Rail.Elevation, Rail.Azimuth, Rail.ScribeHeading);
        FlightLog log = new();
        if (FlightProblems.PlanHolds(Recovery))
        {
            return FlightComputation<RocketModel>.FromRail(model, model.Knots(), rail, attitude, Recovery, Options, log, this);
        }

        log.Fail(FlightFailure.ImpossiblePlan);
        FlightExtent extent = Options.Extent == FlightExtent.Landing ? FlightExtent.Apogee : Options.Extent;
        return FlightComputation<RocketModel>.FromRail(
            model, model.Knots(), rail, attitude, RecoveryPlan.Ballistic, Options with { Extent = extent }, log, this);
    }
}

/// <summary>The line along which the motor pushes, in body axes.</summary>
/// <param name="OffsetY">At the nozzle exit, m.</param>
/// <param name="OffsetZ">At the nozzle exit, m.</param>
/// <param name="TiltY">Slope towards y, rad, small.</param>
/// <param name="TiltZ">Slope towards z, rad, small.</param>
public readonly record struct ThrustLine(double OffsetY, double OffsetZ, double TiltY, double TiltZ);

/// <summary>Factors on what the tables say, 1 each: one flight of many, a hot or a cold motor.</summary>
/// <param name="Impulse">On the total impulse, more than 0.</param>
/// <param name="BurnTime">On all times of the thrust curve, more than 0.</param>
/// <param name="Drag">On the axial force.</param>
/// <param name="NormalForce">On the normal force and its damping.</param>
public sealed record FlightFactors(double Impulse = 1, double BurnTime = 1, double Drag = 1, double NormalForce = 1);
