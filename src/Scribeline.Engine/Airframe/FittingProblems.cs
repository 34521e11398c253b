using static Scribeline.Engine.Airframe.Findings;

namespace Scribeline.Engine.Airframe;

/// <summary>Things fixed to a part that do not fit where they are put.</summary>
internal static class FittingProblems
{
    public static void Look(Vehicle vehicle, int index, Findings found)
    {
        Part part = vehicle.Parts[index];
        string at = $"parts[{index}]";
        int plate = 0;
        foreach (Fitting fitting in part.Fittings)
        {
            switch (fitting)
            {
                case BulkPlate p:
                    Plate(vehicle, part, p, $"{at}.plates[{plate++}]", found);
                    break;
                case CentringRing r:
                    Ring(part, r, $"{at}.motor mount", found);
                    break;
                case MotorMount m:
                    Mount(vehicle, index, m, $"{at}.motor mount", found);
                    break;
                case FinPlates f:
                    Fins(part, f, $"{at}.fins", found);
                    break;
                case Rods r:
                    double reach = 2 * r.CircleRadius + r.Diameter, bore = 2 * (part.BoreAt(Middle(part, r)) ?? 0);
                    found.Require(reach <= bore, $"{at}.rods", $"The rods of {part.Name} reach {Mm(reach)} across; the inside is {Mm(bore)}.");
                    break;
                case RailGuide g:
                    found.Require(
                        g.Offset >= 0 && g.Offset <= part.Length, $"{at}.rail guides",
                        $"{g.Name} sits {Mm(g.Offset)} from the front of {part.Name}, which is {Mm(part.Length)} long.");
                    break;
            }
        }
    }

    private static double Middle(Part part, Fitting fitting) => part.Front + fitting.Offset + fitting.Length / 2;

    private static void Plate(Vehicle vehicle, Part part, BulkPlate plate, string at, Findings found)
    {
        if (!(found.Positive(plate.Diameter, at + ".outside", $"outside of {plate.Name}") & found.Positive(plate.Thickness, at + ".thickness", $"thickness of {plate.Name}"))) return;

        // A lid that caps a coupler's end need only pass the tube round it.
        double middle = Middle(part, plate);
        double? bore = 2 * (part.BoreAt(middle) ?? vehicle.BoreAt(middle));
        found.Require(bore is not null, at, $"{plate.Name} lies outside {part.Name}.");
        found.Require(!(plate.Diameter > bore), at + ".outside", $"{plate.Name} is {Mm(plate.Diameter)} across; there is room for {Mm(bore ?? 0)}.");
    }

    private static void Ring(Part part, CentringRing ring, string at, Findings found)
    {
        double bore = 2 * (part.BoreAt(Middle(part, ring)) ?? 0);
        found.Require(ring.OuterDiameter <= bore, at, $"{ring.Name} is {Mm(ring.OuterDiameter)} across; {part.Name} takes {Mm(bore)}.");
        found.Require(
            ring.InnerDiameter < ring.OuterDiameter && ring.Thickness > 0, at,
            $"{ring.Name} has no material: {Mm(ring.InnerDiameter)} inside, {Mm(ring.OuterDiameter)} outside, {Mm(ring.Thickness)} thick.");
        MotorMount? mount = part.Fittings.OfType<MotorMount>().FirstOrDefault();
        found.Require(
            mount is null || ring.InnerDiameter >= mount.OuterDiameter, at,
            $"{ring.Name} ({Mm(ring.InnerDiameter)} inside) does not go over {mount?.Name} ({Mm(mount?.OuterDiameter ?? 0)}).");
    }

    private static void Mount(Vehicle vehicle, int index, MotorMount mount, string at, Findings found)
    {
        Part part = vehicle.Parts[index];
        if (!found.Positive(mount.TubeLength, at + ".length", $"length of {mount.Name}")) return;
        found.Require(
            mount.InnerDiameter > 0 && mount.InnerDiameter < mount.OuterDiameter, at, $"The inside of {mount.Name} must lie between 0 and its outside ({Mm(mount.OuterDiameter)}).");
        double bore = 2 * (part.BoreAt(Math.Clamp(Middle(part, mount), part.FrontReach, part.RearReach)) ?? 0);
        found.Require(mount.OuterDiameter <= bore, at, $"{mount.Name} is {Mm(mount.OuterDiameter)} across; {part.Name} takes {Mm(bore)}.");
        double front = part.Front + mount.Offset;
        found.Require(front >= part.FrontReach, at + ".length", $"{mount.Name} reaches {Mm(part.FrontReach - front)} ahead of {part.Name}.");
        double closed = part.Front + part.Fittings.OfType<CentringRing>().Select(r => r.Offset).Append(mount.Offset).Min();
        if (index > 0)
        {
            Part ahead = vehicle.Parts[index - 1];
            found.Require(
                ahead.RearReach <= closed, at, $"{ahead.Name} and {mount.Name} with its rings meet inside {part.Name}: they overlap by {Mm(ahead.RearReach - closed)}.");
        }
    }

    private static void Fins(Part part, FinPlates fins, string at, Findings found)
    {
        FinSet set = fins.Fins;
        found.Require(set.Count >= 1, at + ".count", $"{set.Name} needs at least one fin.");
        if (!(found.Positive(set.Thickness, at + ".thickness", $"thickness of {set.Name}") & found.Positive(set.Outline.RootChord(), at + ".root", $"root of {set.Name}")
            & found.Positive(set.Outline.Span(), at + ".span", $"span of {set.Name}")))
        {
            return;
        }

        double end = set.RootLeadingEdge + set.Outline.RootChord() - part.Length;
        found.Require(
            end <= 1e-9 && set.RootLeadingEdge >= -1e-9, at,
            $"The root of {set.Name} runs from {Mm(set.RootLeadingEdge)} to {Mm(set.RootLeadingEdge + set.Outline.RootChord())} on {part.Name}, which is {Mm(part.Length)} long.");
        if (fins.TabLength <= 0) return;
        found.Require(
            fins.TabFront >= 0 && fins.TabFront + fins.TabLength <= set.Outline.RootChord(), at + ".tab", $"The tab of {set.Name} is longer than its root.");
        double depth = set.BodyRadius - (part.Fittings.OfType<MotorMount>().FirstOrDefault()?.OuterDiameter / 2 ?? 0);
        found.Require(fins.TabDepth <= depth + 0.0005, at + ".tab", $"The tab of {set.Name} is {Mm(fins.TabDepth)} deep; there is room for {Mm(depth)}.");
    }
}
