using CsCheck;
using Scribeline.Engine.Air;
using Scribeline.Engine.Flight;
using Scribeline.Engine.Numerics;

namespace Scribeline.Engine.Tests.Properties.Flight;

/// <summary>
/// What must not matter does not. Steps are chosen by the size of the numbers in a state, so a turned or moved flight takes other steps;
/// hence a tight tolerance.
/// </summary>
public sealed class SymmetryProperties
{
    private static readonly FlightInputs Plain = SampleRocket.Inputs with { Options = new(RelativeTolerance: 1e-11, Coriolis: false) };

    [Fact]
    public void Equal_inputs_give_the_same_flight_to_the_last_bit()
    {
        FlightResult a = SampleRocket.Fly(SampleRocket.Inputs), b = SampleRocket.Fly(SampleRocket.Inputs with { });
        Assert.Equal(a.Events, b.Events);
        Assert.Equal(a.Landings, b.Landings);
        Assert.Equal(a.Maxima, b.Maxima);
        Assert.Equal(a.Effort, b.Effort);
    }

    [Fact]
    public void A_mirrored_wind_gives_a_mirrored_flight()
    {
        FlightResult a = SampleRocket.Fly(At(0.4, 0.9)), b = SampleRocket.Fly(At(-0.4, -0.9));
        foreach ((FlightEvent x, FlightEvent y) in a.Events.Zip(b.Events))
        {
            Assert.Equal(x.Kind, y.Kind);
            Assert.Equal(x.Time, y.Time, 1e-6);
            Assert.Equal(x.At.Position.X, -y.At.Position.X, 1e-5);
            Assert.Equal(x.At.Position.Y, y.At.Position.Y, 1e-5);
            Assert.Equal(x.At.Height, y.At.Height, 1e-5);
        }
    }

    [Fact]
    public void Turning_the_day_turns_the_flight() => Gen.Double[-3, 3].Sample(
        turn =>
        {
            Landing a = SampleRocket.Fly(At(0.4, 0.9)).Landings[0], b = SampleRocket.Fly(At(0.4 + turn, 0.9 + turn)).Landings[0];
            (double s, double c) = Math.SinCos(turn);
            Assert.Equal(c * a.East + s * a.North, b.East, 1e-5);
            Assert.Equal(c * a.North - s * a.East, b.North, 1e-5);
        },
        iter: 3);

    [Fact]
    public void Moving_the_origin_moves_the_flight()
    {
        RocketModel model = new(Plain, SampleRocket.Table);
        Quaternion<Scalar> attitude = RailAttitude.Of(1.45, 0.4, 0.1);
        FlightResult a = From(0, 0), b = From(1234.5, -777);
        Assert.Equal(a.Apogee!.Height, b.Apogee!.Height, 1e-6);
        Assert.Equal(a.Landings[0].East + 1234.5, b.Landings[0].East, 1e-5);
        Assert.Equal(a.Landings[0].North - 777, b.Landings[0].North, 1e-5);

        FlightResult From(double east, double north) => FlightComputation<RocketModel>.FromAir(
            model, model.Knots(), 0.3,
            new(new(east, north, 5), attitude.ToFrame(new(25, 0, 0)), attitude, Vector3<Scalar>.Zero, 200),
            SampleRocket.DualDeployment, Plain.Options);
    }

    [Fact]
    public void Finer_steps_change_nothing_that_matters()
    {
        FlightResult nominal = SampleRocket.Fly(SampleRocket.Inputs);
        FlightResult fine = SampleRocket.Fly(SampleRocket.Inputs with { Options = new(RelativeTolerance: 1e-11) });
        FlightResult coarse = SampleRocket.Fly(SampleRocket.Inputs with { Options = FlightOptions.OneOfMany });
        Assert.Equal(fine.Apogee!.Height, nominal.Apogee!.Height, 1e-3);
        Assert.Equal(fine.Landings[0].East, nominal.Landings[0].East, 1e-2);
        Assert.Equal(fine.Apogee.Height, coarse.Apogee!.Height, 0.1);
        Assert.Equal(fine.Landings[0].East, coarse.Landings[0].East, 1);
    }

    /// <summary>Before it is put back: less than 1e-9 over boost and coast at a tolerance of 1e-9.</summary>
    [Fact]
    public void Norm_of_the_attitude_hardly_drifts()
    {
        RocketModel model = new(Plain, SampleRocket.Table);
        Quaternion<Scalar> attitude = RailAttitude.Of(1.5, 0.3, 0);
        Scalar[] packed = new Scalar[FlightState<Scalar>.Size];
        new FlightState<Scalar>(new(0, 0, 5), attitude.ToFrame(new(25, 0, 0)), attitude, Vector3<Scalar>.Zero, 200).Write(packed);
        double[] y = [.. packed.Select(x => x.Value)];
        FlightRecorder recorder = new(1e-9, FlightTolerance.Whole(model.TotalImpulse), 20_000);
        WholeMotion<RocketModel> boost = new(new(model), FlightPhase.Boost, true, default, default);
        recorder.Run(boost, 0.3, 2.7, y, model.Knots(), 0);
        recorder.Run(boost with { Phase = FlightPhase.Coast, Burning = false }, 2.7, 20, y, [], 0);
        Assert.Equal(1, new Quaternion<Scalar>(y[6], y[7], y[8], y[9]).Norm, 1e-9);
    }

    private static FlightInputs At(double azimuth, double from) => Plain with
    {
        Rail = Plain.Rail with { Azimuth = azimuth },
        Wind = new(new PowerLawWind(6, from, 1.0 / 7)),
    };
}
