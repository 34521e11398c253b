using Scribeline.Engine.Airframe;

namespace Scribeline.Engine.Aerodynamics;

/// <summary>Axial force of one component at zero angle.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Coefficient">C_D on the reference area.</param>
public readonly record struct DragPart(string Name, double Coefficient);

/// <summary>What depends on the Reynolds number alone: incompressible friction and boundary layer.</summary>
/// <param name="Body">Smooth C_F of the body.</param>
/// <param name="Fins">Smooth C_F of each fin set.</param>
/// <param name="Protuberances">C_D of all protuberances, subsonic.</param>
internal readonly record struct ReynoldsPart(double Body, double[] Fins, double Protuberances);

/// <summary>What depends on the Mach number alone.</summary>
internal readonly record struct MachPart(
    double Mach,
    double Smooth,
    double Rough,
    double BodyForm,
    double[] FinForm,
    double Pressure,
    double FinPressure,
    double FinBase,
    double Subsonic,
    double HandbookBase,
    double HandbookShare,
    double ProtuberanceFactor);

/// <summary>
/// Zero-lift drag by components: friction of a fully turbulent layer on the rougher of smooth and rough wall, nose and transitions, fin edges
/// and thickness, base, protuberances. Each component's source is at its own class.
/// </summary>
internal sealed class DragBuildUp(RocketGeometry rocket)
{
    private readonly double bodyArea = rocket.Body.WettedArea / rocket.Area;
    private readonly double bodyRough = SkinFriction.Rough(rocket.Shape.Roughness, rocket.Length);
    private readonly double[] finArea = [.. rocket.Fins.Select(f => 2 * f.Set.Count * f.Planform.Area / rocket.Area)];
    private readonly double[] finFront = [.. rocket.Fins.Select(f => f.Set.Count * f.Set.Thickness * f.Planform.Span / rocket.Area)];
    private readonly double[] finRough = [.. rocket.Fins.Select(f => SkinFriction.Rough(rocket.Shape.Roughness, f.Planform.MeanChord))];
    private readonly double baseShare = rocket.BaseArea / rocket.Area;

    /// <summary>Share of the base the nozzle exit takes, 0 to 1.</summary>
    public double Opening { get; } =
        rocket.BaseArea > 0 ? 1 - BaseDrag.PowerOn(Math.PI / 4 * rocket.Shape.BaseOpening * rocket.Shape.BaseOpening, rocket.BaseArea) : 0;

    /// <summary>The Reynolds part at a Reynolds number per metre.</summary>
    public ReynoldsPart AtReynolds(double perMetre) => new(
        SkinFriction.Turbulent(perMetre * rocket.Length),
        [.. rocket.Fins.Select(f => SkinFriction.Turbulent(perMetre * f.Planform.MeanChord))],
        rocket.Shape.Protuberances.Sum(p => Protuberances.Drag(p, perMetre)) / rocket.Area);

    /// <summary>The Mach part.</summary>
    public MachPart AtMach(double mach)
    {
        var subsonic = 1 - Bridge.Step(mach, 0.8, 1.2);
        return new(
            mach,
            SkinFriction.Compressibility(mach),
            SkinFriction.RoughCompressibility(mach),
            1 + subsonic * (SkinFriction.BodyForm(rocket.Length / rocket.Diameter) - 1),
            [.. rocket.Fins.Select(f => 1 + subsonic * (SkinFriction.FinForm(f.Section.Thickness / f.Section.Chord) - 1))],
            BodyPressure(mach).Sum(p => p.Coefficient),
            FinPressure(mach).Sum(p => p.Coefficient),
            FinBaseDrag.Supersonic(mach),
            subsonic,
            BaseDrag.Handbook(mach),
            Bridge.Step(mach, 0.8, 1.1),
            Protuberances.MachFactor(mach));
    }

    /// <summary>C_D without thrust, and the part of it that full thrust takes away.</summary>
    public (double Off, double Relief) Total(in MachPart m, in ReynoldsPart r)
    {
        var body = BodyFriction(m, r);
        var sum = body + m.Pressure + m.FinPressure + r.Protuberances * m.ProtuberanceFactor;
        for (var i = 0; i < finArea.Length; i++) sum += FinFriction(m, r, i) + FinBase(m, r, i);
        var atBase = Base(m, body);
        return (sum + atBase, atBase * Opening);
    }

