using Scribeline.Engine.Aerodynamics;
using Scribeline.Engine.Air;
using Scribeline.Engine.Airframe;
using Scribeline.Engine.Flight;
using Scribeline.Engine.Motors;
using Scribeline.Engine.Numerics;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Resolving;

namespace Scribeline.Engine.Questions;

/// <summary>
/// One rocket on one day; its results are computed once, when first asked for, and long ones are kept by the value of their inputs.
/// </summary>
public sealed partial class Study
{
    /// <summary>Airspeed below which the air no longer steers a coasting rocket, m/s: that of the customary rail exit.</summary>
    public const double SlowAirspeed = 15.24;

    // Gravity where the site states no latitude: it differs by a quarter of a per cent at most from there to pole or equator.
    private const double MidLatitude = Math.PI / 4;

    private readonly ResultCache cache;
    private readonly Motor? motorOfDay;
    private readonly Day? dayOrNull;
    private readonly Lazy<ValueList<Bay>> bays;
    private readonly Lazy<MassBreakdown> masses;
    private readonly Lazy<RecoveryPlan> plan;
    private readonly Lazy<FlightResult> flight;
    private readonly Lazy<FlightResult> ballistic;
    private readonly Lazy<ValueList<FlightSample>> ascent;
    private readonly Lazy<ValueList<FlightSample>> freeAscent;

    /// <param name="rocket">The rocket.</param>
    /// <param name="motor">The motor of the day; null where none is given.</param>
    /// <param name="day">The day; null where what it needs is missing.</param>
    /// <param name="missing">What to type so that it can be flown; empty when there is a day.</param>
    /// <param name="cache">Where long results are kept; null for a cache of its own.</param>
    /// <param name="isSample">Whether it is one of many cases: flown coarser, without pictures.</param>
    /// <param name="planned">The same rocket in the planned weather, for comparison; null for none.</param>
    public Study(
        Rocket rocket, Motor? motor, Day? day, ValueList<string> missing, ResultCache? cache = null, bool isSample = false, Study? planned = null)
    {
        (Rocket, motorOfDay, dayOrNull, Missing, IsSample, Planned) = (rocket, motor, day, missing, isSample, planned);
        this.cache = cache ?? new ResultCache();
        Limits = new LimitTable(rocket.Limits);
        Shape = rocket.Vehicle.Outside(motor?.NozzleExitDiameter ?? 0);
        bays = new(() => rocket.Vehicle.Bays(HasMotor ? MotorLoad : null));
        masses = new(rocket.Vehicle.Masses);
        plan = new(() => RecoveryPlanner.Plan(rocket, Shape, p => PieceProperties(p).Mass));
        flight = new(() => Fly(Plan));
        ballistic = new(() => Fly(RecoveryPlan.Ballistic));
        ascent = new(() => this.cache.Get((Flight, IsSample, "ascent"), _ => Climb()));
        freeAscent = new(() => this.cache.Get((Flight, IsSample, "free"), _ => Free()));
    }

    /// <summary>The rocket.</summary>
    public Rocket Rocket { get; }

    /// <summary>What to type so that the rocket can be flown; empty when it can.</summary>
    public ValueList<string> Missing { get; }

    /// <summary>The day; only where nothing is <see cref="Missing"/>.</summary>
    public Day Day => dayOrNull ?? throw new InvalidOperationException("Asked of a day that is not there.");

    /// <summary>Whether it is one of many cases.</summary>
    public bool IsSample { get; }

    /// <summary>The same rocket in the planned weather; null where there is nothing to compare.</summary>
    public Study? Planned { get; }

    /// <summary>Limits to judge by.</summary>
    public LimitTable Limits { get; }

    /// <summary>Parts, joints and weighings.</summary>
    public Vehicle Vehicle => Rocket.Vehicle;

    /// <summary>Whether there is a motor.</summary>
    public bool HasMotor => motorOfDay is not null;

    /// <summary>The motor of the day; only where <see cref="HasMotor"/>.</summary>
    public Motor Motor => motorOfDay ?? throw new InvalidOperationException("Asked of a motor that is not there.");

    /// <summary>The air of the day.</summary>
    public DayAir Air => Day.Air;

    /// <summary>Height above the pad that the flight may reach, m; null where the site states none.</summary>
    public double? Ceiling => Day.Ceiling;

