using Scribeline.Engine.Design;
using Scribeline.Engine.Motors;
using Scribeline.Engine.Quantities;
using UnitsNet;

namespace Scribeline.Engine.Resolving;

/// <summary>Turns a typed motor into one that can be flown.</summary>
public static class MotorResolver
{
    /// <summary>The motor, or null with problems.</summary>
    /// <param name="design">As typed.</param>
    /// <param name="draw">Value to take for a measure; the impulse tolerance scales the whole thrust curve.</param>
    /// <param name="problems">Added to.</param>
    public static Motor? Resolve(MotorDesign design, Func<IMeasure, double> draw, List<Problem> problems)
    {
        if (design.Thrust.Value is not { } table) return null;
        var points = table.Points.Select(p => new ThrustPoint(p.Time.Si, p.Thrust.Si)).ToValueList();
        var wrong = MotorProblems.In(points);
        if (wrong.Count == 0 && Masses(design, draw) is not null)
        {
            var motor = Of(design, points, draw);
            wrong = MotorProblems.In(motor);
            if (wrong.Count == 0) return Scaled(motor, design, draw);
        }

        problems.AddRange(wrong.Select(w => w with { At = design.At.Length > 0 ? design.At : "motor" }));
        if (Masses(design, draw) is null)
        {
            problems.Add(new Problem(design.At.Length > 0 ? design.At : "motor", "The motor has neither a propellant mass nor an empty mass.", "Type one of them, from its label."));
        }

        return null;
    }

    private static Motor Of(MotorDesign design, ValueList<ThrustPoint> points, Func<IMeasure, double> draw)
    {
        var (loaded, propellant) = Masses(design, draw)!.Value;
        return new(
            design.Name,
            new ThrustHistory(points),
            draw(design.Diameter),
            draw(design.Length),
            loaded,
            propellant,
            design.LoadedBalance is { } l ? draw(l) : null,
            design.EmptyBalance is { } e ? draw(e) : null,
            design.NozzleExit is { } n ? draw(n) : null,
            design.Delays.Select(d => d.Si).ToValueList(),
            design.Plugged,
            design.Known);
    }

    private static (double Loaded, double Propellant)? Masses(MotorDesign design, Func<IMeasure, double> draw)
    {
        var loaded = draw(design.LoadedMass);
        return design.PropellantMass is { } p ? (loaded, draw(p)) : design.EmptyMass is { } e ? (loaded, loaded - draw(e)) : null;
    }

    private static Motor Scaled(Motor motor, MotorDesign design, Func<IMeasure, double> draw)
    {
        if (design.ImpulseTolerance is not { } tolerance) return motor;
        var factor = draw(Measure.Si<Ratio>(1, tolerance.Si, tolerance.Known, tolerance.At));
        return factor == 1 ? motor : motor.Scaled(factor, 1);
    }
}
