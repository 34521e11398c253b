using Scribeline.Engine.Flight;
using static Scribeline.Engine.Tests.Published.Flight.FlightChecks;

namespace Scribeline.Engine.Tests.Published.Flight;

/// <summary>
/// Flights with closed forms, or computed independently at 1e-12, flown through the real computation. Tolerance a millionth unless said.
/// </summary>
public sealed class ClosedFormFlights
{
    private const double G = 9.80665;
    private static readonly BenchModel Vacuum = new() { GravityAtPad = G };
    private static readonly BenchModel Body = new() { GravityAtPad = G, Density = 1.225, Cd = 0.5, BurntMass = 5 };
    private static readonly BenchModel Boosted = Body with { Curve = BenchModel.Constant(500, 3) };

    private static readonly BenchModel Rocket = new()
    {
        GravityAtPad = G,
        Density = 1.225,
        Cd = 0.5,
        BurntMass = 4.5,
        Propellant = 1.5,
        Curve = BenchModel.Constant(980.665, 3),
    };

    [Fact]
    public void Vacuum_arc()
    {
        FlightResult flight = Flights.Thrown(Vacuum, 100, 80 * Math.PI / 180);
        Holds("V01", flight.Apogee!.Height);
        Holds("V02", flight.Apogee.Time);
        Holds("V03", flight.Landings[0].East);
    }

    [Fact]
    public void Coast_and_fall_back_with_drag()
    {
        FlightResult flight = Flights.Thrown(Body, 200, Math.PI / 2);
        Holds("V06", flight.Apogee!.Height);
        Holds("V07", flight.Apogee.Time);
        Holds("V08", flight.At(5).Speed);
        Holds("V09", flight.At(5).Height);
        Holds("V10", flight.Landings[0].Speed);
        Holds("V11", flight.Landings[0].At.Time - flight.Apogee.Time);
    }

    [Fact]
    public void Boost_of_constant_mass()
    {
        FlightResult flight = Flights.Launched(Boosted);
        Holds("V12", flight.At(1).Speed);
        Holds("V13", flight.At(1).Height);
        Holds("V14", flight.At(2).Speed);
        Holds("V15", flight.At(2).Height);
        Holds("V16", flight.Burnout!.Speed);
        Holds("V17", flight.Burnout.Height);
    }

    [Fact]
    public void Boost_then_coast()
    {
        FlightResult flight = Flights.Launched(Body with { Curve = BenchModel.Constant(500, 2) });
        Holds("V18", flight.Apogee!.Height);
        Holds("V19", flight.Apogee.Time);
    }

    [Fact]
    public void Rocket_without_gravity_or_drag() =>
        Holds("V20", Boost(Rocket with { GravityAtPad = 0, Density = 0 }).Burnout!.Speed);

    [Fact]
    public void Rocket_with_gravity()
    {
        FlightResult flight = Boost(Rocket with { Density = 0 });
        Holds("V21", flight.Burnout!.Speed);
        Holds("V22", flight.Burnout.Height);
    }

    [Fact]
    public void Rocket_with_drag_without_gravity() => Holds("V23", Boost(Rocket with { GravityAtPad = 0 }).Burnout!.Speed);

    [Fact]
    public void Rocket_with_everything()
    {
        FlightResult flight = Flights.Launched(Rocket);
        Holds("V24", flight.Burnout!.Speed);
        Holds("V25", flight.Apogee!.Height);
        Holds("V26", flight.Apogee.Time);
    }

    [Fact]
    public void Rocket_in_the_standard_atmosphere()
    {
        FlightResult flight = Flights.Launched(Rocket with { Density = null });
        Holds("V27", flight.Burnout!.Speed);
        Holds("V28", flight.Apogee!.Height);
        Holds("V29", flight.Apogee.Time);
    }

    [Fact]
    public void Oblique_flight_with_and_without_wind()
    {
        foreach (double wind in (double[])[0, 5])
        {
            FlightResult flight = Flights.Thrown(Body with { BurntMass = 4.5, EastWind = wind }, 150, 84 * Math.PI / 180);
            int row = wind == 0 ? 43 : 48;
            Holds($"V{row}", flight.Apogee!.Time);
            Holds($"V{row + 1}", flight.Apogee.Position.X);
            Holds($"V{row + 2}", flight.Apogee.Height);
            Holds($"V{row + 3}", flight.Landings[0].At.Time);
            Holds($"V{row + 4}", flight.Landings[0].East);
        }
    }

    [Fact]
    public void Energy_is_kept_without_drag_and_thrust()
    {
        FlightResult flight = Flights.Thrown(Vacuum with { GravityLaw = h => G * Math.Pow(6.371e6 / (6.371e6 + h), 2) }, 300, 1.4);
        foreach (FlightSample s in flight.Series(0.5))
        {
            double energy = 0.5 * s.Speed * s.Speed - G * 6.371e6 * 6.371e6 / (6.371e6 + s.Height) + G * 6.371e6;
            Assert.Equal(0.5 * 300 * 300, energy, 45_000 * 1e-9);
        }
    }

    /// <summary>Vertical launch in vacuum: −(2/3) ω cos φ v0³/g² at apogee, twice that on return.</summary>
    [Theory]
    [InlineData(3000, 33, -6.05090)]
    [InlineData(3000, 45, -5.10169)]
    [InlineData(3000, 52, -4.44192)]
    [InlineData(1000, 45, -0.98182)]
    public void Coriolis_drift(double height, double latitude, double east)
    {
        double phi = latitude * Math.PI / 180, v0 = Math.Sqrt(2 * G * height);
        BenchModel model = Vacuum with { EarthRate = new(0, 7.292115e-5 * Math.Cos(phi), 7.292115e-5 * Math.Sin(phi)) };
        FlightResult flight = Flights.Thrown(model, v0, Math.PI / 2);

        // First order in ω; the second is some 1e-6 of it times the time of flight.
        Assert.Equal(east, flight.Apogee!.Position.X, 1e-4 * Math.Abs(east));
        Assert.Equal(2 * east, flight.Landings[0].East, 2e-4 * Math.Abs(east));
    }

    private static FlightResult Boost(BenchModel model)
    {
        FlightResult flight = Flights.Launched(model, Flights.Tight with { MaximumSteps = 1000 });
        Assert.NotNull(flight.Burnout);
        return flight;
    }
}
