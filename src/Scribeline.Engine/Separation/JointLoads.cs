using Scribeline.Engine.Airframe;
using Scribeline.Engine.Flight;
using Scribeline.Engine.Numerics;

namespace Scribeline.Engine.Separation;

/// <summary>
/// Forces in the joints of the whole rocket at a moment of its flight, by Newton and Euler for what is ahead of the joint: its mass times the
/// acceleration felt at its own balance, less what the air does to it. Gravity pulls on every part alike and drops out. On the rail this holds
/// for joints ahead of the forward guide.
/// Source: Beer and Johnston, Vector Mechanics for Engineers: Dynamics, plane and general motion of rigid bodies (from memory).
/// </summary>
public sealed class JointLoads
{
    private readonly AirLoads air;
    private readonly MassHistory[] ahead, behind;
    private readonly double[] station;
    private readonly double area;

    /// <param name="vehicle">Parts and joints.</param>
    /// <param name="masses">Their masses.</param>
    /// <param name="motor">The motor aboard.</param>
    /// <param name="shape">What the air sees.</param>
    /// <param name="mach">Greatest Mach number of the flight.</param>
    /// <param name="reynoldsPerMach">Reynolds number per metre at Mach 1.</param>
    public JointLoads(Vehicle vehicle, MassBreakdown masses, MotorLoad motor, OuterShape shape, double mach, double reynoldsPerMach)
        : this(vehicle, masses, motor, shape, AirLoads.Of(vehicle, shape, mach, reynoldsPerMach))
    {
    }

    internal JointLoads(Vehicle vehicle, MassBreakdown masses, MotorLoad motor, OuterShape shape, AirLoads air)
    {
        this.air = air;
        MassHistory Of(Piece piece) => MassHistory.Of(masses.Of(piece), piece.Has(vehicle.MotorPart) ? motor : null);
        ahead = [.. vehicle.Joints.Select(j => Of(new(0, j.Forward)))];
        behind = [.. vehicle.Joints.Select(j => Of(new(j.Aft, vehicle.Parts.Count - 1)))];
        station = [.. vehicle.Joints.Select(j => j.Break)];
        area = shape.ReferenceArea;
    }

    /// <summary>What a joint carries, from all that is ahead of it.</summary>
    /// <param name="joint">Index of the joint.</param>
    /// <param name="moment">The moment; the rocket whole.</param>
    public JointForce At(int joint, in LoadMoment moment)
    {
        var load = Air(moment, air.Ahead(joint, moment.Sample.Mach), station[joint]);
        var (force, turn) = Inertia(moment, ahead[joint], station[joint]);
        return new(-(force.X + load.Axial), force.Y - load.Y, force.Z - load.Z, turn.Y - load.TurnY, turn.Z - load.TurnZ);
    }

    /// <summary>What the tension of a joint is made of: −(mass · felt + air).</summary>
    /// <param name="joint">Index of the joint.</param>
    /// <param name="moment">The moment; the rocket whole.</param>
    /// <returns>Mass ahead, kg; acceleration it feels forwards along the axis, m/s²; drag of what is ahead, N.</returns>
    public (double Mass, double Felt, double Air) BalanceAt(int joint, in LoadMoment moment)
    {
        double mass = ahead[joint].At<Scalar>(moment.Burned).Mass;
        return (mass, Inertia(moment, ahead[joint], station[joint]).Force.X / mass, Air(moment, air.Ahead(joint, moment.Sample.Mach), station[joint]).Axial);
    }

    /// <summary>The same from all that is behind it, thrust included: a check, which differs by what the flight's forces do not close.</summary>
    /// <inheritdoc cref="At"/>
    public JointForce FromBehind(int joint, in LoadMoment moment)
    {
        var load = Air(moment, air.Whole(moment.Sample.Mach) - air.Ahead(joint, moment.Sample.Mach), station[joint]);
        var (force, turn) = Inertia(moment, behind[joint], station[joint]);
        return new(-(moment.Sample.Thrust - load.Axial - force.X), load.Y - force.Y, load.Z - force.Z, load.TurnY - turn.Y, load.TurnZ - turn.Z);
    }

    /// <summary>Mass times acceleration of a piece, and its rate of moment of momentum about a station.</summary>
    private static (Vector3<Scalar> Force, Vector3<Scalar> Turn) Inertia(in LoadMoment moment, MassHistory history, double about)
    {
        var s = moment.Sample;
        var mass = history.At<Scalar>(moment.Burned);
        Vector3<Scalar> arm = new(s.CentreOfMass - mass.Station, 0, 0), w = s.Rate;
        var felt = s.ProperAcceleration + Vector3<Scalar>.Cross(moment.Turning, arm) + Vector3<Scalar>.Cross(w, Vector3<Scalar>.Cross(w, arm));
        var force = mass.Mass * felt;
        Vector3<Scalar> momentum = new(mass.Axial * w.X, mass.Lateral * w.Y, mass.Lateral * w.Z);
        var turn = new Vector3<Scalar>(0, mass.Lateral * moment.Turning.Y, mass.Lateral * moment.Turning.Z)
            + Vector3<Scalar>.Cross(w, momentum) + Vector3<Scalar>.Cross(new(about - mass.Station, 0, 0), force);
        return (force, turn);
    }

    /// <summary>
    /// What the air does to some parts. Each component feels the cross flow where it stands, turning included; the normal force that the flown
    /// one has beyond these straight lines is the cross-flow of the body and lies along its side view.
    /// </summary>
    private PieceLoad Air(in LoadMoment moment, AirShare share, double about)
    {
        var s = moment.Sample;
        var whole = air.Whole(s.Mach);
        double on = s.Thrust > 0 ? 1 : 0, coefficient = whole.Axial - (on * whole.Relief);
        var axial = coefficient > 0 ? moment.Axial * (share.Axial - (on * share.Relief)) / coefficient : 0;
        if (!(s.Airspeed > 0)) return new(axial, 0, 0, 0, 0);

        double va = s.DynamicPressure * area / s.Airspeed, x = s.CentreOfMass;
        double cross = double.Hypot(moment.Flow.Y, moment.Flow.Z);
        var beyond = cross > 0 && whole.Side > 0 ? (s.NormalForce - (va * whole.Slope * cross)) / cross / whole.Side : 0;

        // Σ C (flow + ω × arm) and its first moment about the station; the arm of a component is x − X.
        double Across(double flow, double rate) =>
            -(va * ((share.Slope * flow) + (rate * ((x * share.Slope) - share.Slope1)))) - (beyond * share.Side * flow);
        double Turned(double flow, double rate) =>
            -(va * ((((about * share.Slope) - share.Slope1) * flow)
                + (rate * ((about * ((x * share.Slope) - share.Slope1)) - (x * share.Slope1) + share.Slope2))))
            - (beyond * ((about * share.Side) - share.Side1) * flow);
        return new(
            axial,
            Across(moment.Flow.Y, s.Rate.Z),
            Across(moment.Flow.Z, -s.Rate.Y),
            -Turned(moment.Flow.Z, -s.Rate.Y),
            Turned(moment.Flow.Y, s.Rate.Z));
    }

    private readonly record struct PieceLoad(double Axial, double Y, double Z, double TurnY, double TurnZ);
}
