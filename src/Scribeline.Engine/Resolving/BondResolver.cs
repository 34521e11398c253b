using Scribeline.Engine.Airframe;
using Scribeline.Engine.Design;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Shop;
using Scribeline.Engine.Tables;

namespace Scribeline.Engine.Resolving;

/// <summary>Every bond of a design.</summary>
internal sealed class BondResolver(RocketDesign design, Vehicle vehicle, Func<IMeasure, double> draw)
{
    /// <summary>Bonds, nose to tail.</summary>
    public ValueList<BondLine> Resolve()
    {
        List<BondLine> bonds = [.. vehicle.Joints.Where(j => j.Kind == JointKind.Bonded && j.Engagement > 0).Select(Joint)];
        for (var i = 0; i < design.Parts.Count; i++)
        {
            var (typed, part) = (design.Parts[i], vehicle.Parts[i]);
            if (part is Coupler { BandLength: > 0 } coupler) bonds.Add(Band(coupler, i, typed));
            if (typed is TubeDesign { MotorMount: { } mount }) bonds.AddRange(Rings(mount, part, i));
            foreach (var plate in part.Fittings.OfType<BulkPlate>())
            {
                if (Plate(plate, part, i, typed) is { } bond) bonds.Add(bond);
            }

            if (typed is TubeDesign { Fins: var fins }) bonds.AddRange(part.Fittings.OfType<FinPlates>().Zip(fins, (plates, d) => Fins(plates, d, i)));
        }

        return bonds.OrderBy(b => b.Part).ToValueList();
    }

    /// <summary>How the bench works.</summary>
    public BenchPractice Practice() => BenchPractice.Usual with
    {
        Temperature = design.Bench?.Temperature is { } t ? draw(t) : null,
        Prepared = design.Bench?.Preparation switch { PreparationWord.Abraded => 1, PreparationWord.Degreased => Adhesion.Degreased, _ => null },
        Waste = design.Bench?.Waste is { } waste ? draw(waste) : BenchPractice.Usual.Waste,
        Absorbed = design.Surface?.Colour switch { ColourWord.White => 0.25, ColourWord.Coloured => 0.70, ColourWord.Black => 0.95, _ => null },
        Paper = design.Bench?.Paper is { } paper ? draw(paper) : BenchPractice.Usual.Paper,
        Evening = design.Bench?.Evening is { } evening ? draw(evening) : BenchPractice.Usual.Evening,
    };

    private BondLine Joint(Joint joint)
    {
        string ahead = vehicle.Parts[joint.Forward].Name, behind = vehicle.Parts[joint.Aft].Name;
        var typed = JointResolver.Of(design, vehicle, joint);
        var length = typed?.Bond?.Length is { } l ? draw(l) : joint.Engagement;
        var wood = Wood(vehicle.Parts[joint.Forward].Material) || Wood(vehicle.Parts[joint.Aft].Material);
        return new(
            $"{ahead} and {behind}", BondKind.Joint, joint.Forward, joint.Forward, "", joint.ShoulderDiameter, length, Math.Max(joint.Play, 0) / 2, 1,
            Math.PI * joint.ShoulderDiameter * length, Adhesion.Annulus(joint.ShoulderDiameter + Math.Max(joint.Play, 0), joint.ShoulderDiameter, length), wood,
            Adhesive(typed?.Bond?.Adhesive), $"{typed?.At ?? "joints"}.bond.adhesive", "the outside to the edge of the tube; wipe what comes out");
    }

    private BondLine Band(Coupler coupler, int index, PartDesign typed)
    {
        var band = typed switch { AltimeterBayDesign bay => bay.Band, CouplerDesign c => c.Band, _ => null };

        // A band is cut from the tube its coupler slides into: its bore is that tube's.
        var bore = vehicle.Joints.Where(j => j.Forward == index || j.Aft == index).Select(j => j.BoreDiameter).DefaultIfEmpty(coupler.OuterDiameter).Max();
        var gap = Math.Max(bore - coupler.OuterDiameter, 0) / 2;
        return new(
            $"band of {coupler.Name}", BondKind.Band, index, -1, "", coupler.OuterDiameter, coupler.BandLength, gap, 1, Math.PI * coupler.OuterDiameter * coupler.BandLength,
            Adhesion.Annulus(coupler.OuterDiameter + (2 * gap), coupler.OuterDiameter, coupler.BandLength), Wood(coupler.Material) || Wood(coupler.BandMaterial),
            Adhesive(band?.Adhesive), $"{band?.At ?? typed.At}.adhesive", "the coupler on both sides of the band, where it slides");
    }

