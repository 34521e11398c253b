namespace Scribeline.Engine.Airframe;

/// <summary>Dimensions of single parts that cannot be.</summary>
internal static class PartProblems
{
    public static void Look(Part part, string at, Findings found)
    {
        found.Require(
            part.Material.Density > 0 && double.IsFinite(part.Material.Density), at + ".material", $"{part.Name} needs a density above 0.", $"Give the material a density, or the part a mass.");
        found.Require(part.Weighing?.Mass is null or > 0, at + ".mass", $"{part.Name} cannot weigh nothing.");
        switch (part)
        {
            case NoseCone nose:
                Nose(nose, at, found);
                break;
            case Tube tube:
                found.Positive(tube.TubeLength, at + ".length", $"length of {tube.Name}");
                Ring(tube.OuterDiameter, tube.InnerDiameter, at, tube.Name, found);
                break;
            case Coupler coupler:
                Coupler(coupler, at, found);
                break;
            case Transition transition:
                Transition(transition, at, found);
                break;
        }
    }

    private static void Nose(NoseCone nose, string at, Findings found)
    {
        bool sound = found.Positive(nose.ExposedLength, at + ".length", $"length of {nose.Name}")
            & found.Positive(nose.OuterDiameter, at + ".outside", $"outside of {nose.Name}");
        if (!sound) return;
        Profile(nose.Profile, at, nose.Name, found);
        Wall(nose.Wall, nose.OuterDiameter, at, nose.Name, found);
        Shoulder(nose.Shoulder, nose.OuterDiameter, at + ".shoulder", nose.Name, found);
    }

    private static void Transition(Transition part, string at, Findings found)
    {
        bool sound = found.Positive(part.ExposedLength, at + ".length", $"length of {part.Name}")
            & found.Positive(part.FrontDiameter, at, $"forward diameter of {part.Name}")
            & found.Positive(part.RearDiameter, at, $"aft diameter of {part.Name}");
        if (!sound) return;
        Profile(part.Profile, at, part.Name, found);
        Wall(part.Wall, Math.Min(part.FrontDiameter, part.RearDiameter), at, part.Name, found);
        Shoulder(part.FrontShoulder, part.FrontDiameter, at, part.Name, found);
        Shoulder(part.RearShoulder, part.RearDiameter, at, part.Name, found);
    }

    private static void Coupler(Coupler part, string at, Findings found)
    {
        found.Positive(part.TubeLength, at + ".coupler.length", $"coupler length of {part.Name}");
        Ring(part.OuterDiameter, part.InnerDiameter, at + ".coupler", part.Name, found);
        found.Require(part.BandLength >= 0, at + ".band.length", $"The band of {part.Name} cannot have a length below 0.");
        found.Require(
            part.BandLength <= 0 || part.BandDiameter > part.OuterDiameter, at + ".band.outside",
            $"The band of {part.Name} ({Findings.Mm(part.BandDiameter)}) must be wider than its coupler ({Findings.Mm(part.OuterDiameter)}).");
        found.Require(
            part.Forward >= 0 && part.Aft >= -1e-9, at + ".band",
            $"The band of {part.Name} reaches off its coupler: {Findings.Mm(part.Forward)} ahead of it, {Findings.Mm(part.Aft)} behind.");
    }

    private static void Ring(double outer, double inner, string at, string name, Findings found)
    {
        if (found.Positive(outer, at + ".outside", $"outside of {name}"))
        {
            found.Require(
                inner > 0 && inner < outer, at + ".inside",
                $"The inside of {name} ({Findings.Mm(inner)}) must lie between 0 and its outside ({Findings.Mm(outer)}).");
        }
    }

    private static void Wall(double wall, double diameter, string at, string name, Findings found) => found.Require(
        wall >= 0 && wall < diameter / 2, at + ".wall", $"A wall of {Findings.Mm(wall)} does not go into {name}, {Findings.Mm(diameter)} across.");

    private static void Shoulder(Shoulder shoulder, double diameter, string at, string name, Findings found)
    {
        found.Require(shoulder.Length >= 0, at + ".length", $"The shoulder of {name} cannot have a length below 0.");
        if (shoulder.Length <= 0) return;
        found.Require(
            shoulder.OuterDiameter > 0 && shoulder.OuterDiameter <= diameter, at + ".outside",
            $"The shoulder of {name} ({Findings.Mm(shoulder.OuterDiameter)}) is wider than {name} itself ({Findings.Mm(diameter)}).");
        found.Require(
            shoulder.InnerDiameter >= 0 && shoulder.InnerDiameter < shoulder.OuterDiameter, at + ".inside",
            $"The inside of the shoulder of {name} ({Findings.Mm(shoulder.InnerDiameter)}) must be less than its outside ({Findings.Mm(shoulder.OuterDiameter)}).");
    }

    private static void Profile(BodyProfile profile, string at, string name, Findings found)
    {
        (double least, double most) = profile.Shape switch
        {
            BodyShape.SecantOgive => (1, double.PositiveInfinity),
            BodyShape.Parabola => (0, 1),
            BodyShape.Power => (0.1, 1),
            BodyShape.Haack => (0, 2.0 / 3),
            _ => (double.NegativeInfinity, double.PositiveInfinity),
        };
        found.Require(
            profile.Parameter >= least && profile.Parameter <= most + 1e-9, at + ".shape",
            $"The shape number of {name} is {profile.Parameter:0.###}; this family takes {least:0.###} to {most:0.###}.");
    }
}
