using Scribeline.Engine.Numerics;
using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Air;

/// <summary>
/// The air of one day above one pad: from the station pressure, temperature and humidity there, a lapse rate, and a table of the
/// air aloft where there is one. Hydrostatic, in closed form by layers.
/// Without a table, temperature falls at the lapse rate to 216.65 K or 20 km, stays so to 20 km, and then goes by the standard
/// atmosphere. With a table, temperature is linear between its rows (and from the pad to the first row), the pressures given in it
/// are met, and the rule above continues from the last row. Rows at or below the pad are left out.
/// Humidity enters as virtual temperature at the pad, decaying upward with a scale height of 2 km (common practice).
/// Below the pad the lowest layer is extended.
/// Sources: U.S. Standard Atmosphere 1976 (column), WMO-No. 8 (humidity).
/// </summary>
public sealed record DayAir
{
    private readonly AirColumn column;

    /// <param name="elevation">Of the pad, geometric m above sea.</param>
    /// <param name="stationPressure">At the pad, Pa; never reduced to sea level (see <see cref="Altimetry.StationPressure"/>).</param>
    /// <param name="temperature">At the pad, K.</param>
    /// <param name="relativeHumidity">At the pad, 0 to 1.</param>
    /// <param name="lapseRate">K per geopotential metre, positive when colder above.</param>
    /// <param name="latitude">Geodetic, rad, to relate geometric height to geopotential by WGS 84 gravity; null for the standard relation.</param>
    /// <param name="aloft">Rows ascending in height, or empty.</param>
    /// <exception cref="ArgumentException">Not an atmosphere: see <see cref="AirProblems"/> for the ranges.</exception>
    public DayAir(
        double elevation,
        double stationPressure,
        double temperature,
        double relativeHumidity,
        double lapseRate = AirConstants.LapseRate,
        double? latitude = null,
        ValueList<SoundingLevel>? aloft = null)
    {
        (Elevation, StationPressure, Temperature, RelativeHumidity) = (elevation, stationPressure, temperature, relativeHumidity);
        (LapseRate, Latitude, Aloft) = (lapseRate, latitude, aloft ?? []);
        var problems = AirProblems.In(elevation, stationPressure, temperature, relativeHumidity, lapseRate, latitude, Aloft);
        if (problems.Count > 0) throw new ArgumentException(problems[0].Message);
        Geopotential = latitude is { } phi ? Geopotential.AtLatitude(phi) : Geopotential.Standard;
        column = new AirColumn(DayLevels.Of(this));
    }

    /// <summary>Elevation of the pad, geometric m above sea.</summary>
    public double Elevation { get; }

    /// <summary>Pressure at the pad, Pa.</summary>
    public double StationPressure { get; }

    /// <summary>Temperature at the pad, K.</summary>
    public double Temperature { get; }

    /// <summary>Relative humidity at the pad, 0 to 1.</summary>
    public double RelativeHumidity { get; }

    /// <summary>Lapse rate, K per geopotential metre.</summary>
    public double LapseRate { get; }

    /// <summary>Geodetic latitude, rad, or null for the standard relation of heights.</summary>
    public double? Latitude { get; }

    /// <summary>The air aloft, ascending in height.</summary>
    public ValueList<SoundingLevel> Aloft { get; }

    /// <summary>The relation of geometric to geopotential height in use.</summary>
    public Geopotential Geopotential { get; }

    /// <summary>The standard day at an elevation: its own pressure and temperature, dry.</summary>
    /// <param name="elevation">Geometric m above sea.</param>
    public static DayAir Standard(double elevation = 0)
    {
        var pad = StandardAtmosphere.At<Scalar>(elevation);
        return new(elevation, pad.Pressure, pad.Temperature, 0);
    }

    /// <summary>Air at a geometric height, m above sea.</summary>
    public AirState<T> At<T>(T heightAboveSea)
        where T : struct, IReal<T> => column.At(Geopotential.Height(heightAboveSea));

    /// <summary>Geometric height, m above sea, at which this day has the given pressure, Pa.</summary>
    public T HeightAtPressure<T>(T pressure)
        where T : struct, IReal<T> => Geopotential.Geometric(column.HeightAt(pressure));

    /// <inheritdoc/>
    public bool Equals(DayAir? other) =>
        other is not null && Elevation.Equals(other.Elevation) && StationPressure.Equals(other.StationPressure)
        && Temperature.Equals(other.Temperature) && RelativeHumidity.Equals(other.RelativeHumidity)
        && LapseRate.Equals(other.LapseRate) && Nullable.Equals(Latitude, other.Latitude) && Aloft.Equals(other.Aloft);

    /// <inheritdoc/>
    public override int GetHashCode() =>
        HashCode.Combine(Elevation, StationPressure, Temperature, RelativeHumidity, LapseRate, Latitude, Aloft);
}