    /// <summary>Whether the weather gives a wind.</summary>
    public bool WindIsKnown => Day.Weather.Wind;

    /// <summary>What the air sees.</summary>
    public OuterShape Shape { get; }

    /// <summary>Tip to tail, m.</summary>
    public double Length => Vehicle.Length;

    /// <summary>Aerodynamic coefficients.</summary>
    public AeroTable Aero => cache.Get(Shape, AeroTable.Build);

    /// <summary>Closed volumes, nose to tail.</summary>
    public ValueList<Bay> Bays => bays.Value;

    /// <summary>Mass of every part.</summary>
    public MassBreakdown Masses => masses.Value;

    /// <summary>The motor in its place, flush with the rear of its mount.</summary>
    public MotorLoad MotorLoad => Vehicle.Holding(Motor);

    /// <summary>Station of the motor's forward end, m.</summary>
    public double MotorFront => MotorLoad.Front;

    /// <summary>The loaded motor as a mass.</summary>
    public MassProperties LoadedMotor => MotorLoad.Loaded;

    /// <summary>Everything on the pad.</summary>
    public MassProperties Loaded => HasMotor ? MassProperties.Sum(Masses.Of(Vehicle.Whole), MotorLoad.Loaded) : Masses.Of(Vehicle.Whole);

    /// <summary>Everything at burnout.</summary>
    public MassProperties Burnt => MassProperties.Sum(Masses.Of(Vehicle.Whole), MotorLoad.Burnt);

    /// <summary>Mass on the pad, kg.</summary>
    public double LoadedMass => Loaded.Mass;

    /// <summary>How the mass is known.</summary>
    public Basis MassBasis => Loaded.Basis;

    /// <summary>How the drag of the canopies is known.</summary>
    public Basis CanopyBasis => Rocket.Canopies.Count == 0 ? Basis.Estimated : Rocket.Canopies.Min(c => c.Basis);

    /// <summary>Pieces that come to the ground, nose to tail; the whole where nothing comes apart.</summary>
    public ValueList<Piece> LandingPieces => Vehicle.PiecesAfter(RecoveryPlanner.Joints(Rocket));

    /// <summary>Gravity at the pad, m/s².</summary>
    public double Gravity => new SiteGravity(Day.Latitude ?? MidLatitude).At<Scalar>(Air.Elevation);

    /// <summary>The rail and how the rocket sits on it.</summary>
    public LaunchRail Rail => Day.Rail.Holding(Vehicle);

    /// <summary>What comes apart and opens.</summary>
    public RecoveryPlan Plan => plan.Value;

    /// <summary>The flight as planned, ignition to the last landing.</summary>
    public FlightResult Flight => flight.Value;

    /// <summary>The flight if nothing opens.</summary>
    public FlightResult Ballistic => ballistic.Value;

    /// <summary>A flight that is whole up to apogee: as planned where nothing opens before, otherwise the one where nothing opens.</summary>
    public FlightResult Unopened => Plan.Actions.All(a => a.Trigger is AtApogee or DescendingThrough) ? Flight : Ballistic;

    /// <summary>Samples from ignition to apogee.</summary>
    public ValueList<FlightSample> Ascent => ascent.Value;

    /// <summary>Samples from the last guide's exit until the airspeed of the coast falls below <see cref="SlowAirspeed"/>; empty if it never leaves the rail.</summary>
    public ValueList<FlightSample> FreeAscent => freeAscent.Value;

    /// <summary>Mass of a piece after burnout, with the motor if it carries it.</summary>
    public MassProperties PieceProperties(Piece piece) => HasMotor && piece.Has(Vehicle.MotorPart)
        ? MassProperties.Sum(Masses.Of(piece), MotorLoad.Burnt)
        : Masses.Of(piece);

    /// <summary>Mass of the landing piece with this name, kg.</summary>
    public double PieceMass(string name) => PieceProperties(LandingPieces.First(p => Vehicle.NameOf(p) == name)).Mass;

    /// <summary>What is stowed in a bay.</summary>
    public IEnumerable<Stowed> StowedIn(Bay bay) => Vehicle.Parts.SelectMany(p => p.Stowed.Where(s =>
    {
        var middle = p.Front + s.Offset + (s.PackedLength / 2);
        return middle >= bay.Front && middle < bay.Rear;
    }));

