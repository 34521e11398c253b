using Scribeline.Engine.Airframe;

namespace Scribeline.Engine.Aerodynamics;

/// <summary>What the build-ups need of an outer shape, worked out once. SI units.</summary>
internal sealed class RocketGeometry
{
    private readonly Lazy<NoseLoads>? lazyNose;

    public RocketGeometry(OuterShape shape)
    {
        Shape = shape;
        Diameter = shape.ReferenceDiameter;
        Area = shape.ReferenceArea;
        Length = shape.Length;
        Sections = [.. shape.Body.Select(s => (s, BodyIntegrals.Of(s)))];
        foreach (var (_, s) in Sections)
            Body = new(Body.Volume + s.Volume, Body.WettedArea + s.WettedArea, Body.PlanformArea + s.PlanformArea, Body.PlanformMoment + s.PlanformMoment);
        Fins = [.. shape.Fins.Select(f => new FinGeometry(f, Length)).Where(f => f.Planform.Area > 0)];
        var nose = shape.Body[0];
        if (nose.FrontDiameter == 0 && nose.RearDiameter > 0)
        {
            var cylinder = shape.Body.Skip(1).TakeWhile(s => s.FrontDiameter == s.RearDiameter).Sum(s => s.Length);
            lazyNose = new(() => new(nose, cylinder));
        }
        BaseDiameter = shape.Body[^1].RearDiameter;
    }

    public OuterShape Shape { get; }

    /// <summary>Supersonic loads of a nose that closes to a point; null without one.</summary>
    public NoseLoads? Nose => lazyNose?.Value;

    public double Diameter { get; }

    public double Area { get; }

    public double Length { get; }

    public double BaseDiameter { get; }

    public double BaseArea => Math.PI * BaseDiameter * BaseDiameter / 4;

    public IReadOnlyList<(BodySection Section, BodyIntegrals Integrals)> Sections { get; }

    public BodyIntegrals Body { get; }

    public IReadOnlyList<FinGeometry> Fins { get; }
}

/// <summary>A fin set with its integrals.</summary>
internal sealed class FinGeometry
{
    public FinGeometry(FinSet fins, double bodyLength)
    {
        Set = fins;
        Planform = FinPlanform.Of(fins.Outline);
        Tau = fins.BodyRadius / (fins.BodyRadius + Planform.Span);
        Section = FinSection.Of(fins, Planform);
        Afterbody = Math.Max(0, bodyLength - fins.RootLeadingEdge - Planform.RootChord);
    }

    public FinSet Set { get; }

    public FinPlanform Planform { get; }

    /// <summary>Body radius over semi-span from the axis.</summary>
    public double Tau { get; }

    public FinSection Section { get; }

    /// <summary>Body behind the root chord, m.</summary>
    public double Afterbody { get; }
}

/// <summary>Shock-expansion loads of a nose and the cylinder behind it, over Mach number.</summary>
internal sealed class NoseLoads
{
    /// <summary>First Mach number the method is asked for.</summary>
    public const double First = 1.25;

    private static readonly double[] Machs = [First, 1.4, 1.6, 1.8, 2, 2.3, 2.6, 3, 3.5, 4, 5, 6];
    private readonly Curve slope;
    private readonly Curve centre;
    private readonly Curve carry;
    private readonly Curve carryCentre;
    private readonly Curve drag;

    /// <summary>Works the method out at a dozen Mach numbers.</summary>
    public NoseLoads(BodySection nose, double cylinder)
    {
        ShockExpansionLoad[] loads = [.. Machs.Select(m => ShockExpansion.Of(nose, cylinder, m))];
        Curve Over(Func<ShockExpansionLoad, double> value) => new(Machs, [.. loads.Select(value)]);
        slope = Over(l => l.NoseSlope);
        centre = Over(l => l.NoseCentre);
        carry = Over(l => l.CarryOver);
        carryCentre = Over(l => l.CarryOverCentre);
        drag = Over(l => l.Drag);
    }

    /// <summary>Loads at a Mach number, held at the ends.</summary>
    public ShockExpansionLoad At(double mach) =>
        new(slope.At(mach), centre.At(mach), carry.At(mach), carryCentre.At(mach), drag.At(mach));
}
