using Scribeline.Engine.Flight;
using Scribeline.Engine.Numerics;

namespace Scribeline.Engine.Tests.Published.Flight;

/// <summary>Ways to fly a bench model through the real computation.</summary>
internal static class Flights
{
    /// <summary>Tight enough for checks to a millionth.</summary>
    public static FlightOptions Tight { get; } = new(RelativeTolerance: 1e-11);

    public static readonly Vector3<Scalar> Up = new(0, 0, 1);

    /// <summary>Nose along a direction, the scribe line as on a rail.</summary>
    public static Quaternion<Scalar> Nose(double elevation, double azimuth = Math.PI / 2) => RailAttitude.Of(elevation, azimuth, 0);

    /// <summary>Free flight of a body without motor from a height, along its nose, east of up.</summary>
    public static FlightResult Thrown(BenchModel model, double speed, double elevation, double height = 0, FlightOptions? options = null)
    {
        Quaternion<Scalar> attitude = Nose(elevation);
        FlightState<Scalar> state = new(
            new(0, 0, height), attitude.ToFrame(new(speed, 0, 0)), attitude, Vector3<Scalar>.Zero, 0);
        return FlightComputation<BenchModel>.FromAir(model, [], 0, state, RecoveryPlan.Ballistic, options ?? Tight);
    }

    /// <summary>From a rail so short that it does not matter, straight up.</summary>
    public static FlightResult Launched(BenchModel model, FlightOptions? options = null, double elevation = Math.PI / 2) =>
        FlightComputation<BenchModel>.FromRail(
            model, model.Knots, new RailGeometry(Vector3<Scalar>.Zero, Nose(elevation).ToFrame(new(1, 0, 0)), 0.5, 0.5, 0, 0),
            Nose(elevation), RecoveryPlan.Ballistic, options ?? Tight);

    /// <summary>A body without attitude from a height, falling at a speed.</summary>
    public static (DescentTrack<BenchModel> Track, FlightSample End) Dropped(
        BenchModel model, double mass, double dragArea, double height, double fallSpeed, double relative = 1e-11, List<FreedCanopy>? canopies = null)
    {
        DescentStart start = new(
            1, 0, 0, 0, [mass], 0, new(0, 0, height), new(0, 0, -fallSpeed), Quaternion<Scalar>.Identity, true, new FiringPlan([]),
            canopies ?? []);
        FlightOptions options = new(RelativeTolerance: relative, MaximumSteps: 1_000_000);
        DescentFlight<BenchModel> flight = new(model, [new FlightPiece("body", mass, dragArea)], start, options, new FlightLog());
        Assert.Null(flight.Fly());
        Assert.True(flight.Landed);
        return (flight.Track(), flight.Sample);
    }
}