    /// <summary>The components one by one, thrust off.</summary>
    public IEnumerable<DragPart> Parts(double mach, double reynoldsPerMetre)
    {
        var (m, r) = (AtMach(mach), AtReynolds(reynoldsPerMetre));
        var body = BodyFriction(m, r);
        yield return new("body friction", body);
        for (var i = 0; i < finArea.Length; i++) yield return new($"{rocket.Fins[i].Set.Name} friction", FinFriction(m, r, i));
        foreach (var part in BodyPressure(mach)) yield return part;
        foreach (var part in FinPressure(mach)) yield return part;
        for (var i = 0; i < finArea.Length; i++) yield return new($"{rocket.Fins[i].Set.Name} trailing edge", FinBase(m, r, i));
        yield return new("base", Base(m, body));
        yield return new("protuberances", r.Protuberances * m.ProtuberanceFactor);
    }

    private double BodyFriction(in MachPart m, in ReynoldsPart r) =>
        Math.Max(r.Body * m.Smooth, bodyRough * m.Rough) * m.BodyForm * bodyArea;

    private double FinFriction(in MachPart m, in ReynoldsPart r, int i) =>
        Math.Max(r.Fins[i] * m.Smooth, finRough[i] * m.Rough) * m.FinForm[i] * finArea[i];

    private double FinBase(in MachPart m, in ReynoldsPart r, int i)
    {
        var edge = rocket.Fins[i].Set.TrailingEdge;
        if (edge == FinEdge.Sharp || finFront[i] == 0) return 0;
        var section = rocket.Fins[i].Section;
        var slow = FinBaseDrag.Subsonic(r.Fins[i], section.Chord, section.Thickness);
        return finFront[i] * (edge == FinEdge.Square ? 1 : 0.5) * (m.FinBase + m.Subsonic * (slow - m.FinBase));
    }

    /// <summary>Base drag on the reference area; the subsonic half after Hoerner falls with the cube of the base diameter.</summary>
    private double Base(in MachPart m, double bodyFriction)
    {
        if (baseShare <= 0) return 0;
        var hoerner = Math.Min(BaseDrag.Hoerner(bodyFriction) * Math.Sqrt(baseShare), 2 * m.HandbookBase);
        var mean = (m.HandbookBase + hoerner) / 2;
        return baseShare * (mean + (m.HandbookBase - mean) * m.HandbookShare);
    }

    private IEnumerable<DragPart> BodyPressure(double mach)
    {
        for (var i = 0; i < rocket.Sections.Count; i++)
        {
            var section = rocket.Sections[i].Section;
            if (section.FrontDiameter == section.RearDiameter) continue;
            var share = Math.Abs(section.RearDiameter * section.RearDiameter - section.FrontDiameter * section.FrontDiameter)
                / (rocket.Diameter * rocket.Diameter);
            var drag = section.FrontDiameter > section.RearDiameter ? TransitionDrag.BoatTail(section, mach)
                : section.FrontDiameter == 0 ? NoseDrag.At(section, mach, section.Profile.Shape is BodyShape.Power or BodyShape.Ellipsoid ? rocket.Nose : null)
                : TransitionDrag.Shoulder(section, mach);
            yield return new($"{section.Name} pressure", drag * share);
        }
        // A first section that does not close to a point shows a flat face.
        var face = rocket.Sections[0].Section.FrontDiameter;
        if (face > 0)
            yield return new("flat face", 0.85 * CompressibleFlow.StagnationPressure(mach) * face * face / (rocket.Diameter * rocket.Diameter));
    }

    private IEnumerable<DragPart> FinPressure(double mach)
    {
        for (var i = 0; i < finFront.Length; i++)
        {
            var (set, section) = (rocket.Fins[i].Set, rocket.Fins[i].Section);
            yield return new($"{set.Name} leading edge", finFront[i] * section.LeadingEdgeDrag(set.LeadingEdge, mach));
            if (section.TrailBevel > 0) yield return new($"{set.Name} trailing bevel", finFront[i] * section.TrailingBevelDrag(mach));
        }
    }
}
