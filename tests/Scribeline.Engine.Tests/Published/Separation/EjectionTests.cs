using System.Globalization;
using Scribeline.Engine.Separation;
using Scribeline.Engine.Tests.Published.Flight;
using static Scribeline.Engine.Tests.Published.Separation.EjectionCases;

namespace Scribeline.Engine.Tests.Published.Separation;

/// <summary>Two ejections integrated independently, to four figures, and the closed forms they tend to.</summary>
public class EjectionTests
{
    private static readonly EjectionInputs Ideal = B with
    {
        PinForce = 0,
        StaticFriction = 0,
        SlidingFriction = 0,
        HeatTransfer = 0,
        VentArea = 0,
        FlameSpread = 0,
    };

    [Fact]
    public void Closed_forms_of_instant_burning()
    {
        var bay = new RigidBay(B);
        Holds("S2.01", bay.Temperature);
        Holds("S2.02", bay.GaugePressure / 1000);
        Holds("S2.03", bay.HeatRatio);
        Holds("S2.04", bay.PressureAtEnd / 1000);
        Holds("S2.05", bay.NetWork);
        Holds("S2.06", bay.Speed);
        Holds("S2.07", new RigidBay(B with { Powder = Powder.Customary with { HeatRatio = 1.4 } }).GaugePressure / 1000);
        Holds("S2.07", StaticCharge.GaugePressure(B.ChargeMass, B.FreeVolume) / 1000);
        Holds("S2.08", bay.SpeedAtConstantPressure);
        Holds("S2.26", 1000 * bay.CoolingTime);
    }

    [Fact]
    public void Main_bay_at_sea_level()
    {
        var e = B.Fire();
        Holds("S2.09", 1000 * e.ReleaseTime!.Value);
        Holds("S2.10", e.Peak.Pressure / 1000);
        Holds("S2.11", e.PeakTemperature);
        Holds("S2.12", 1000 * e.PartingTime!.Value);
        Holds("S2.13", e.PartingSpeed);
        Holds("S2.14", e.At(e.PartingTime.Value).Pressure / 1000);
        Holds("S2.15", e.SeparationSpeed);
        Assert.Equal(9.086e-3, e.BurnoutTime!.Value, 1e-6);
        Assert.Equal(7.106e-3, e.Peak.Time, 3e-5);
        Holds("S2.24", e.PartingSpeed * B.ForwardShare);
        Holds("S2.25", StretchingCord.Linear(1, 1.0 / 20e3, 1).PeakTension(B.ReducedMass * e.PartingSpeed * e.PartingSpeed / 2));
    }

    [Fact]
    public void Drogue_bay_at_3000_m()
    {
        var e = C.Fire();
        Holds("S2.16", 1000 * e.ReleaseTime!.Value);
        Holds("S2.17", e.Peak.Pressure / 1000);
        Holds("S2.18", e.PeakTemperature);
        Holds("S2.19", 1000 * e.PartingTime!.Value);
        Holds("S2.20", e.PartingSpeed);
        Holds("S2.21", e.At(e.PartingTime.Value).Pressure / 1000);
        Holds("S2.22", e.SeparationSpeed);
    }

    [Fact]
    public void A_small_charge_leaves_the_pins_whole()
    {
        var e = (B with { ChargeMass = 0.50e-3 }).Fire();
        Assert.False(e.Parted);
        Assert.Null(e.ReleaseTime);
        Assert.Equal(0, e.SeparationSpeed);
        Holds("S2.23", e.Peak.Pressure / 1000);
    }

    [Theory]
    [InlineData("b")]
    [InlineData("c")]
    public void The_whole_history_agrees(string letter)
    {
        var e = (letter == "b" ? B : C).Fire(beyond: true);
        foreach (var f in FlightChecks.Lines($"separation-trace-{letter}.csv"))
        {
            var row = f.Select(x => double.Parse(x, CultureInfo.InvariantCulture)).ToArray();
            var at = e.At(row[0] / 1000);

            // Rounding of the printed figures, and of the event times within a fast change.
            Assert.Equal(row[1], 1000 * at.Travel, 2e-4 + (1e-4 * row[1]));
            Assert.Equal(row[2], at.Speed, 2e-4 + (2e-4 * row[2]));
            Assert.Equal(row[3], at.Pressure / 1000, 1e-3 * row[3]);
            Assert.Equal(row[4], at.Temperature, 5e-4 * row[4]);
            Assert.Equal(row[5], at.Burnt, 2e-5);
        }
    }

    [Fact]
    public void What_is_left_once_the_gas_is_out_changes_the_speed_by_less_than_a_thousandth()
    {
        foreach (var inputs in (EjectionInputs[])[B, C])
        {
            var (cut, whole) = (inputs.Fire(), inputs.Fire(beyond: true));
            Assert.True(cut.End < whole.End);
            Assert.Equal(whole.SeparationSpeed, cut.SeparationSpeed, 1e-3 * whole.SeparationSpeed);
        }
    }

    /// <summary>Speed at the end of the stroke, m/s, and greatest pressure, kPa, of case B with one thing changed.</summary>
    [Fact]
    public void Sensitivities_agree()
    {
        (EjectionInputs Inputs, double Speed, double Peak)[] cases =
        [
            (B with { HeatTransfer = 0 }, 14.37, 289.0),
            (B with { HeatTransfer = 500 }, 13.00, 275.6),
            (B with { VentArea = 100e-6 }, 13.28, 277.7),
            (B with { Powder = Powder.Customary.Slower() }, 13.88, 278.1),
            (B with { Powder = Powder.Customary with { GrainRadius = 0.3e-3 } }, 13.70, 265.1),
            (B with { ChargeMass = 1.5e-3 }, 11.80, 242.7),
            (B with { ChargeMass = 3e-3 }, 17.33, 364.5),
            (B with { PinForce = 800 }, 13.91, 288.5),
            (B with { AftMass = double.PositiveInfinity }, 11.83, 286.8),
            (B with { Powder = Powder.ClosedVessel }, 23.12, 535.9),
            (B with { AmbientPressure = 47_181, AmbientTemperature = 249.15 }, 13.80, double.NaN),
        ];
        foreach (var (inputs, speed, peak) in cases)
        {
            var e = inputs.Fire();
            Assert.Equal(speed, e.PartingSpeed, 0.006);
            if (!double.IsNaN(peak)) Assert.Equal(peak, e.Peak.Pressure / 1000, 0.06);
        }
    }

    /// <summary>Burning at once, without friction, loss or leak: the isentropic stroke in closed form.</summary>
    [Fact]
    public void An_instant_adiabatic_charge_drives_a_free_piston_as_the_closed_form_says()
    {
        var fast = Ideal with { Powder = Powder.Customary with { BurnRate = 1e3 } };
        Assert.Equal(Value("S2.06"), fast.Fire().PartingSpeed, 0.001 * Value("S2.06"));
    }

    /// <summary>A bay that cannot grow holds the pressure of its mixture.</summary>
    [Fact]
    public void A_bay_that_cannot_grow_reaches_the_pressure_of_its_mixture()
    {
        var held = Ideal with { PinForce = double.PositiveInfinity };
        Assert.Equal(Value("S2.02"), held.Fire().PeakGauge / 1000, 1e-5 * Value("S2.02"));
    }
}
