namespace Scribeline.Engine.Aerodynamics;

/// <summary>Normal force of one component at small angles.</summary>
/// <param name="Name">Of the component.</param>
/// <param name="OfFins">Whether it comes from fins, their carry-over on the body included.</param>
/// <param name="Slope">C_Nα on the reference area, 1/rad.</param>
/// <param name="Centre">Station where it acts, m.</param>
/// <param name="ReverseCentre">Station where it acts in rearward flight, m.</param>
public readonly record struct LiftPart(string Name, bool OfFins, double Slope, double Centre, double ReverseCentre);

/// <summary>
/// Normal-force slope by components. Body sections by slender-body theory (Barrowman 1966 eq. 10 and 26–29). Fins: single fin times
/// N/2 and the interference factors: 1 + τ below Mach 0.9 (carry-over on the body left out, which keeps the
/// centre of pressure forward: conservative), K_W(B) and K_B(W) of TR 1307 above 1.2.
/// </summary>
internal static class LiftBuildUp
{
    /// <summary>The components at a Mach number.</summary>
    public static IEnumerable<LiftPart> At(RocketGeometry rocket, double mach)
    {
        foreach (var (section, integrals) in rocket.Sections)
        {
            var (front, rear) = (Disc(section.FrontDiameter), Disc(section.RearDiameter));
            if (front == rear) continue;
            var centre = section.Front + (section.Length * rear - integrals.Volume) / (rear - front);
            yield return new(section.Name, false, 2 * (rear - front) / rocket.Area, centre, centre);
        }
        foreach (var fins in rocket.Fins)
            foreach (var part in OfFins(rocket, fins, mach)) yield return part;
    }

    /// <summary>C_Nα of one fin alone on the reference area, thickness included.</summary>
    public static FinLoad OneFin(RocketGeometry rocket, FinGeometry fins, double mach)
    {
        var load = SingleFin.At(fins.Planform, mach);
        var (factor, shift) = fins.Section.Thickening(mach);
        return new(load.Slope * factor * fins.Planform.Area / rocket.Area, load.Centre + shift);
    }

    private static IEnumerable<LiftPart> OfFins(RocketGeometry rocket, FinGeometry fins, double mach)
    {
        var set = fins.Set;
        var one = OneFin(rocket, fins, mach);
        var alone = set.Count / 2.0 * FinInterference.OfCount(set.Count) * one.Slope;
        var centre = set.RootLeadingEdge + one.Centre;
        var reverse = set.RootLeadingEdge + fins.Planform.MeanLeadingEdge + 0.75 * fins.Planform.MeanChord;
        var supersonic = Bridge.Step(mach, 0.9, 1.2);
        var onFins = (1 - supersonic) * (1 + fins.Tau) + supersonic * FinInterference.OnFins(fins.Tau);
        yield return new(set.Name, true, alone * onFins, centre, reverse);
        if (supersonic > 0 && fins.Tau > 0)
            yield return new($"{set.Name}, carried over to the body", true, alone * supersonic * OnBody(fins, mach), centre, reverse);
    }

    /// <summary>K_B(W): half of it with the fins flush with the base, all of it with β body diameters behind them.</summary>
    private static double OnBody(FinGeometry fins, double mach)
    {
        var reach = Math.Sqrt(Math.Max(0.01, mach * mach - 1)) * 2 * fins.Set.BodyRadius;
        return FinInterference.OnBody(fins.Tau) * (0.5 + 0.5 * Math.Min(1, fins.Afterbody / reach));
    }

    private static double Disc(double diameter) => Math.PI * diameter * diameter / 4;
}
