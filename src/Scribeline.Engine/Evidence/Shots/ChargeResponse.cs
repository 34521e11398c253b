using Scribeline.Engine.Numerics;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Separation;

namespace Scribeline.Engine.Evidence.Shots;

/// <summary>
/// What one load does in one bay if its powder gives more or less than the customary impetus: natural logarithms of push, speed and
/// pressures over that of the effectiveness, which is the share of the impetus. Beyond the ends they go on straight.
/// </summary>
public sealed record ChargeResponse
{
    // Effectiveness e^-1.5 to e^1.5, a fifth to four and a half times: the curves bend so little that seven places serve.
    private static readonly ValueList<double> Places = [-1.5, -1, -0.5, 0, 0.5, 1, 1.5];

    private readonly MonotoneCubic push, held, needed;
    private readonly MonotoneCubic? speed, open;

    /// <param name="places">ln of the effectiveness, ascending.</param>
    /// <param name="push">ln of the push on the joint held shut, N; ascending.</param>
    /// <param name="speed">ln of the speed of the pieces from one another, m/s.</param>
    /// <param name="open">ln of the greatest gauge pressure as the joint opens, Pa.</param>
    /// <param name="held">ln of the same with the joint held shut.</param>
    public ChargeResponse(ValueList<double> places, ValueList<double> push, ValueList<double>? speed, ValueList<double>? open, ValueList<double> held)
    {
        (this.push, this.held, needed) = (new(places, push), new(places, held), new(push, places));
        (this.speed, this.open) = (speed is null ? null : new(places, speed), open is null ? null : new(places, open));
    }

    /// <summary>Fires a load at each place with the joint held shut: speeds and open pressures cannot be asked of it.</summary>
    /// <param name="inputs">The load with the customary impetus.</param>
    public static ChargeResponse Shut(EjectionInputs inputs)
    {
        var shut = Gauges(inputs);
        return new(Places, shut.Select(p => Math.Log(p * inputs.Area)).ToValueList(), null, null, shut.Select(p => Math.Log(p)).ToValueList());
    }

    /// <summary>Fires a load at each place, with the joint held shut and free to open.</summary>
    /// <param name="inputs">The load with the customary impetus.</param>
    public static ChargeResponse Of(EjectionInputs inputs)
    {
        var shut = Gauges(inputs);
        var free = Places.Select((x, i) => Freed(At(inputs, x), shut[i] * inputs.Area).Fire(1e-7)).ToArray();
        return new(
            Places,
            shut.Select(p => Math.Log(p * inputs.Area)).ToValueList(),
            free.Select(f => Math.Log(Math.Max(f.SeparationSpeed, 1e-3))).ToValueList(),
            free.Select(f => Math.Log(f.PeakGauge)).ToValueList(),
            shut.Select(p => Math.Log(p)).ToValueList());
    }

    /// <summary>ln of the push on the joint held shut, N.</summary>
    /// <param name="x">ln of the effectiveness.</param>
    public double Push(double x) => Beyond(push, x);

    /// <summary>ln of the speed of the pieces from one another, m/s.</summary>
    /// <inheritdoc cref="Push"/>
    public double Speed(double x) => Beyond(speed ?? throw Unasked(), x);

    /// <summary>ln of the greatest gauge pressure, Pa.</summary>
    /// <param name="x">ln of the effectiveness.</param>
    /// <param name="letGo">Whether the joint let go.</param>
    public double Pressure(double x, bool letGo) => Beyond(letGo ? open ?? throw Unasked() : held, x);

    /// <summary>ln of the effectiveness that gives a push, and what a small change of ln push changes it by.</summary>
    /// <param name="logPush">ln of the push, N.</param>
    public (double Needed, double Slope) Needed(double logPush) => (Beyond(needed, logPush), needed.SlopeAt(new Scalar(Math.Clamp(logPush, needed.Knots[0], needed.Knots[^1]))));

    private static double[] Gauges(EjectionInputs inputs) => [.. Places.Select(x => (At(inputs, x) with { PinForce = double.PositiveInfinity }).Fire(1e-7).PeakGauge)];

    private static InvalidOperationException Unasked() => new("Asked of a joint that was only held shut.");

    private static EjectionInputs At(EjectionInputs inputs, double x) => inputs with { Powder = inputs.Powder.Scaled(Math.Exp(x)) };

    // How hard the pins hold changes the speed by some thousandths once they let go: here they always do, so that the curve has no step.
    private static EjectionInputs Freed(EjectionInputs inputs, double push)
    {
        var friction = Math.Min(inputs.StaticFriction, 0.5 * push);
        return inputs with { StaticFriction = friction, SlidingFriction = Math.Min(inputs.SlidingFriction, friction), PinForce = Math.Min(inputs.PinForce, Math.Max(0, (0.9 * push) - friction)) };
    }

    private static double Beyond(MonotoneCubic curve, double x)
    {
        var inside = Math.Clamp(x, curve.Knots[0], curve.Knots[^1]);
        var value = (double)curve.At(new Scalar(inside));
        return x == inside ? value : value + ((x - inside) * curve.SlopeAt(new Scalar(inside)));
    }
}
