using Scribeline.Engine.Airframe;
using Scribeline.Engine.Design;
using Scribeline.Engine.Motors;
using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Resolving;

/// <summary>
/// Turns the parts, joints, stowed things and weighings of a design into an airframe in SI units. Nothing that sets a mass is guessed:
/// what is missing is a problem, or open; every default taken is listed.
/// </summary>
public static class AirframeResolver
{
    /// <summary>Roughness where no finish is typed, m: middle of sanded and heavy paint, common practice.</summary>
    public const double UsualRoughness = 20e-6;

    /// <summary>The airframe of a design.</summary>
    /// <param name="design">As typed.</param>
    /// <param name="motor">The motor of the day, for weighings made with it aboard; null if unknown.</param>
    /// <param name="draw">Value of a measure in SI units; its nominal value if left out. A sampler gives drawn ones.</param>
    public static AirframeResolution Resolve(RocketDesign design, Motor? motor = null, Func<IMeasure, double>? draw = null)
    {
        ResolvingNotes notes = new(design, draw ?? (m => m.Si));
        if (design.Parts.Count == 0)
        {
            notes.Problem("parts", $"A rocket needs parts.");
            return Done(null);
        }

        if (Stacked(design, notes) is not { } stacked) return Done(null);
        var (full, order) = stacked;
        var vehicle = full with { Weighings = WeighingResolver.Weighings(full, design, motor, notes) };
        if (notes.Problems.Count > 0) return Done(null);
        return Done(vehicle, VehicleProblems.In(vehicle).Select(p => JointResolver.Located(p, order)));

        AirframeResolution Done(Vehicle? made, IEnumerable<Problem>? more = null) =>
            new(made, notes.Problems.Concat(more ?? []).ToValueList(), notes.OpenEnds, notes.Assumptions);
    }

    /// <summary>
    /// The parts in their places with what is stowed in them, unweighed and not looked over for what cannot be; null where they do not make a stack.
    /// </summary>
    internal static (Vehicle Vehicle, List<JointDesign> Order)? Stacked(RocketDesign design, ResolvingNotes notes)
    {
        var parts = design.Parts.Select(p => PartResolver.Part(p, notes)).ToList();
        var (kinds, order) = JointResolver.Kinds(design, notes);
        if (notes.Problems.Count > 0) return null;
        var bare = Vehicle.Stack(design.Name, parts, kinds, null, Roughness(design.Surface, notes));
        bare = bare with { Joints = JointResolver.Fitted(bare.Joints, order, notes) };
        return (StowedResolver.Stow(bare, design, notes), order);
    }

    /// <summary>Equivalent sand roughness of a finish, m: DATCOM table 4.1.5.1-A, from memory; bare glass, common practice.</summary>
    private static double Roughness(SurfaceDesign? surface, ResolvingNotes notes)
    {
        if (surface?.Roughness is { } typed) return notes.Si(typed);
        if (surface?.Finish is { } finish)
        {
            return finish switch
            {
                Finish.Polished => 1e-6,
                Finish.SandedPaint => 6e-6,
                Finish.SprayedPaint => 10e-6,
                Finish.HeavyPaint => 30e-6,
                _ => 40e-6,
            };
        }

        notes.Assume("surface", $"No finish is typed: a roughness of {1e6 * UsualRoughness:0} µm stands in.");
        return UsualRoughness;
    }
}
