using Scribeline.Engine.Airframe;
using Scribeline.Engine.Design;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Tables;

namespace Scribeline.Engine.Resolving;

/// <summary>
/// What is fixed to a part. Places are typed from the part's datum (its front; the forward end of a coupler) or from where its material ends aft.
/// </summary>
internal static class FittingResolver
{
    /// <summary>Length of rod beyond the plates at each end where no length is typed, in thread diameters: washer, nut and a little; common practice.</summary>
    private const double RodBeyondPlate = 2;

    public static IEnumerable<Fitting> Fittings(PartDesign design, Part part, ResolvingNotes notes)
    {
        List<Fitting> fittings = [];
        foreach (PlateDesign d in design.Plates)
        {
            if (Plate(d, design, part, notes) is { } plate) fittings.Add(plate);
        }

        if (design is AltimeterBayDesign { Rods: { } rods }) fittings.Add(Rods(rods, design, part, fittings, notes));
        if (design is TubeDesign tube)
        {
            fittings.AddRange(tube.Fins.Select(d => FinResolver.Fins(d, tube, (Tube)part, notes)).OfType<FinPlates>());
            if (tube.MotorMount is { } mount) fittings.AddRange(Mount(mount, tube, part, notes));
        }

        foreach (PointMassDesign d in design.Masses)
        {
            if (notes.Offset(d.FromForwardEnd, d.FromAftEnd, part.RearReach - part.Datum, 0, d.At, d.Name) is { } offset)
            {
                fittings.Add(new PointMass(
                    d.Name, part.Datum + offset - part.Front, notes.Si(d.Mass), notes.Si(d.Radius, 0), notes.Si(d.Clock, 0), d.Mass.Known));
            }
        }

        fittings.AddRange(design.RailGuides.SelectMany(d => GuideResolver.Guides(d, design, part, notes)));
        return fittings;
    }

    private static BulkPlate? Plate(PlateDesign d, PartDesign design, Part part, ResolvingNotes notes)
    {
        double thickness = notes.Si(d.Thickness), reach = part.RearReach - part.Datum;
        Material material = notes.MassMaterial(d.Material, null, design, d.At, d.Name);
        double offset;
        if (d.Face is { } face)
        {
            if (d.FromForwardEnd is not null || d.FromAftEnd is not null)
                notes.Problem(d.At, $"{d.Name} has two places.", "Type face alone, or one of from forward end and from aft end.");

            // A plate wider than the bore caps the end from outside; otherwise it sits inside, flush.
            double end = face == EndWord.Forward ? part.FrontReach : part.RearReach;
            double inward = face == EndWord.Forward ? 1 : -1;
            double bore = 2 * (part.BoreAt(end + inward * thickness / 2) ?? 0);
            bool cap = d.Outside is { } wide && notes.Si(wide) > bore;
            double front = face == EndWord.Forward == cap ? end - thickness : end;
            offset = front - part.Datum;
        }
        else if (notes.Offset(d.FromForwardEnd, d.FromAftEnd, reach, thickness, d.At, d.Name) is { } typed)
        {
            offset = typed;
        }
        else
        {
            return null;
        }

        double diameter = d.Outside is { } outside ? notes.Si(outside) : 2 * (part.BoreAt(part.Datum + offset + thickness / 2) ?? 0);
        return new(d.Name, part.Datum + offset - part.Front, material, diameter, thickness);
    }

    private static Rods Rods(RodsDesign d, PartDesign design, Part part, List<Fitting> plates, ResolvingNotes notes)
    {
        Coupler coupler = (Coupler)part;
        double major = d.Thread.MajorDiameter, circle = notes.Si(d.Spacing, coupler.InnerDiameter / 2) / 2;
        if (d.Spacing is null) notes.Assume(d.At, $"No spacing is typed for the rods of {part.Name}: half the inside stands in for their mass.");
        double front = plates.Select(p => p.Offset).DefaultIfEmpty(-coupler.Forward).Min();
        double rear = plates.Select(p => p.Offset + p.Length).DefaultIfEmpty(part.RearReach - part.Front).Max();
        double length = notes.Si(d.Length, rear - front + 2 * RodBeyondPlate * major);
        if (d.Length is null) notes.Assume(d.At, $"No length is typed for the rods of {part.Name}: plate to plate and {RodBeyondPlate:0} diameters beyond at each end.");
        Material? material = notes.Material(d.Material, d.At);
        if (d.Material is null && design.Mass is null) notes.Assume(d.At, $"The rods of {part.Name} are taken as steel.");
        return new(
            $"Rods of {part.Name}", (front + rear - length) / 2, material ?? MaterialTable.Find("steel")!, length, ThreadMass.PitchDiameter(d.Thread), d.Count,
            circle, notes.Si(d.FirstClock, 0));
    }

    private static IEnumerable<Fitting> Mount(MotorMountDesign d, TubeDesign design, Part part, ResolvingNotes notes)
    {
        string name = $"Motor mount of {part.Name}";
        double inside = notes.Si(d.Inside), length = notes.Si(d.Length);
        if (d.Outside is null == d.Wall is null)
            notes.Problem(d.At, $"The motor mount of {part.Name} needs its outside diameter or its wall.", "Type one of outside and wall.");
        double outside = d.Wall is { } wall ? inside + 2 * notes.Si(wall) : notes.Si(d.Outside, inside);
        Material material = notes.MassMaterial(d.Material, null, design, d.At, name);
        MotorMount mount = new(name, part.Length - notes.Si(d.FromAftEnd, 0) - length, material, length, outside, inside)
        {
            Overhang = notes.Si(d.Overhang, 0),
        };
        yield return mount;
        for (int i = 0; i < d.Rings.Count; i++)
        {
            RingDesign r = d.Rings[i];
            string ring = r.Name ?? $"Ring {i + 1} of {part.Name}";
            double thickness = notes.Si(r.Thickness);
            if (notes.Offset(r.FromForwardEnd, r.FromAftEnd, length, thickness, r.At, ring) is not { } offset) continue;
            yield return new CentringRing(
                ring, mount.Offset + offset, notes.MassMaterial(r.Material, null, design, r.At, ring),
                notes.Si(r.Outside, 2 * (part.BoreAt(part.Rear) ?? 0)), notes.Si(r.Inside, outside), thickness);
        }

        if (d.Retainer is not { } retainer) yield break;
        if (retainer.Mass is null && design.Mass is null) notes.Open(retainer.At + ".mass", $"The mass of {retainer.Name} is not known; it counts as 0.", "Weigh it.");
        yield return new PointMass(
            retainer.Name, mount.Offset + length + notes.Si(retainer.Length, 0) / 2, notes.Si(retainer.Mass, 0), 0, 0, retainer.Mass?.Known ?? Basis.Estimated);
    }
}