    private IEnumerable<BondLine> Rings(MotorMountDesign typed, Part part, int index)
    {
        var rings = part.Fittings.OfType<CentringRing>().ToArray();
        if (rings.Length == 0 || part.Fittings.OfType<MotorMount>().FirstOrDefault() is not { } mount) yield break;
        double thickness = rings.Sum(r => r.Thickness), fillet = typed.Fillet is { } f ? draw(f) : 0;
        var adhesive = Adhesive(typed.Adhesive);
        BondLine Of(string name, BondKind kind, double diameter, double gap, Material other, bool inBore, string mask) => new(
            name, kind, index, -1, mount.Name, diameter, thickness / rings.Length, gap, rings.Length, Math.PI * diameter * thickness,
            Adhesion.Annulus(diameter + (2 * gap), diameter, thickness) + (fillet > 0 ? 2 * rings.Length * Adhesion.RingFillet(fillet, diameter / 2, inBore) : 0),
            Wood(other) || rings.Any(r => Wood(r.Material)), adhesive, $"{typed.At}.adhesive", mask)
        { Fillet = fillet };
        double outside = rings.Max(r => r.OuterDiameter), inside = rings.Min(r => r.InnerDiameter);
        var bore = 2 * (part.BoreAt(part.Front + rings[0].Offset) ?? outside / 2);
        yield return Of($"rings in {part.Name}", BondKind.RingsInTube, outside, Math.Max(bore - outside, 0) / 2, part.Material, true, "slots for the fins, and the bore where a coupler slides");
        yield return Of($"rings on {mount.Name}", BondKind.RingsOnMount, mount.OuterDiameter, Math.Max(inside - mount.OuterDiameter, 0) / 2, mount.Material, false, "threads of the retainer, and the inside of the mount");
    }

    // A plate between rods is not bonded; one wider than the bore caps its end.
    private BondLine? Plate(BulkPlate plate, Part part, int index, PartDesign typed)
    {
        if (typed is AltimeterBayDesign { Rods: not null }) return null;
        if (part.BoreAt(part.Front + plate.Offset + (plate.Thickness / 2)) is not { } radius || plate.Diameter > (2 * radius) + 1e-6) return null;
        var d = typed.Plates.FirstOrDefault(p => p.Name == plate.Name);
        return new(
            $"{plate.Name} in {part.Name}", BondKind.Plate, index, -1, plate.Name, plate.Diameter, plate.Thickness, Math.Max((2 * radius) - plate.Diameter, 0) / 2, 1,
            Math.PI * plate.Diameter * plate.Thickness, Adhesion.Annulus(2 * radius, Math.Min(plate.Diameter, 2 * radius), plate.Thickness), Wood(part.Material) || Wood(plate.Material),
            Adhesive(d?.Adhesive), $"{d?.At ?? typed.At}.adhesive", "threads of eye bolts and captive nuts");
    }

    private BondLine Fins(FinPlates plates, FinsDesign typed, int index)
    {
        var (root, n) = (plates.Length, plates.Fins.Count);
        return new(
            plates.Name, BondKind.FinRoots, index, -1, plates.Name, double.NaN, root, 0, n, 2 * n * root * plates.Fillet, 2 * n * root * Adhesion.Fillet(plates.Fillet),
            Wood(plates.Material) || Wood(vehicle.Parts[index].Material), Adhesive(typed.Adhesive), $"{typed.At}.adhesive", "the tube beyond the fillets; pull the tape while it is wet")
        { Fillet = plates.Fillet };
    }

    private Adhesive? Adhesive(string? name)
    {
        if (name is null) return null;
        if (design.Adhesives.FirstOrDefault(a => a.Name.Equals(name, StringComparison.OrdinalIgnoreCase)) is not { } own) return Tables.Adhesive.Find(name);
        double? Typed(IMeasure? m) => m is null ? null : draw(m);
        return new(
            own.Name, draw(own.LapShear), Typed(own.Density), Typed(own.PotLife), Typed(own.PotMass), draw(own.Temperature), Typed(own.Handling), Typed(own.FullCure),
            Typed(own.Softens), own.Source);
    }

    private static bool Wood(Material? material) =>
        material is not null && (material.Name.Contains("wood", StringComparison.OrdinalIgnoreCase) || material.Name.Contains("balsa", StringComparison.OrdinalIgnoreCase));
}
