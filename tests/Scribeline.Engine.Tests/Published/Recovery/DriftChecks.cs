using Scribeline.Engine.Air;
using Scribeline.Engine.Recovery;
using static System.Math;

namespace Scribeline.Engine.Tests.Published.Recovery;

/// <summary>The drift of recovery-checks.csv: apogee 1500 m, main at 200 m, 25 and 6 m/s, each wind from the south unless said.</summary>
internal static class DriftChecks
{
    private const double South = PI;

    public static double Computed(string id) => id switch
    {
        "8.1" => North(new PowerLawWind(1, South, 0)),
        "8.2" => North(new PowerLawWind(6, South, 0)),
        "8.3" => HandDrift.Through(new PowerLawWind(6, South, 0), 0, 1500, _ => 6).North,
        "8.4" => North(Seventh),
        "8.5" => HandDrift.Through(Seventh, 0, 1500, _ => 6, 512).North,
        "8.6" => WindVector.Speed(Seventh.At<Engine.Numerics.Scalar>(1500)),
        "8.7" => North(new LayeredWind([new(0, 3, South), new(1500, 9, South)], 0)),
        "8.8" => double.Hypot(Layers.East, Layers.North),
        "8.9" => double.RadiansToDegrees(Atan2(Layers.East, Layers.North)),
        "8.10" => Thin(6, 0),
        "8.11" => Thin(1, 1500),
        "8.12" => North(new LogWind(4, South, 0.03, TopHeight: 1e5)),
        "8.13" => LocalExponent(),
        _ => SteadyDescent.WindLag(25),
    };

    private static PowerLawWind Seventh => new(4, South, 1.0 / 7, TopHeight: 1e5);

    // Many thin layers: the power law is steep near the ground, where it is held below 2 m.
    private static double North(Wind wind) =>
        HandDrift.Through(wind, 200, 1500, _ => 25).North + HandDrift.Through(wind, 0, 200, _ => 6, 512).North;

    private static (double East, double North) Layers
    {
        get
        {
            (double Low, double High, double Speed, double Toward, double Rate)[] layers = [(0, 200, 5, 90, 6), (200, 800, 8, 60, 25), (800, 1500, 12, 30, 25)];
            double east = 0, north = 0;
            foreach (var l in layers)
            {
                var through = HandDrift.Through(new PowerLawWind(l.Speed, double.DegreesToRadians(l.Toward) + PI, 0), l.Low, l.High, _ => l.Rate);
                (east, north) = (east + through.East, north + through.North);
            }

            return (east, north);
        }
    }

    // Rates given at sea level, density falling by exp(-h/10 400 m).
    private static double Thin(double wind, double ground)
    {
        Func<double, double> At(double rate) => z => rate * Exp((z + ground) / (2 * SteadyDescent.DensityHeight));
        var air = new PowerLawWind(wind, South, 0);
        return HandDrift.Through(air, 200, 1500, At(25)).North + HandDrift.Through(air, 0, 200, At(6)).North;
    }

    private static double LocalExponent()
    {
        var wind = new LogWind(4, South, 0.03);
        double At(double z) => WindVector.Speed(wind.At<Engine.Numerics.Scalar>(z));
        return Log(At(10.001) / At(9.999)) / Log(10.001 / 9.999);
    }
}
