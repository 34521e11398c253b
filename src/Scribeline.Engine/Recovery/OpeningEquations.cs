using Scribeline.Engine.Flight;
using Scribeline.Engine.Numerics;

namespace Scribeline.Engine.Recovery;

/// <summary>
/// A mass under a canopy that fills: (m + m_a) V' = m g - ½ρ|V|V [CdS(t) + CdS_body] - V m_a', CdS(t) = [(√b - √a) τ^(j/2) + √a]² between
/// two drag areas a and b (Ludtke, AIAA 73-477, 1973, and NSWC TR 86-142, 1986, from memory). State: speed along, speed down, fall, work of
/// canopy, body and weight.
/// </summary>
internal readonly struct OpeningEquations(OpeningInputs inputs, double start, double fillTime, double from, double to, bool straight) : IOdeSystem
{
    public const int Along = 0, Down = 1, Fall = 2, CanopyWork = 3, BodyWork = 4, WeightWork = 5, Size = 6;

    public int Dimension => Size;

    /// <summary>Drag area of the canopy, m², and its rate of change, m²/s.</summary>
    public (double Area, double Rate) Canopy(double time)
    {
        if (fillTime <= 0) return (to, 0);
        var tau = Math.Clamp((time - start) / fillTime, 0, 1);
        if (straight) return (from + ((to - from) * tau), (to - from) / fillTime);
        var (a, b, k) = (Math.Sqrt(from), Math.Sqrt(to), inputs.GrowthExponent / 2);
        var area = Inflation.Grown(from, to, tau, inputs.GrowthExponent);

        // A ribbon canopy's growth is infinitely fast at first, for no time at all.
        var rate = (b - a) * k * Math.Pow(Math.Max(tau, 1e-9), k - 1) / fillTime;
        return (area, 2 * Math.Sqrt(area) * rate);
    }

    public void Derivative(double time, ReadOnlySpan<double> y, Span<double> rate)
    {
        var (area, growth) = Canopy(time);
        var (added, addedRate) = AddedMass(area, growth);
        var speed = double.Hypot(y[Along], y[Down]);
        var (canopy, body) = (inputs.Density / 2 * speed * speed * area, inputs.Density / 2 * speed * speed * inputs.BodyDragArea);
        var slowing = speed > 0 ? ((canopy + body) / speed) + addedRate : 0;
        rate[Along] = -slowing * y[Along] / (inputs.Mass + added);
        rate[Down] = ((inputs.Mass * inputs.Gravity) - (slowing * y[Down])) / (inputs.Mass + added);
        rate[Fall] = y[Down];
        rate[CanopyWork] = canopy * speed;
        rate[BodyWork] = body * speed;
        rate[WeightWork] = inputs.Mass * inputs.Gravity * y[Down];
    }

    /// <summary>Pull of the canopy with the air it carries, N.</summary>
    public double Force(double time, ReadOnlySpan<double> y)
    {
        var (area, growth) = Canopy(time);
        var speed = double.Hypot(y[Along], y[Down]);
        var drag = inputs.Density / 2 * speed * speed * area;
        if (inputs.AddedMass == 0 || speed == 0) return drag;
        Span<double> rate = stackalloc double[Size];
        Derivative(time, y, rate);
        var (added, addedRate) = AddedMass(area, growth);
        return drag + (addedRate * speed) + (added * ((y[Along] * rate[Along]) + (y[Down] * rate[Down])) / speed);
    }

    // The inflated radius grows as the root of the drag area.
    private (double Mass, double Rate) AddedMass(double area, double growth)
    {
        if (inputs.AddedMass == 0) return (0, 0);
        var full = inputs.AddedMass * inputs.Density * 4 / 3 * Math.PI * Math.Pow(inputs.Projected * inputs.NominalDiameter / 2, 3);
        var share = area / inputs.DragArea;
        return (full * Math.Pow(share, 1.5), full * 1.5 * Math.Sqrt(share) * growth / inputs.DragArea);
    }
}
