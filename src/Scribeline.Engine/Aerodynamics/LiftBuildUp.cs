namespace Scribeline.Engine.Aerodynamics;

/// <summary>Normal force of one component at small angles.</summary>
/// <param name="Name">Of the component.</param>
/// <param name="OfFins">Whether it comes from fins, their carry-over on the body included.</param>
/// <param name="Slope">C_Nα on the reference area, 1/rad.</param>
/// <param name="Centre">Station where it acts, m.</param>
/// <param name="ReverseCentre">Station where it acts in rearward flight, m.</param>
public readonly record struct LiftPart(string Name, bool OfFins, double Slope, double Centre, double ReverseCentre);

/// <summary>
/// Normal-force slope by components. Body sections by slender-body theory (Barrowman 1966 eq. 10 and 26–29); above Mach 0.9 the nose and
/// the cylinder behind it go over to second-order shock expansion, complete at 1.5. Fins: single fin times
/// N/2 and the interference factors: 1 + τ below Mach 0.9 (carry-over on the body left out, which keeps the
/// centre of pressure forward: conservative), K_W(B) and K_B(W) of TR 1307 above 1.2.
/// </summary>
internal static class LiftBuildUp
{
    /// <summary>The components at a Mach number.</summary>
    public static IEnumerable<LiftPart> At(RocketGeometry rocket, double mach) => At(rocket, mach, SingleFins(rocket, mach));

    /// <summary>The components at a Mach number, from the load of one fin of each set.</summary>
    public static IEnumerable<LiftPart> At(RocketGeometry rocket, double mach, FinLoad[] single)
    {
        var supersonic = Bridge.Step(mach, 0.9, 1.5);
        foreach (var (section, integrals) in rocket.Sections)
        {
            var (front, rear) = (Disc(section.FrontDiameter), Disc(section.RearDiameter));
            if (front == rear) continue;
            var centre = section.Front + (section.Length * rear - integrals.Volume) / (rear - front);
            var slender = 2 * (rear - front) / rocket.Area;
            if (front > 0 || supersonic == 0 || rocket.Nose is not { } nose)
            {
                yield return new(section.Name, false, slender, centre, centre);
                continue;
            }
            var share = rear / rocket.Area;
            var fast = nose.At(mach);
            var slope = slender + supersonic * (share * fast.NoseSlope - slender);
            centre += supersonic * (section.Front + fast.NoseCentre - centre);
            yield return new(section.Name, false, slope, centre, centre);
            var after = section.Front + fast.CarryOverCentre;
            yield return new($"{section.Name}, carried over to the cylinder", false, supersonic * share * fast.CarryOver, after, after);
        }
        for (var i = 0; i < single.Length; i++)
            foreach (var part in OfFins(rocket.Fins[i], single[i], mach)) yield return part;
    }

    /// <summary>C_Nα of one fin alone of each set, on the reference area, and where it acts aft of the root leading edge; thickness included.</summary>
    public static FinLoad[] SingleFins(RocketGeometry rocket, double mach) => [.. rocket.Fins.Select(fins =>
    {
        var load = SingleFin.At(fins.Planform, mach);
        var (factor, shift) = fins.Section.Thickening(mach);
        return new FinLoad(load.Slope * factor * fins.Planform.Area / rocket.Area, load.Centre + shift);
    })];

    private static IEnumerable<LiftPart> OfFins(FinGeometry fins, FinLoad one, double mach)
    {
        var set = fins.Set;
        var alone = set.Count / 2.0 * FinInterference.OfCount(set.Count) * one.Slope;
        var centre = set.RootLeadingEdge + one.Centre;
        var reverse = set.RootLeadingEdge + fins.Planform.MeanLeadingEdge + 0.75 * fins.Planform.MeanChord;
        var supersonic = Bridge.Step(mach, 0.9, 1.2);
        var onFins = (1 - supersonic) * (1 + fins.Tau) + supersonic * FinInterference.OnFins(fins.Tau);
        yield return new(set.Name, true, alone * onFins, centre, reverse);
        if (supersonic == 0 || fins.Tau <= 0) yield break;
        var onBody = OnBody(fins, mach);
        yield return new($"{set.Name}, carried over to the body", true, alone * supersonic * onBody.Slope, onBody.Centre, reverse);
    }

    /// <summary>
    /// Carry-over of the fins on the body over the lift of the fins alone, and where it acts: the planar model of TR 1307, no more than
    /// K_B(W) of slender-body theory. Below Mach 1.2 the values there.
    /// </summary>
    private static FinLoad OnBody(FinGeometry fins, double mach)
    {
        var m = Math.Max(mach, 1.2);
        var (area, moment) = BodyCarryOver.OfOneFin(fins.Planform, 2 * fins.Set.BodyRadius, fins.Afterbody, Math.Sqrt(m * m - 1));
        var factor = area / (SingleFin.At(fins.Planform, m).Slope * fins.Planform.Area);
        return new(Math.Min(factor, FinInterference.OnBody(fins.Tau)), fins.Set.RootLeadingEdge + moment / area);
    }

    private static double Disc(double diameter) => Math.PI * diameter * diameter / 4;
}
