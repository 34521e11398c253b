using System.Globalization;
using System.Text;
using Scribeline.Engine.Flight;

namespace Scribeline.App.Commands;

/// <summary>The motion of every body as CSV: SI with units in the header, a step of 0.05 s, empty where a value has no meaning.</summary>
internal static class FlightCsv
{
    private const double Step = 0.05;

    private static readonly (string Name, Func<FlightSample, double> Value)[] Columns =
    [
        ("time_s", s => s.Time),
        ("east_m", s => s.Position.X),
        ("north_m", s => s.Position.Y),
        ("height_m", s => s.Height),
        ("altimeter_height_m", s => s.AltimeterHeight),
        ("velocity_east_m_s", s => s.Velocity.X),
        ("velocity_north_m_s", s => s.Velocity.Y),
        ("velocity_up_m_s", s => s.Velocity.Z),
        ("airspeed_m_s", s => s.Airspeed),
        ("mach", s => s.Mach),
        ("dynamic_pressure_Pa", s => s.DynamicPressure),
        ("angle_of_attack_rad", s => s.AngleOfAttack),
        ("tilt_rad", s => s.Tilt),
        ("roll_rate_rad_s", s => s.RollRate),
        ("proper_acceleration_m_s2", s => s.ProperAcceleration.Length),
        ("mass_kg", s => s.Mass),
        ("centre_of_mass_m", s => s.CentreOfMass),
        ("centre_of_pressure_m", s => s.CentreOfPressure),
        ("static_margin_cal", s => s.StaticMargin),
        ("thrust_N", s => s.Thrust),
        ("drag_N", s => s.Drag),
        ("normal_force_N", s => s.NormalForce),
    ];

    /// <summary>The whole file.</summary>
    public static string Of(FlightResult flight)
    {
        var text = new StringBuilder("body,phase,").AppendJoin(',', Columns.Select(c => c.Name)).Append('\n');
        foreach (var body in flight.Bodies)
        {
            var name = Quoted(string.Join(" + ", body.Pieces));
            foreach (var sample in flight.Series(Step, body.Index))
            {
                text.Append(name).Append(',').Append(sample.Phase);
                foreach (var (_, value) in Columns) text.Append(',').Append(Number(value(sample)));
                text.Append('\n');
            }
        }

        return text.ToString();
    }

    private static string Number(double value) => double.IsFinite(value) ? value.ToString("R", CultureInfo.InvariantCulture) : "";

    private static string Quoted(string text) =>
        text.AsSpan().ContainsAny(",\"\n\r") ? $"\"{text.Replace("\"", "\"\"", StringComparison.Ordinal)}\"" : text;
}
