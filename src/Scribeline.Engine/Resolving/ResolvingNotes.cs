using System.Globalization;
using Scribeline.Engine.Design;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Tables;

namespace Scribeline.Engine.Resolving;

/// <summary>What all steps of a resolution share: how values are drawn, the materials, and what has been noted.</summary>
/// <param name="design">The design.</param>
/// <param name="draw">Value of a measure, SI.</param>
internal sealed class ResolvingNotes(RocketDesign design, Func<IMeasure, double> draw)
{
    /// <summary>Stands in where a measured mass makes the density of no account.</summary>
    private static readonly Material Unknown = new("unknown", 1000, null, null, null, "unknown; the part's own mass counts");

    private readonly List<Problem> problems = [], open = [], assumed = [];

    public ValueList<Problem> Problems => problems.ToValueList();

    public ValueList<Problem> OpenEnds => open.ToValueList();

    public ValueList<Problem> Assumptions => assumed.ToValueList();

    public void Problem(string at, FormattableString message, string suggestion = "") => problems.Add(new(at, Text(message), suggestion));

    public void Open(string at, FormattableString message, string suggestion = "") => open.Add(new(at, Text(message), suggestion));

    public void Assume(string at, FormattableString message) => assumed.Add(new(at, Text(message)));

    /// <summary>The value of a measure, SI.</summary>
    public double Si(IMeasure measure) => draw(measure);

    /// <summary>The value of a measure, or another where none was typed.</summary>
    public double Si(IMeasure? measure, double otherwise) => measure is null ? otherwise : draw(measure);

    /// <summary>Inside diameter from the inside or the wall; a problem where neither or both were typed.</summary>
    public double Inside(IMeasure? inside, IMeasure? wall, double outside, string at, string name)
    {
        if (inside is not null && wall is null) return Si(inside);
        if (wall is not null && inside is null) return outside - 2 * Si(wall);
        Problem(
            at, inside is null ? (FormattableString)$"{name} has neither an inside diameter nor a wall." : $"{name} has both an inside diameter and a wall.",
            "Type one of inside and wall.");
        return 0.9 * outside;
    }

    /// <summary>A material by name: the design's own first, then the table's. A problem where it is unknown.</summary>
    public Material? Material(string? name, string at)
    {
        if (name is null) return null;
        foreach (MaterialDesign own in design.Materials.Where(m => m.Name.Equals(name, StringComparison.OrdinalIgnoreCase)))
        {
            return new(own.Name, Si(own.Density), Nullable(own.Modulus), Nullable(own.ShearModulus), Nullable(own.Strength), own.Source);
        }

        if (MaterialTable.Find(name) is { } found) return found;
        Problem(at + ".material", $"'{name}' is no known material.", $"Did you mean {MaterialTable.Nearest(name)}? Otherwise list it under materials with its density.");
        return null;
    }

    /// <summary>
    /// A material that sets a mass. Where none is named the fallback stands in; with neither it is a problem, unless the part's own mass is typed.
    /// </summary>
    public Material MassMaterial(string? name, Material? fallback, PartDesign part, string at, string what)
    {
        if ((Material(name, at) ?? fallback) is { } known) return known;
        if (name is null && part.Mass is null)
            Problem(at, $"{what} has neither a material nor a mass.", $"Type a material such as {MaterialTable.All[0].Name}, or the mass of {part.Name}.");
        return Unknown;
    }

    /// <summary>Offset of a thing aft of the datum of a part, from either end; null and a problem where neither or both were typed.</summary>
    public double? Offset(IMeasure? fromForward, IMeasure? fromAft, double partLength, double thickness, string at, string name)
    {
        if (fromForward is not null && fromAft is null) return Si(fromForward);
        if (fromAft is not null && fromForward is null) return partLength - Si(fromAft) - thickness;
        Problem(at, fromForward is null ? (FormattableString)$"{name} has no place." : $"{name} has two places.", "Type one of from forward end and from aft end.");
        return null;
    }

    private double? Nullable(IMeasure? measure) => measure is null ? null : Si(measure);

    private static string Text(FormattableString message) => message.ToString(CultureInfo.InvariantCulture);
}
