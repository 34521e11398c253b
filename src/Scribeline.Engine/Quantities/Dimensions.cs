using UnitsNet;
using UnitsNet.Units;

namespace Scribeline.Engine.Quantities;

/// <summary>
/// Every dimension with its unit words. The factors are UnitsNet's, but for milliampere-hours and foot-pounds, which it holds to ten digits only.
/// </summary>
internal static class Dimensions
{
    /// <summary>J in one ft·lbf: 0.3048 m times 0.45359237 kg times 9.80665 m/s², each exact by definition.</summary>
    private const double FootPound = 1.3558179483314004;

    internal static readonly Dimension[] All =
    [
        Make<Length, LengthUnit>("a length", "mm", "in", (v, u) => Length.From(v, u).Meters,
            (LengthUnit.Meter, "m metre metres meter meters"), (LengthUnit.Inch, "in inch inches in. \" ''"), (LengthUnit.Foot, "ft foot feet ft. '"),
            (LengthUnit.Millimeter, "mm"), (LengthUnit.Centimeter, "cm"), (LengthUnit.Micrometer, "µm um micron microns"), (LengthUnit.Mil, "mil thou mils"),
            (LengthUnit.Kilometer, "km"), (LengthUnit.Mile, "mi mile miles"), (LengthUnit.Yard, "yd yard yards"), (LengthUnit.Microinch, "µin uin")),
        Make<Mass, MassUnit>("a mass", "g", "oz", (v, u) => Mass.From(v, u).Kilograms,
            (MassUnit.Kilogram, "kg kilogram kilograms"), (MassUnit.Gram, "g gram grams"), (MassUnit.Milligram, "mg"), (MassUnit.Pound, "lb lbs lb. pound pounds lbm"),
            (MassUnit.Ounce, "oz oz. ounce ounces"), (MassUnit.Grain, "grain grains")),
        Make<Angle, AngleUnit>("an angle", "°", "°", (v, u) => Angle.From(v, u).Radians,
            (AngleUnit.Radian, "rad"), (AngleUnit.Degree, "° deg degree degrees"), (AngleUnit.Arcminute, "arcmin '"), (AngleUnit.Arcsecond, "arcsec \" ''"),
            (AngleUnit.Revolution, "turn turns")),
        Make<Speed, SpeedUnit>("a speed", "m/s", "ft/s", (v, u) => Speed.From(v, u).MetersPerSecond,
            (SpeedUnit.MeterPerSecond, "m/s"), (SpeedUnit.KilometerPerHour, "km/h kph"), (SpeedUnit.MilePerHour, "mph"), (SpeedUnit.FootPerSecond, "ft/s fps"),
            (SpeedUnit.Knot, "kn kt kts knot knots")),
        Make<Duration, DurationUnit>("a time", "s", "s", (v, u) => Duration.From(v, u).Seconds,
            (DurationUnit.Second, "s sec secs second seconds"), (DurationUnit.Millisecond, "ms"), (DurationUnit.Minute, "min minute minutes"),
            (DurationUnit.Hour, "h hour hours hr")),
        Make<Force, ForceUnit>("a force", "N", "lbf", (v, u) => Force.From(v, u).Newtons,
            (ForceUnit.Newton, "N newton newtons"), (ForceUnit.Kilonewton, "kN"), (ForceUnit.PoundForce, "lbf"), (ForceUnit.OunceForce, "ozf"),
            (ForceUnit.KilogramForce, "kgf")),
        Make<Pressure, PressureUnit>("a pressure", "hPa", "psi", (v, u) => Pressure.From(v, u).Pascals,
            (PressureUnit.Pascal, "Pa"), (PressureUnit.Hectopascal, "hPa mbar millibar"), (PressureUnit.Kilopascal, "kPa"), (PressureUnit.Megapascal, "MPa N/mm2"),
            (PressureUnit.Gigapascal, "GPa"), (PressureUnit.Bar, "bar"), (PressureUnit.PoundForcePerSquareInch, "psi lbf/in2"),
            (PressureUnit.KilopoundForcePerSquareInch, "ksi"), (PressureUnit.InchOfMercury, "inHg"), (PressureUnit.MillimeterOfMercury, "mmHg"),
            (PressureUnit.Atmosphere, "atm")),
        Make<Temperature, TemperatureUnit>("a temperature", "°C", "°F", (v, u) => Temperature.From(v, u).Kelvins,
            (TemperatureUnit.Kelvin, "K"), (TemperatureUnit.DegreeCelsius, "°C C degC"), (TemperatureUnit.DegreeFahrenheit, "°F F degF")),
        Make<Volume, VolumeUnit>("a volume", "cm³", "in³", (v, u) => Volume.From(v, u).CubicMeters,
            (VolumeUnit.CubicMeter, "m³ m^3"), (VolumeUnit.Liter, "L litre litres liter liters"), (VolumeUnit.Milliliter, "mL"),
            (VolumeUnit.CubicCentimeter, "cm³ cm^3 cc"), (VolumeUnit.CubicMillimeter, "mm³ mm^3"), (VolumeUnit.CubicInch, "in³ in^3"),
            (VolumeUnit.CubicFoot, "ft³ ft^3")),
        Make<Area, AreaUnit>("an area", "cm²", "in²", (v, u) => Area.From(v, u).SquareMeters,
            (AreaUnit.SquareMeter, "m² m^2"), (AreaUnit.SquareCentimeter, "cm² cm^2"), (AreaUnit.SquareMillimeter, "mm² mm^2"),
            (AreaUnit.SquareInch, "in² in^2"), (AreaUnit.SquareFoot, "ft² ft^2")),
        Make<ElectricPotential, ElectricPotentialUnit>("a voltage", "V", "V", (v, u) => ElectricPotential.From(v, u).Volts,
            (ElectricPotentialUnit.Volt, "V volt volts"), (ElectricPotentialUnit.Millivolt, "mV")),
        Make<ElectricResistance, ElectricResistanceUnit>("a resistance", "Ω", "Ω", (v, u) => ElectricResistance.From(v, u).Ohms,
            (ElectricResistanceUnit.Ohm, "Ω ohm ohms"), (ElectricResistanceUnit.Milliohm, "mΩ mohm"), (ElectricResistanceUnit.Kiloohm, "kΩ kohm")),
        Make<ElectricCurrent, ElectricCurrentUnit>("a current", "A", "A", (v, u) => ElectricCurrent.From(v, u).Amperes,
            (ElectricCurrentUnit.Ampere, "A amp amps"), (ElectricCurrentUnit.Milliampere, "mA"), (ElectricCurrentUnit.Microampere, "µA uA")),
        Make<ElectricCharge, ElectricChargeUnit>("an electric charge", "mAh", "mAh", (v, u) => v * u switch { ElectricChargeUnit.MilliampereHour => 3.6, ElectricChargeUnit.AmpereHour => 3600, _ => 1 },
            (ElectricChargeUnit.Coulomb, "As"), (ElectricChargeUnit.MilliampereHour, "mAh"), (ElectricChargeUnit.AmpereHour, "Ah")),
        Make<Energy, EnergyUnit>("an energy", "J", "ft·lbf", (v, u) => u == EnergyUnit.FootPound ? v * FootPound : Energy.From(v, u).Joules,
            (EnergyUnit.Joule, "J joule joules"), (EnergyUnit.Kilojoule, "kJ"), (EnergyUnit.Millijoule, "mJ"), (EnergyUnit.FootPound, "ft·lbf ft-lbf ft*lbf ft_lbf"),
            (EnergyUnit.WattHour, "Wh")),
        Make<Density, DensityUnit>("a density", "kg/m³", "lb/ft³", (v, u) => Density.From(v, u).KilogramsPerCubicMeter,
            (DensityUnit.KilogramPerCubicMeter, "kg/m³ kg/m^3"), (DensityUnit.GramPerCubicCentimeter, "g/cm³ g/cm^3 g/cc"),
            (DensityUnit.PoundPerCubicFoot, "lb/ft³ lb/ft^3"), (DensityUnit.PoundPerCubicInch, "lb/in³ lb/in^3")),
        Make<Frequency, FrequencyUnit>("a frequency", "Hz", "Hz", (v, u) => Frequency.From(v, u).Hertz,
            (FrequencyUnit.Hertz, "Hz 1/s"), (FrequencyUnit.Kilohertz, "kHz")),
        Make<RotationalSpeed, RotationalSpeedUnit>("a rate of turn", "°/s", "°/s", (v, u) => RotationalSpeed.From(v, u).RadiansPerSecond,
            (RotationalSpeedUnit.RadianPerSecond, "rad/s"), (RotationalSpeedUnit.DegreePerSecond, "°/s deg/s"), (RotationalSpeedUnit.RevolutionPerMinute, "rpm"),
            (RotationalSpeedUnit.RevolutionPerSecond, "turn/s")),
        Make<LinearDensity, LinearDensityUnit>("a mass per length", "g/m", "lb/ft", (v, u) => LinearDensity.From(v, u).KilogramsPerMeter,
            (LinearDensityUnit.KilogramPerMeter, "kg/m"), (LinearDensityUnit.GramPerMeter, "g/m"), (LinearDensityUnit.PoundPerFoot, "lb/ft"),
            (LinearDensityUnit.GramPerFoot, "g/ft")),
        Make<AreaDensity, AreaDensityUnit>("a mass per area", "g/m²", "g/m²", (v, u) => AreaDensity.From(v, u).KilogramsPerSquareMeter,
            (AreaDensityUnit.KilogramPerSquareMeter, "kg/m² kg/m^2"), (AreaDensityUnit.GramPerSquareMeter, "g/m² g/m^2 gsm")),
        Make<Acceleration, AccelerationUnit>("an acceleration", "m/s²", "ft/s²", (v, u) => Acceleration.From(v, u).MetersPerSecondSquared,
            (AccelerationUnit.MeterPerSecondSquared, "m/s² m/s^2"), (AccelerationUnit.FootPerSecondSquared, "ft/s² ft/s^2"),
            (AccelerationUnit.StandardGravity, "gn")),
        Make<Ratio, RatioUnit>("a plain number", "", "", (v, u) => Ratio.From(v, u).DecimalFractions,
            (RatioUnit.DecimalFraction, " calibre calibres caliber calibers"), (RatioUnit.Percent, "% percent")),
    ];

    internal static readonly Dictionary<Type, Dimension> ByQuantity = All.ToDictionary(d => d.Quantity);

    private static Dimension Make<TQuantity, TUnit>(
        string name, string metric, string inch, Func<double, TUnit, double> toSi, params (TUnit Unit, string Words)[] units)
        where TQuantity : struct, IQuantity
        where TUnit : struct, Enum =>
        new(name, typeof(TQuantity), metric, inch, units.Select(u =>
        {
            // Factors of plain multiples are taken at one; only temperatures have an offset zero.
            var words = u.Words.Split(' ');
            var zero = toSi(0, u.Unit);
            return new UnitOfMeasure(words[0], Tidy(toSi(1, u.Unit) - zero), zero, words[1..].Select(w => w.Replace('_', ' ')).ToValueList());
        }).ToValueList());

    // UnitsNet's kelvins of one Fahrenheit degree above and at zero differ from 5/9 in the last digits.
    private static double Tidy(double factor) => Math.Abs(factor - (5.0 / 9)) < 1e-9 ? 5.0 / 9 : Math.Abs(factor - 1) < 1e-9 ? 1 : factor;
}
