using Scribeline.Engine.Flight;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Recovery;
using Scribeline.Engine.Separation;

namespace Scribeline.Engine.Questions;

/// <content>What canopies and harnesses pull.</content>
public sealed partial class Study
{
    private ValueList<CanopyLoad>? canopyLoads;
    private ValueList<HarnessJerk>? jerks;

    // Longer than this after apogee a canopy opens out of a fall rather than at the top, s.
    private const double BareFall = 3;

    /// <summary>Every canopy that opens in the flight as planned, in order of time.</summary>
    public ValueList<CanopyLoad> CanopyLoads => LazyInitializer.EnsureInitialized(ref canopyLoads, () => CanopyLoadsOf(Flight));

    /// <summary>Every harness that spans a joint which a charge opens, after the hardest of its charges.</summary>
    public ValueList<HarnessJerk> Jerks => LazyInitializer.EnsureInitialized(ref jerks, () => HarnessJerks().ToValueList());

    /// <summary>Every canopy that opens in a flight of this rocket, in order of time.</summary>
    /// <param name="flown">A flight of this rocket, as planned or with something failing.</param>
    public ValueList<CanopyLoad> CanopyLoadsOf(FlightResult flown) => flown.Openings.Select(o => LoadOf(o, flown)).OfType<CanopyLoad>().ToValueList();

    /// <summary>Every element from each canopy to the airframe with the load it sees in a flight, canopy by canopy.</summary>
    /// <param name="flown">A flight of this rocket, as planned or with something failing.</param>
    public ValueList<PathElement> LoadPathOf(FlightResult flown) => new LoadPathSurvey(this, flown, CanopyLoadsOf(flown), new Working()).Walk();

    /// <summary>The last canopy that a body lands under; null where it lands under none.</summary>
    /// <param name="landing">Of the flight as planned.</param>
    public CanopyLoad? LandsUnder(Landing landing) => CanopyLoads.LastOrDefault(l => l.Flown.Body == landing.Body && l.Flown.LineStretch.Time <= landing.At.Time);

    /// <summary>Where a canopy hangs; null where it hangs on no cord.</summary>
    /// <param name="canopy">Its name.</param>
    public Hanging? HangingOf(string canopy) => Rocket.Rigging.Hangings.FirstOrDefault(h => h.Canopy == canopy);

    private CanopyLoad? LoadOf(CanopyOpening opening, FlightResult flown)
    {
        if (Rocket.Canopies.FirstOrDefault(c => c.Name == opening.Name) is not { } canopy) return null;
        var at = opening.LineStretch;
        var flow = at.Velocity - at.Wind;
        var kind = canopy.Kind ?? Canopy.FlatCircular;
        var inputs = new OpeningInputs
        {
            Mass = at.Mass,
            DragArea = canopy.DragArea,
            BodyDragArea = DragAreaAt(at) is var area && double.IsFinite(area) ? area : Plan.Pieces.Sum(p => p.BodyDragArea),
            NominalDiameter = canopy.NominalDiameter,
            FillConstant = canopy.FillConstant ?? kind.FillConstant,
            GrowthExponent = kind.GrowthExponent,
            Speed = at.Airspeed,
            PathAngle = at.Airspeed > 0 ? Math.Asin(Math.Clamp(-flow.Z.Value / at.Airspeed, -1, 1)) : Math.PI / 2,
            Density = DensityAt(at),
            Gravity = Gravity,
        };
        var (handbook, integrated) = CanopyLoad.Both(kind, inputs);
        var thrown = ThrownBy(canopy, kind, inputs);
        return new(canopy, opening, handbook, integrated, at.Mass * Gravity)
        {
            Late = Late(canopy.Name, kind, inputs, flown),
            Bare = Bare(opening, kind, inputs, flown),
            Thrown = thrown,
            Snatch = thrown is { } by ? SnatchOf(canopy, by) : null,
        };
    }

