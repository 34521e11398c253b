using Scribeline.Engine.Airframe;

namespace Scribeline.Engine.Aerodynamics;

/// <summary>What the build-ups need of an outer shape, worked out once. SI units.</summary>
internal sealed class RocketGeometry
{
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
        BaseDiameter = shape.Body[^1].RearDiameter;
    }

    public OuterShape Shape { get; }

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
