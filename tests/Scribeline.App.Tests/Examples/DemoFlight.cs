using System.Globalization;
using System.Text;
using Scribeline.Engine.Design;
using Scribeline.Engine.Flight;
using Scribeline.Engine.Numerics;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Questions;
using Scribeline.Store;

namespace Scribeline.App.Tests.Examples;

/// <summary>
/// Makes the altimeter's file of Night Heron's invented first flight: the model flown with other drag, impulse and canopies than designed, then
/// written down by an invented altimeter with lag, noise, bias and gas of the charges. What was changed is the truth that a record must give back.
/// </summary>
internal static class DemoFlight
{
    public const double Drag = 1.12, Impulse = 0.97, Drogue = 1.10, Main = 0.93, PortLag = 0.030;

    private const double Before = 12, After = 20, Fine = 0.002, ClockAtIgnition = 12.5;

    /// <summary>The design with the weather of that day, and what else is typed.</summary>
    public static RocketDesign Design(string more = "")
    {
        var path = Path.Combine(AppContext.BaseDirectory, "examples", "night-heron", "rocket.yaml");
        var text = File.ReadAllText(path).Replace("fair-afternoon", "cool-morning", StringComparison.Ordinal);
        var reading = DesignFile.ReadText($"{text}\n{more}\n", path);
        Assert.Empty(reading.Problems);
        return reading.Design!;
    }

    /// <summary>Its study.</summary>
    public static Study Predicted() => Studies.Of(Design()).Nominal!;

    /// <summary>The flight as it truly was.</summary>
    public static FlightResult Flown(Study study)
    {
        var inputs = study.Flight.Inputs!;
        FlightCanopy Changed(FlightCanopy c) => c with { DragArea = c.DragArea * (c.Name == "Drogue" ? Drogue : Main) };
        return (inputs with
        {
            Factors = new(Impulse: Impulse, Drag: Drag),
            Recovery = inputs.Recovery with { Actions = inputs.Recovery.Actions.Select(a => a with { Canopies = a.Canopies.Select(Changed).ToValueList() }).ToValueList() },
        }).Fly(study.Aero);
    }

    /// <summary>The file.</summary>
    /// <param name="study">The design on that day.</param>
    /// <param name="noise">Factor on every error of the instrument but its lag; 0 for none.</param>
    public static string Record(Study study, double noise = 1)
    {
        var flight = Flown(study);
        DescentPath path = new(flight);
        RandomStream baro = new(7, "demo pressure"), shake = new(7, "demo acceleration"), supply = new(7, "demo supply");
        var text = new StringBuilder(string.Create(CultureInfo.InvariantCulture, $"""
            # Invented: no rocket flew this. Night Heron's first flight, made by flying its design with known changes in the weather of
            # examples/weather/cool-morning.yaml, and written down by an invented altimeter. The truth that a reading must give back:
            # drag {Drag} of that predicted, impulse {Impulse} of that printed, drag area of Drogue {Drogue} and of Main {Main} of that designed;
            # apogee {flight.Apogee!.Height:F1} m, {flight.Apogee.Time - path.LiftOff:F2} s after lift-off; greatest speed {path.Fastest:F1} m/s; landing after {path.End:F1} s.
            # Pressure {1000 * PortLag:F0} ms behind, noise 3 Pa; accelerometer 0.5 % too high, bias 0.3 m/s², noise 0.5 m/s²; gas of each charge for 0.1 s.

            """));
        text.Append("time_s,pressure_Pa,accel_mps2,battery_V,drogue_A_fired,drogue_B_fired,main_A_fired,main_B_fired\n");
        double[] fired = [.. ((string[])["Drogue A", "Drogue B", "Main A", "Main B"]).Select(c => flight.Events.First(e => e.Kind == FlightEventKind.Charge && e.Name.EndsWith(c, StringComparison.Ordinal)).Time)];
        var inside = study.Air.StationPressure;
        var next = -Before;
        for (var t = -Before; t < flight.End + After; t += Fine)
        {
            var height = t <= 0 ? 0 : path.HeightAt(t - path.LiftOff) - (t < flight.End ? path.HeightAt(-path.LiftOff) : 0);
            var outside = (double)study.Air.At<Scalar>(study.Air.Elevation + height).Pressure;
            inside += (outside - inside) * (1 - Math.Exp(-Fine / PortLag));
            if (t < next) continue;

            // Slower once it hangs under the drogue.
            next += t < flight.Apogee.Time + 6 ? 0.04 : 0.2;
            var felt = t <= 0 || t >= flight.End ? 9.80665 : t < flight.Apogee.Time ? flight.At(t).ProperAcceleration.X : 9.80665 + (noise * 4 * shake.Normal());
            var gas = fired.Any(f => t >= f && t < f + 0.1) ? 400 * noise : 0;
            var pressure = inside + gas + (noise * 3 * baro.Normal());
            var reading = (felt * (1 + (0.005 * noise))) + (noise * (0.3 + (0.5 * shake.Normal())));
            text.Append(string.Create(CultureInfo.InvariantCulture, $"{t + ClockAtIgnition:F2},{(noise > 0 ? Math.Round(pressure) : pressure)},{(noise > 0 ? Math.Round(reading, 2) : reading)},{4.12 + (0.01 * supply.Normal()):F2}"));
            foreach (var moment in fired) text.Append(t >= moment ? ",1" : ",0");
            text.Append('\n');
        }

        return text.ToString();
    }
}
