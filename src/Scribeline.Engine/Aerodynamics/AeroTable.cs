using Scribeline.Engine.Airframe;
using Scribeline.Engine.Numerics;

namespace Scribeline.Engine.Aerodynamics;

/// <summary>
/// Coefficients of a whole rocket over Mach number, total angle of attack 0 to π and Reynolds number per metre, for any number type.
/// What varies with Mach and Reynolds number is tabulated on uniform axes and read by cubics with continuous slope; the angle of attack
/// enters by the equations of the cross-flow method themselves (Allen and Perkins, NACA TR 1048; Jorgensen, NASA TR R-474), so no table
/// coarsens it. Mach numbers beyond 6 and Reynolds numbers on the length beyond 10⁴ to 10^9.5 are held at the end.
/// </summary>
public sealed class AeroTable
{
    private enum Q { Body, BodyMoment, Fins, FinsMoment, FinsReverse, Sum1, Sum2, RollForcing, RollDamping, Rearward, Count }

    private static readonly Axis MachAxis = new(0, 0.025, 241);
    private static readonly Axis CrossAxis = new(0, 0.025, 241);
    private static readonly Axis ReynoldsAxis = new(4 * Math.Log(10), Math.Log(10) / 4, 23);
    private static readonly Axis CrisisAxis = new(4.9 * Math.Log(10), Math.Log(10) / 40, 93);
    private static readonly double[] Crisis = MakeCrisis();

    // Stall: fins keep their slope up to 20° (common practice: 15 to 20°).
    private static readonly double StallSine = Math.Sin(20 * Math.PI / 180);

    private readonly double[] overMach;
    private readonly double[] overCross;
    private readonly double[] axial;
    private readonly double length;
    private readonly double crossArea;
    private readonly double crossCentre;
    private readonly double reverseSlope;
    private readonly double reverseMoment;
    private readonly double plate;
    private readonly double plateMoment;

    private AeroTable(RocketGeometry rocket)
    {
        ReferenceDiameter = rocket.Diameter;
        ReferenceArea = rocket.Area;
        length = rocket.Length;
        crossArea = rocket.Body.PlanformArea / rocket.Area;
        crossCentre = rocket.Body.PlanformMoment / rocket.Body.PlanformArea;
        reverseSlope = 2 * rocket.BaseArea / rocket.Area;
        reverseMoment = 2 * rocket.Body.Volume / rocket.Area;
        foreach (var fins in rocket.Fins)
        {
            var share = FinPlate.Normal(fins, rocket.Area);
            plate += share;
            plateMoment += share * (fins.Set.RootLeadingEdge + fins.Planform.MeanLeadingEdge + fins.Planform.MeanChord / 2);
        }
        overMach = OverMach(rocket);
        overCross = OverCross(rocket.Length / rocket.Diameter);
        axial = Axial(new DragBuildUp(rocket), rocket.Length);
    }

    /// <summary>The calibre, m.</summary>
    public double ReferenceDiameter { get; }

    /// <summary>π d²/4, m².</summary>
    public double ReferenceArea { get; }

    /// <summary>Builds the tables of an outer shape: a few milliseconds.</summary>
    public static AeroTable Build(OuterShape shape) => new(new RocketGeometry(shape));

    /// <summary>Coefficients at a condition.</summary>
    /// <typeparam name="T">Number type.</typeparam>
    /// <param name="mach">0 or more.</param>
    /// <param name="angleOfAttack">Total angle between axis and wind, rad, 0 to π.</param>
    /// <param name="reynoldsPerMetre">Speed over kinematic viscosity, 1/m.</param>
    /// <param name="thrustOn">0 without jet, 1 with.</param>
    public AeroCoefficients<T> At<T>(T mach, T angleOfAttack, T reynoldsPerMetre, T thrustOn)
        where T : struct, IReal<T> => At(mach, T.Abs(T.Sin(angleOfAttack)), T.Cos(angleOfAttack), reynoldsPerMetre, thrustOn);

