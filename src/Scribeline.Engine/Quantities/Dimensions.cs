using UnitsNet;

namespace Scribeline.Engine.Quantities;

/// <summary>
/// Every dimension with its unit words and what one unit is in SI. The figures are the definitions of NIST SP 811 (2008), appendix B.8,
/// where exact; a test holds each to UnitsNet, whose quantities mark the dimensions. They are written out here because asking UnitsNet for
/// all of them takes longer than reading a whole design.
/// </summary>
internal static class Dimensions
{
    private const double Inch = 0.0254, Foot = 0.3048, Pound = 0.45359237, PoundForce = 4.4482216152605, Gravity = 9.80665;

    internal static readonly Dimension[] All =
    [
        Make<Length>("a length", "mm", "in",
            (1, "m metre metres meter meters"), (Inch, "in inch inches in. \" ''"), (Foot, "ft foot feet ft. '"), (1e-3, "mm"), (1e-2, "cm"),
            (1e-6, "µm um micron microns"), (Inch / 1000, "mil thou mils"), (1000, "km"), (1609.344, "mi mile miles"), (0.9144, "yd yard yards"),
            (Inch / 1e6, "µin uin")),
        Make<Mass>("a mass", "g", "oz",
            (1, "kg kilogram kilograms"), (1e-3, "g gram grams"), (1e-6, "mg"), (Pound, "lb lbs lb. pound pounds lbm"),
            (Pound / 16, "oz oz. ounce ounces"), (Pound / 7000, "grain grains")),
        Make<Angle>("an angle", "°", "°",
            (1, "rad"), (Math.PI / 180, "° deg degree degrees"), (Math.PI / 10800, "arcmin '"), (Math.PI / 648000, "arcsec \" ''"),
            (2 * Math.PI, "turn turns")),
        Make<Speed>("a speed", "m/s", "ft/s",
            (1, "m/s"), (1 / 3.6, "km/h kph"), (0.44704, "mph"), (Foot, "ft/s fps"), (1852.0 / 3600, "kn kt kts knot knots")),
        Make<Duration>("a time", "s", "s",
            (1, "s sec secs second seconds"), (1e-3, "ms"), (60, "min minute minutes"), (3600, "h hour hours hr")),
        Make<Force>("a force", "N", "lbf",
            (1, "N newton newtons"), (1000, "kN"), (PoundForce, "lbf"), (PoundForce / 16, "ozf"), (Gravity, "kgf")),
        Make<Pressure>("a pressure", "hPa", "psi",
            (1, "Pa"), (100, "hPa mbar millibar"), (1000, "kPa"), (1e6, "MPa N/mm2"), (1e9, "GPa"), (1e5, "bar"),
            (PoundForce / (Inch * Inch), "psi lbf/in2"), (1000 * PoundForce / (Inch * Inch), "ksi"),

            // Conventional mercury, 13 595.1 kg/m³ at standard gravity.
            (25.4 * 13.5951 * Gravity, "inHg"), (13.5951 * Gravity, "mmHg"), (101325, "atm")),
        new("a temperature", typeof(Temperature), "°C", "°F",
            [new("K", 1, 0, []), new("°C", 1, 273.15, ["C", "degC"]), new("°F", 5.0 / 9, 459.67 * 5 / 9, ["F", "degF"])]),
        Make<Volume>("a volume", "cm³", "in³",
            (1, "m³ m^3"), (1e-3, "L litre litres liter liters"), (1e-6, "mL"), (1e-6, "cm³ cm^3 cc"), (1e-9, "mm³ mm^3"),
            (Inch * Inch * Inch, "in³ in^3"), (Foot * Foot * Foot, "ft³ ft^3")),
        Make<Area>("an area", "cm²", "in²",
            (1, "m² m^2"), (1e-4, "cm² cm^2"), (1e-6, "mm² mm^2"), (Inch * Inch, "in² in^2"), (Foot * Foot, "ft² ft^2")),
        Make<ElectricPotential>("a voltage", "V", "V", (1, "V volt volts"), (1e-3, "mV")),
        Make<ElectricResistance>("a resistance", "Ω", "Ω", (1, "Ω ohm ohms"), (1e-3, "mΩ mohm"), (1e3, "kΩ kohm")),
        Make<ElectricCurrent>("a current", "A", "A", (1, "A amp amps"), (1e-3, "mA"), (1e-6, "µA uA")),
        Make<ElectricCharge>("an electric charge", "mAh", "mAh", (1, "As"), (3.6, "mAh"), (3600, "Ah")),
        Make<Energy>("an energy", "J", "ft·lbf",
            (1, "J joule joules"), (1000, "kJ"), (1e-3, "mJ"), (Foot * PoundForce, "ft·lbf ft-lbf ft*lbf ft_lbf"), (3600, "Wh")),
        Make<Density>("a density", "kg/m³", "lb/ft³",
            (1, "kg/m³ kg/m^3"), (1000, "g/cm³ g/cm^3 g/cc"), (Pound / (Foot * Foot * Foot), "lb/ft³ lb/ft^3"), (Pound / (Inch * Inch * Inch), "lb/in³ lb/in^3")),
        Make<Frequency>("a frequency", "Hz", "Hz", (1, "Hz 1/s"), (1000, "kHz")),
        Make<RotationalSpeed>("a rate of turn", "°/s", "°/s",
            (1, "rad/s"), (Math.PI / 180, "°/s deg/s"), (Math.PI / 30, "rpm"), (2 * Math.PI, "turn/s")),
        Make<LinearDensity>("a mass per length", "g/m", "lb/ft",
            (1, "kg/m"), (1e-3, "g/m"), (Pound / Foot, "lb/ft"), (1e-3 / Foot, "g/ft")),
        Make<AreaDensity>("a mass per area", "g/m²", "g/m²", (1, "kg/m² kg/m^2"), (1e-3, "g/m² g/m^2 gsm")),
        Make<Acceleration>("an acceleration", "m/s²", "ft/s²", (1, "m/s² m/s^2"), (Foot, "ft/s² ft/s^2"), (Gravity, "gn")),
        Make<Ratio>("a plain number", "", "", (1, " calibre calibres caliber calibers"), (0.01, "% percent")),
    ];

    internal static readonly Dictionary<Type, Dimension> ByQuantity = All.ToDictionary(d => d.Quantity);

    private static Dimension Make<TQuantity>(string name, string metric, string inch, params (double Factor, string Words)[] units)
        where TQuantity : struct, IQuantity =>
        new(name, typeof(TQuantity), metric, inch, units.Select(u =>
        {
            // Words are parted by spaces; a low line stands for a space within one.
            var words = u.Words.Split(' ');
            return new UnitOfMeasure(words[0], u.Factor, 0, words[1..].Select(w => w.Replace('_', ' ')).ToValueList());
        }).ToValueList());
}
