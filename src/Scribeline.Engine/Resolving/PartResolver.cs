using Scribeline.Engine.Airframe;
using Scribeline.Engine.Design;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Tables;

namespace Scribeline.Engine.Resolving;

/// <summary>Parts of the stack, each at station 0 until it is stacked.</summary>
internal static class PartResolver
{
    public static Part Part(PartDesign design, ResolvingNotes notes)
    {
        Material material = notes.MassMaterial(design.Material, null, design, design.At, design.Name);
        Part part = design switch
        {
            NoseConeDesign d => Nose(d, material, notes),
            TubeDesign d => Tube(d, material, notes),
            CouplerDesign d => Coupler(d, material, notes),
            AltimeterBayDesign d => Bay(d, material, notes),
            TransitionDesign d => Transition(d, material, notes),
            _ => throw new ArgumentOutOfRangeException(nameof(design), design, "Unknown kind of part."),
        };
        Weighing? weighing = design.Mass is null && design.Balance is null ? null : new(
            design.Mass is { } m ? notes.Si(m) : null,
            design.Balance is { } b ? notes.Si(b) : null,
            design.Mass?.Known ?? design.Balance!.Known);
        return part with { Weighing = weighing, Fittings = FittingResolver.Fittings(design, part, notes).ToValueList() };
    }

    private static NoseCone Nose(NoseConeDesign d, Material material, ResolvingNotes notes)
    {
        double outside = notes.Si(d.Outside);
        return new(
            d.Name, 0, material, Profile(d.Shape, d.Parameter, d, notes), notes.Si(d.Length), outside, Wall(d.Wall, d.Solid, d, notes),
            Shoulder(d.Shoulder, d, notes));
    }

    private static Tube Tube(TubeDesign d, Material material, ResolvingNotes notes)
    {
        double outside = notes.Si(d.Outside);
        return new(d.Name, 0, material, notes.Si(d.Length), outside, notes.Inside(d.Inside, d.Wall, outside, d.At, d.Name))
        {
            SeamShare = d.Seam is { } seam ? Math.Min(notes.Si(seam), 1) : 1,
        };
    }

    private static Coupler Coupler(CouplerDesign d, Material material, ResolvingNotes notes)
    {
        double length = notes.Si(d.Length), outside = notes.Si(d.Outside), band = d.Band is { } b ? notes.Si(b.Length) : 0;
        return new(
            d.Name, 0, material, length, outside, notes.Inside(d.Inside, d.Wall, outside, d.At, d.Name),
            length - band - notes.Si(d.ReachAft), band, d.Band is null ? 0 : notes.Si(d.Band.Outside))
        {
            BandMaterial = notes.Material(d.Band?.Material, d.Band?.At ?? d.At),
        };
    }

    private static AltimeterBay Bay(AltimeterBayDesign d, Material material, ResolvingNotes notes)
    {
        double length = notes.Si(d.Coupler.Length), outside = notes.Si(d.Coupler.Outside), band = notes.Si(d.Band.Length);
        if (d.Band.FromAftEnd is null)
            notes.Problem(d.Band.At, $"The band of {d.Name} has no place.", "Type from aft end: how far the coupler reaches into the part behind.");
        double aft = notes.Si(d.Band.FromAftEnd, (length - band) / 2);
        return new(
            d.Name, 0, material, length, outside, notes.Inside(d.Coupler.Inside, d.Coupler.Wall, outside, d.Coupler.At, d.Name),
            length - band - aft, band, notes.Si(d.Band.Outside))
        {
            BandMaterial = notes.Material(d.Band.Material, d.Band.At),
            Filled = notes.Si(d.Filled, 0),
        };
    }

    private static Transition Transition(TransitionDesign d, Material material, ResolvingNotes notes) => new(
        d.Name, 0, material, Profile(d.Shape, d.Parameter, d, notes), notes.Si(d.Length), notes.Si(d.ForwardOutside), notes.Si(d.AftOutside),
        Wall(d.Wall, d.Solid, d, notes), Shoulder(d.ForwardShoulder, d, notes), Shoulder(d.AftShoulder, d, notes));

    private static double Wall(IMeasure? wall, bool solid, PartDesign part, ResolvingNotes notes)
    {
        if (solid != (wall is not null)) return notes.Si(wall, 0);
        notes.Problem(
            part.At, solid ? (FormattableString)$"{part.Name} cannot be solid and have a wall." : $"{part.Name} has no wall.",
            "Type a wall thickness, or solid: true.");
        return 0;
    }

    private static Shoulder Shoulder(ShoulderDesign? d, PartDesign part, ResolvingNotes notes)
    {
        if (d is null) return default;
        double outside = notes.Si(d.Outside);
        if (d is { Inside: not null, Wall: not null })
            notes.Problem(d.At, $"The shoulder of {part.Name} has both an inside diameter and a wall.", "Type one of inside and wall.");
        return new(notes.Si(d.Length), outside, d.Wall is { } wall ? outside - 2 * notes.Si(wall) : notes.Si(d.Inside, 0));
    }

    private static BodyProfile Profile(ProfileWord word, IMeasure? parameter, PartDesign part, ResolvingNotes notes)
    {
        BodyShape shape = word switch
        {
            ProfileWord.TangentOgive => BodyShape.TangentOgive,
            ProfileWord.SecantOgive => BodyShape.SecantOgive,
            ProfileWord.Ellipsoid => BodyShape.Ellipsoid,
            ProfileWord.Parabola => BodyShape.Parabola,
            ProfileWord.Power => BodyShape.Power,
            ProfileWord.VonKarman or ProfileWord.Haack => BodyShape.Haack,
            _ => BodyShape.Conical,
        };
        bool needed = word is ProfileWord.SecantOgive or ProfileWord.Parabola or ProfileWord.Power or ProfileWord.Haack;
        if (needed && parameter is null) notes.Problem(part.At + ".shape", $"The shape of {part.Name} needs its parameter.", "Type parameter beside shape.");
        return new(shape, needed ? notes.Si(parameter, shape == BodyShape.SecantOgive || shape == BodyShape.Power ? 1 : 0) : 0);
    }
}