    /// <summary>The same by sine (0 or more) and cosine of the angle of attack.</summary>
    public AeroCoefficients<T> At<T>(in T mach, in T sine, in T cosine, in T reynoldsPerMetre, in T thrustOn)
        where T : struct, IReal<T>
    {
        var (zero, one) = (T.From(0), T.From(1));
        var m = CubicStencil<T>.At(mach, MachAxis);
        RowOf<T> row = default;
        Span<T> read = row;
        m.Read(overMach, (int)Q.Count, read[..(int)Q.Count]);

        // Body: potential lift (Jorgensen, with the base leading in rearward flight) and cross-flow drag. All over sin α.
        var along = RoundedAbs(cosine);
        var attached = along * T.Sqrt((one + along) * T.From(0.5));
        var (body, bodyMoment) = (read[(int)Q.Body], read[(int)Q.BodyMoment]);
        var potential = attached * T.SelectLess(cosine, zero, T.From(reverseSlope), body);
        var potentialMoment = attached * T.SelectLess(cosine, zero, T.From(reverseMoment), bodyMoment);
        var (cylinder, flatPlate) = Cross(mach * sine, reynoldsPerMetre * sine);
        var cross = cylinder * T.From(crossArea) * sine;

        // Fins: attached up to the stall, then a cubic to the flat plate across the flow.
        var stall = T.From(StallSine);
        var room = T.From(1 - StallSine);
        var bounded = T.Max(sine, stall);
        var u = (bounded - stall) / room;
        var v = one - u;
        var onSlope = v * v * ((one + u + u) * stall + u * room) / bounded;
        var onPlate = u * u * (one + v + v) / bounded * flatPlate;
        var (fins, finsMoment) = (read[(int)Q.Fins], read[(int)Q.FinsMoment]);
        var finMoment = onSlope * T.SelectLess(cosine, zero, read[(int)Q.FinsReverse], finsMoment) + onPlate * T.From(plateMoment);

        var slope = potential + cross + onSlope * fins + onPlate * T.From(plate);
        var moment = potentialMoment + cross * T.From(crossCentre) + finMoment;
        var square = cosine * cosine;
        return new(
            square * T.SelectLess(cosine, zero, read[(int)Q.Rearward], ZeroLiftDrag(m, reynoldsPerMetre, thrustOn)),
            slope * sine,
            moment / T.Max(slope, T.From(1e-9)),
            body + fins,
            read[(int)Q.Sum1],
            read[(int)Q.Sum2],
            read[(int)Q.RollForcing],
            read[(int)Q.RollDamping]);
    }

    /// <summary>|c|, rounded off below 0.2 so that the lift has no corner broadside on.</summary>
    private static T RoundedAbs<T>(T c)
        where T : struct, IReal<T>
    {
        const double edge = 0.2;
        var square = c * c;
        var round = square * (T.From(1.5 / edge) - square * T.From(0.5 / (edge * edge * edge)));
        return T.SelectLess(T.Abs(c), T.From(edge), round, T.Abs(c));
    }

    /// <summary>η C_dn of the body and the flat-plate rise with Mach number, at a cross-flow Mach and Reynolds number (per metre).</summary>
    private (T Cylinder, T Plate) Cross<T>(T crossMach, T reynoldsPerMetre)
        where T : struct, IReal<T>
    {
        RowOf<T> row = default;
        Span<T> read = row;
        CubicStencil<T>.At(crossMach, CrossAxis).Read(overCross, 3, read[..3]);
        var re = T.Log(T.Max(reynoldsPerMetre * T.From(ReferenceDiameter), T.From(1)));
        CubicStencil<T>.At(re, CrisisAxis).Read(Crisis, 1, read.Slice(3, 1));
        var low = T.From(1) - read[3];
        return (read[0] * (T.From(1) - low * read[2]), read[1]);
    }

