using Scribeline.Engine.Airframe;
using Scribeline.Engine.Flight;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Resolving;

namespace Scribeline.Engine.Questions;

/// <summary>The numbers of a rocket that its flight depends on, in one row, so that they can be added and scaled.</summary>
internal sealed class RocketFigures
{
    private const int OfMass = 16, Guides = OfMass, Impulse = Guides + 2, Air = Impulse + 1, Plan = Air + 3;

    private readonly double[] values;

    private RocketFigures(double[] values) => this.values = values;

    /// <summary>The numbers of a rocket, in which may have failed what has failed in the one flown.</summary>
    /// <param name="drawn">The rocket.</param>
    /// <param name="nominal">The rocket as typed.</param>
    /// <param name="flown">The one flown: as typed, or with something failed.</param>
    /// <param name="aerodynamics">How the air treats the drawn rocket.</param>
    public static RocketFigures Of(Study drawn, Study nominal, Study flown, AeroFactors aerodynamics)
    {
        var factor = flown.Motor.Curve.TotalImpulse / nominal.Motor.Curve.TotalImpulse;
        var rocket = drawn == flown ? flown.Rocket : Failing(drawn.Rocket, nominal.Rocket, flown.Rocket);
        var plan = RecoveryPlanner.Plan(rocket, drawn.Shape, p => drawn.PieceProperties(p).Mass);
        var m = drawn.Vehicle.History(drawn.Vehicle.Whole, drawn.MotorLoad);
        var (r, i) = (m.Rigid, m.Rigid.Inertia);
        var impulse = drawn == flown ? drawn.Motor.Curve.TotalImpulse : factor * drawn.Motor.Curve.TotalImpulse;
        return new(
        [
            r.Mass, r.Station, r.OffsetY, r.OffsetZ, i.Xx, i.Yy, i.Zz, i.Xy, i.Xz, i.Yz,
            m.Propellant, m.GrainStation, m.GrainLength, m.OuterSquare, m.CoreSquare, m.CoreGrowth,
            drawn.Rail.ForwardGuide, drawn.Rail.AftGuide, impulse / flown.Motor.Curve.TotalImpulse,
            drawn.Rocket.DragScale * aerodynamics.Axial, aerodynamics.Normal, aerodynamics.CentreShift,
            .. plan.Pieces.SelectMany(p => (double[])[p.Mass, p.BodyDragArea]),
            .. plan.Actions.SelectMany(a => (double[])[.. Numbers(a.Trigger), .. a.Canopies.SelectMany(c => (double[])[c.DragArea, c.NominalDiameter])]),
        ]);
    }

    public RocketFigures Plus(RocketFigures other) => new([.. values.Zip(other.values, (a, b) => a + b)]);

    public RocketFigures Less(RocketFigures other) => new([.. values.Zip(other.values, (a, b) => a - b)]);

    public RocketFigures Times(double k) => new([.. values.Select(v => k * v)]);

    /// <summary>These with responses to draws added, each a first and a second order.</summary>
    public RocketFigures With(ReadOnlySpan<Response> responses, Func<string, double> drawn)
    {
        var sum = values.ToArray();
        foreach (var response in responses)
        {
            var z = drawn(response.At);
            for (var i = 0; i < sum.Length; i++) sum[i] += z * (response.First.values[i] + (z * response.Second.values[i]));
        }

        return new(sum);
    }

    /// <summary>The case of these numbers.</summary>
    /// <param name="inputs">The flight without perturbation.</param>
    public EnsembleCase Case(FlightInputs inputs)
    {
        var v = values;
        MassProperties rigid = new(v[0], v[1], v[2], v[3], new(v[4], v[5], v[6], v[7], v[8], v[9]), inputs.Mass.Rigid.Basis);
        var at = Plan;
        double Next() => v[at++];
        var pieces = inputs.Recovery.Pieces.Select(p => p with { Mass = Next(), BodyDragArea = Next() }).ToValueList();
        var actions = inputs.Recovery.Actions.Select(a => a with
        {
            Trigger = Trigger(a.Trigger, Next),
            Canopies = a.Canopies.Select(c => c with { DragArea = Next(), NominalDiameter = Next() }).ToValueList(),
        }).ToValueList();
        return new(
            new(rigid, v[10], v[11], v[12], v[13], v[14], v[15]),
            inputs.Rail with { ForwardGuide = v[Guides], AftGuide = v[Guides + 1] },
            inputs.Air, inputs.Wind, new(pieces, actions), v[Impulse], new(v[Air], v[Air + 1], v[Air + 2]));
    }

    // What is drawn of the firings stays drawn; what the failure changes is as the failure has it.
    private static Rocket Failing(Rocket drawn, Rocket nominal, Rocket flown) => drawn with
    {
        Firings = flown.Firings.Select(f =>
            nominal.Firings.FirstOrDefault(n => n.Name == f.Name) is { } was && was.Trigger == f.Trigger && drawn.Firings.FirstOrDefault(d => d.Name == f.Name) is { } now
                ? f with { Trigger = now.Trigger }
                : f).ToValueList(),
    };

    private static double[] Numbers(RecoveryTrigger trigger) => trigger switch
    {
        AtApogee a => [a.Delay],
        DescendingThrough d => [d.Height, d.Delay],
        AfterLiftOff l => [l.Time],
        AfterBurnout b => [b.Delay],
        _ => [],
    };

    private static RecoveryTrigger Trigger(RecoveryTrigger trigger, Func<double> next) => trigger switch
    {
        AtApogee => new AtApogee(Math.Max(next(), 0)),
        DescendingThrough => new DescendingThrough(next(), Math.Max(next(), 0)),
        AfterLiftOff => new AfterLiftOff(next()),
        AfterBurnout => new AfterBurnout(Math.Max(next(), 0)),
        _ => trigger,
    };
}
