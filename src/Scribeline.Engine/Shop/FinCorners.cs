using Scribeline.Engine.Airframe;
using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Shop;

/// <summary>The corners of a fin's outline, to draw it and to cut it.</summary>
public static class FinCorners
{
    private const int CurveSteps = 96;

    /// <summary>Corners from the root leading edge round the tip to the root trailing edge; an ellipse in short chords.</summary>
    public static ValueList<FinCorner> Of(FinOutline outline) => outline switch
    {
        TrapezoidFin { Tip: > 0 } t => [new(0, 0), new(t.Sweep, t.Span), new(t.Sweep + t.Tip, t.Span), new(t.Root, 0)],
        TrapezoidFin t => [new(0, 0), new(t.Sweep, t.Span), new(t.Root, 0)],
        EllipticalFin e => Enumerable.Range(0, CurveSteps + 1).Select(i => Math.PI * i / CurveSteps)
            .Select(a => new FinCorner(e.Root / 2 * (1 - Math.Cos(a)), e.Span * Math.Sin(a))).ToValueList(),
        FreeFin f => f.Corners,
        _ => throw new ArgumentException($"unknown outline {outline.GetType().Name}", nameof(outline)),
    };
}