    private T ZeroLiftDrag<T>(in CubicStencil<T> m, T reynoldsPerMetre, T thrustOn)
        where T : struct, IReal<T>
    {
        var width = 2 * (ReynoldsAxis.Count + 2);
        var re = CubicStencil<T>.At(T.Log(T.Max(reynoldsPerMetre * T.From(length), T.From(1))), ReynoldsAxis);
        RowOf<T> row = default;
        Span<T> read = row;

        // Four Reynolds numbers side by side, with and without jet, each already between Mach numbers.
        m.Read(axial, re.First * T.From(2), width, read[..8]);
        var off = re.A * read[0] + re.B * read[2] + re.C * read[4] + re.D * read[6];
        var relief = re.A * read[1] + re.B * read[3] + re.C * read[5] + re.D * read[7];
        return off - thrustOn * relief;
    }

    private static double[] OverMach(RocketGeometry rocket)
    {
        const int width = (int)Q.Count;
        var table = new double[MachAxis.Table(width)];
        for (var i = 0; i < MachAxis.Count; i++)
        {
            var mach = MachAxis[i];
            var row = table.AsSpan((i + 1) * width, width);
            var single = LiftBuildUp.SingleFins(rocket, mach);
            foreach (var part in LiftBuildUp.At(rocket, mach, single))
            {
                var moment = part.Slope * part.Centre;
                row[(int)(part.OfFins ? Q.Fins : Q.Body)] += part.Slope;
                row[(int)(part.OfFins ? Q.FinsMoment : Q.BodyMoment)] += moment;
                if (part.OfFins) row[(int)Q.FinsReverse] += part.Slope * part.ReverseCentre;
                row[(int)Q.Sum1] += moment;
                row[(int)Q.Sum2] += moment * part.Centre;
            }
            row[(int)Q.RollForcing] = RollMoments.Forcing(rocket, single);
            row[(int)Q.RollDamping] = RollMoments.Damping(rocket, single);
            row[(int)Q.Rearward] = -RearwardDrag.At(rocket, mach);
        }
        MachAxis.Extend(table, width, evenStart: true);
        return table;
    }

    private static double[] OverCross(double fineness)
    {
        var table = new double[CrossAxis.Table(3)];
        for (var i = 0; i < CrossAxis.Count; i++)
        {
            var drag = CrossFlow.CylinderDrag(CrossAxis[i]);
            table[(i + 1) * 3] = CrossFlow.LengthFactor(fineness, CrossAxis[i]) * drag;
            table[(i + 1) * 3 + 1] = drag / CrossFlow.CylinderDrag(0);
            table[(i + 1) * 3 + 2] = CrossFlow.ReynoldsWeight(CrossAxis[i]);
        }
        CrossAxis.Extend(table, 3, evenStart: true);
        return table;
    }

    private static double[] Axial(DragBuildUp drag, double length)
    {
        var width = 2 * (ReynoldsAxis.Count + 2);
        var table = new double[MachAxis.Table(width)];
        ReynoldsPart[] reynolds = [.. Enumerable.Range(0, ReynoldsAxis.Count).Select(i => drag.AtReynolds(Math.Exp(ReynoldsAxis[i]) / length))];
        for (var i = 0; i < MachAxis.Count; i++)
        {
            var mach = drag.AtMach(MachAxis[i]);
            var row = new double[width];
            for (var j = 0; j < reynolds.Length; j++) (row[2 * j + 2], row[2 * j + 3]) = drag.Total(mach, reynolds[j]);
            ReynoldsAxis.Extend(row, 2, evenStart: false);
            row.CopyTo(table, (i + 1) * width);
        }
        MachAxis.Extend(table, width, evenStart: true);
        return table;
    }

    private static double[] MakeCrisis()
    {
        var table = new double[CrisisAxis.Table(1)];
        for (var i = 0; i < CrisisAxis.Count; i++) table[i + 1] = CrossFlow.ReynoldsFactor(Math.Exp(CrisisAxis[i]));
        CrisisAxis.Extend(table, 1, evenStart: true);
        return table;
    }
}