    // Until the harness is taut a canopy slows only the piece it is tied to, thrown by the hardest charge.
    private Thrown? ThrownBy(Canopy canopy, CanopyKind kind, OpeningInputs inputs)
    {
        Thrown? hardest = null;
        foreach (var (joint, part) in Rocket.Firings.SelectMany(f => f.Canopies.Where(c => c.Name == canopy.Name).Select(c => (f.Joint, c.Part))).Distinct())
        {
            foreach (var fired in ChargeFirings.Where(f => f.Charge.Joint == joint).Select(f => f.Fired))
            {
                var (speed, mass) = part <= joint ? (fired.ForwardSpeed, fired.Inputs.ForwardMass) : (fired.AftSpeed, fired.Inputs.AftMass);
                if (speed <= (hardest?.Speed ?? 0)) continue;
                var (handbook, integrated) = CanopyLoad.Both(kind, inputs with { Mass = mass, Speed = inputs.Speed + speed, BodyDragArea = 0 });
                hardest = new(speed, mass, Math.Max(handbook.Peak, integrated.Peak));
            }
        }

        return hardest;
    }

    // Nothing but the pieces themselves has slowed the fall: it may be faster than flown by the doubt of their drag.
    private static double? Bare(CanopyOpening opening, CanopyKind kind, OpeningInputs inputs, FlightResult flown)
    {
        if (flown.Apogee is not { } apogee || opening.LineStretch.Time < apogee.Time + BareFall || flown.Openings.Any(o => o.LineStretch.Time < opening.LineStretch.Time)) return null;
        var body = inputs.BodyDragArea * PieceDrag.LeastShare;
        var (handbook, integrated) = CanopyLoad.Both(kind, inputs with { BodyDragArea = body, Speed = Math.Max(inputs.Speed, SteadyDescent.Rate(inputs.Mass, body, inputs.Density, inputs.Gravity)) });
        return Math.Max(handbook.Peak, integrated.Peak);
    }

    // Only the last of its charges works: the rocket has fallen from apogee for its delay, without drag.
    private double? Late(string canopy, CanopyKind kind, OpeningInputs inputs, FlightResult flown)
    {
        var delays = Rocket.Firings.Where(f => f.Canopies.Any(c => c.Name == canopy)).Select(f => f.Trigger).OfType<AtApogee>().Select(t => t.Delay).ToArray();
        if (delays.Length < 2 || delays.Max() <= delays.Min() || flown.Apogee is not { } apogee) return null;
        var (level, falling) = (double.Hypot(apogee.Velocity.X - apogee.Wind.X, apogee.Velocity.Y - apogee.Wind.Y), Gravity * delays.Max());
        var (handbook, integrated) = CanopyLoad.Both(kind, inputs with { Speed = double.Hypot(level, falling), PathAngle = Math.Atan2(falling, level) });
        return Math.Max(handbook.Peak, integrated.Peak);
    }

    private static double? SnatchOf(Canopy canopy, Thrown thrown) =>
        canopy is { Mass: { } mass, Lines: { Strength: { } strength, Stretch: { } stretch, Length: { } length } lines } && mass < thrown.Mass
            ? Snatch.Force(thrown.Speed, Snatch.Stiffness(lines.Count, strength, stretch, length), mass, thrown.Mass - mass)
            : null;

    private IEnumerable<HarnessJerk> HarnessJerks()
    {
        for (var i = 0; i < Rocket.Separation.Harnesses.Count; i++)
        {
            var harness = Rocket.Separation.Harnesses[i];
            if (ChargeFirings.Where(f => harness.Spans(f.Charge.Joint)).MaxBy(f => f.Fired.KineticEnergy) is not { } firing) continue;
            SnapOut? snap = harness.Stretching is { } cord ? new(firing.Fired.SeparationSpeed, firing.Fired.Inputs.ForwardMass, firing.Fired.Inputs.AftMass, cord) : null;
            yield return new(i, harness, firing, snap);
        }
    }

    /// <summary>The joint that comes apart between the ends of a cord, in the order joints open; null where none does.</summary>
    /// <param name="cord">Index of the harness.</param>
    public int? JointOf(int cord) => RecoveryJoints.Where(Rocket.Separation.Harnesses[cord].Spans).Select(j => (int?)j).MinBy(j => ReleaseOf(j!.Value));

    private ValueList<int> RecoveryJoints => Resolving.RecoveryPlanner.Joints(Rocket);
}