    /// <summary>Air density where a sample is, kg/m³.</summary>
    public double DensityAt(FlightSample sample) => Air.At<Scalar>(Air.Elevation + sample.Height).Density;

    /// <summary>Air density at the pad, kg/m³.</summary>
    public double DensityAtPad => Air.At<Scalar>(Air.Elevation).Density;

    /// <summary>Mean wind speed at a height above ground, m/s.</summary>
    public double WindAt(double height) => Day.Wind.At<Scalar>(height).Speed();

    /// <summary>Mean thrust from ignition to a time, N.</summary>
    public double MeanThrustUntil(double time) => Motor.Curve.ImpulseAt<Scalar>(time) / time;

    /// <summary>Drag just after burnout, N.</summary>
    public double CoastDrag => Flight.Burnout is { } burnout ? Flight.At(burnout.Time + 0.01).Drag : double.NaN;

    /// <summary>Sums over the components of the normal-force slope at a sample's Mach number, without incidence.</summary>
    public (double Sum0, double Sum1, double Sum2) SlopeAt(FlightSample sample)
    {
        var at = Aero.At<Scalar>(sample.Mach, 0, ReynoldsPerMetreAt(sample), sample.Thrust > 0 ? 1 : 0);
        return (at.DampingSum0, at.DampingSum1, at.DampingSum2);
    }

    /// <summary>Reynolds number per metre of length at a sample, 1/m.</summary>
    public double ReynoldsPerMetreAt(FlightSample sample)
    {
        var air = Air.At<Scalar>(Air.Elevation + sample.Height);
        return air.Density * sample.Airspeed / air.Viscosity;
    }

    /// <summary>Moment of inertia across the axis at a sample, kg·m².</summary>
    public double LateralInertiaAt(FlightSample sample)
    {
        var history = Vehicle.History(Vehicle.Whole, MotorLoad);
        return history.At<Scalar>(Math.Clamp(Motor.Curve.ImpulseAt<Scalar>(sample.Time) / Motor.Curve.TotalImpulse, 0, 1)).Lateral;
    }

    /// <summary>Drag area of all that is open or hangs in a body at a time, m².</summary>
    public double DragAreaAt(FlightSample sample) => sample.DynamicPressure > 0 ? sample.Drag / sample.DynamicPressure : double.NaN;

    private FlightInputs Inputs(RecoveryPlan recovery) => new(
        Shape, Vehicle.History(Vehicle.Whole, MotorLoad), Motor, Air, new AirMotion(Day.Wind, Day.Turbulence), Day.Latitude ?? MidLatitude, Rail, recovery)
    {
        Factors = new(Drag: Rocket.DragScale),
        Options = (IsSample ? FlightOptions.OneOfMany : FlightOptions.Nominal) with { Coriolis = Day.Latitude is not null, NoseFirst = NoseFirst },
    };

    /// <summary>What one of many flights flies with.</summary>
    internal FlightInputs ManyInputs
    {
        get
        {
            var inputs = Inputs(Plan);
            return inputs with { Options = inputs.Options with { RelativeTolerance = FlightOptions.OneOfMany.RelativeTolerance } };
        }
    }

    private FlightResult Fly(RecoveryPlan recovery) =>
        cache.Get(Inputs(recovery), i => i.Fly(Aero, cache.Get(i.Climbing(), c => c.Climb(Aero))));

    // Fine enough that a straight line between samples is within the thickness of a drawn line.
    private ValueList<FlightSample> Climb() =>
        Flight.Apogee is not { } apogee ? [] : Samples(0, apogee.Time, IsSample ? 0.1 : 0.02);

    private ValueList<FlightSample> Free()
    {
        if (Flight is not { RailExit: { } exit, Burnout: { } burnout, Apogee: { } apogee }) return [];
        var all = Samples(exit.Aft.Time, apogee.Time, IsSample ? 0.1 : 0.02);
        return all.TakeWhile(s => s.Time <= burnout.Time || s.Airspeed >= SlowAirspeed).ToValueList();
    }

    private ValueList<FlightSample> Samples(double from, double to, double step)
    {
        var count = Math.Max(2, (int)Math.Ceiling((to - from) / step) + 1);
        return Enumerable.Range(0, count).Select(i => Flight.At(from + ((to - from) * i / (count - 1)))).ToValueList();
    }
}
