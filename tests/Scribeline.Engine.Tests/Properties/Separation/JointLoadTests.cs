using CsCheck;
using Scribeline.Engine.Air;
using Scribeline.Engine.Airframe;
using Scribeline.Engine.Flight;
using Scribeline.Engine.Numerics;
using Scribeline.Engine.Resolving;
using Scribeline.Engine.Separation;
using Scribeline.Engine.Tests.Properties.Resolving;
using FlightSampleRocket = Scribeline.Engine.Tests.Properties.Flight.SampleRocket;

namespace Scribeline.Engine.Tests.Properties.Separation;

/// <summary>Newton's third law between the pieces, and the symmetry of the body.</summary>
public class JointLoadTests
{
    private static readonly Vehicle Vehicle = AirframeResolver.Resolve(SampleDesign.TypedRocket).Vehicle!;
    private static readonly MotorLoad Motor = Vehicle.Load(FlightSampleRocket.Motor)!;
    private static readonly OuterShape Shape = Vehicle.Outside(FlightSampleRocket.Motor.NozzleExitDiameter ?? 0);
    private static readonly JointLoads Loads = new(Vehicle, Vehicle.Masses(), Motor, Shape, 1.2, 2.3e7);

    private static FlightResult Fly(double wind, double azimuth) => new FlightInputs(
        Shape, Vehicle.History(Vehicle.Whole, Motor), FlightSampleRocket.Motor, DayAir.Standard(100), new(new PowerLawWind(wind, azimuth, 1.0 / 7)),
        45 * Math.PI / 180, new LaunchRail(3, 86 * Math.PI / 180, 0.3, 1.2, 1.7, 0.05), RecoveryPlan.Ballistic).Fly();

    private static LoadMoment Moment(FlightResult flight, double time)
    {
        var curve = FlightSampleRocket.Motor.Curve;
        return LoadMoment.Of(flight, time, Math.Min(1, curve.ImpulseAt<Scalar>(time) / curve.TotalImpulse));
    }

    // The forces on what is behind must be those on what is ahead, turned round: all pieces together then have the rocket's acceleration.
    [Fact]
    public void Forces_of_all_pieces_sum_to_the_acceleration_of_the_rocket()
    {
        var flight = Fly(8, 5);
        foreach (var time in new[] { 0.4, 0.6, 1.0, 1.5, 2.5, 2.71, 3.0, 4.0, 6.0, 9.0 })
        {
            var moment = Moment(flight, time);
            var scale = (moment.Sample.Mass * moment.Sample.ProperAcceleration.Length) + moment.Sample.DynamicPressure * Shape.ReferenceArea;
            if (moment.Sample.Phase is not (FlightPhase.Boost or FlightPhase.Coast)) continue;
            for (var joint = 0; joint < Vehicle.Joints.Count; joint++)
            {
                JointForce ahead = Loads.At(joint, moment), behind = Loads.FromBehind(joint, moment);
                Assert.Equal(ahead.Tension, behind.Tension, 1e-9 * scale);
                Assert.Equal(ahead.ShearY, behind.ShearY, 1e-3 * scale);
                Assert.Equal(ahead.ShearZ, behind.ShearZ, 1e-3 * scale);

                // Jet damping and the cubic read of the aerodynamic table are what does not close.
                Assert.Equal(ahead.BendingY, behind.BendingY, 2e-3 * scale);
                Assert.Equal(ahead.BendingZ, behind.BendingZ, 2e-3 * scale);
            }
        }
    }

    // Without angle to the air the closed form of drag separation holds: (m_f/M)(D − T) − D_f.
    [Fact]
    public void A_straight_flight_gives_the_closed_form()
    {
        var flight = Fly(0, 0);
        foreach (var time in new[] { 1.0, 2.0, 3.0, 5.0 })
        {
            var moment = Moment(flight, time);
            var s = moment.Sample;
            var force = Loads.At(0, moment);
            var nose = Vehicle.Masses().Of(new Piece(0, 0)).Mass;
            var dragAhead = -force.Tension + EarlyParting.OfDrag(nose, s.Mass, s.Drag, 0, s.Thrust);
            Assert.InRange(dragAhead, 0.02 * s.Drag, 0.6 * s.Drag);
            Assert.True(s.Thrust == 0 || force.Tension < 0, "thrust pushes the joint together");
        }
    }

    [Fact]
    public void A_mirrored_wind_gives_mirrored_forces()
    {
        FlightResult east = Fly(6, 0.3 + Math.PI / 2), west = Fly(6, 0.3 - Math.PI / 2);
        foreach (var time in new[] { 0.8, 1.5, 3.0 })
        {
            for (var joint = 0; joint < Vehicle.Joints.Count; joint++)
            {
                JointForce a = Loads.At(joint, Moment(east, time)), b = Loads.At(joint, Moment(west, time));
                Assert.Equal(a.Tension, b.Tension, 0.02 * (1 + Math.Abs(a.Tension)));
                Assert.Equal(a.Bending, b.Bending, 0.05 * (1 + a.Bending));
            }
        }
    }

    [Fact]
    public void More_drag_behind_pulls_harder() =>
        Gen.Select(Gen.Double[0.1, 5], Gen.Double[0.1, 5], Gen.Double[0, 300], Gen.Double[0, 300], Gen.Double[0.1, 50]).Sample((ahead, behind, d, e, more) =>
            EarlyParting.OfDrag(ahead, ahead + behind, d + e + more, d) > EarlyParting.OfDrag(ahead, ahead + behind, d + e, d));
}
