using Scribeline.Engine.Airframe;
using Scribeline.Engine.Design;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Recovery;
using Scribeline.Engine.Tables;

namespace Scribeline.Engine.Resolving;

/// <summary>Follows each canopy to its cord, each cord to what its ends are tied to.</summary>
internal sealed class RiggingResolver(RocketDesign design, Vehicle vehicle, Func<IMeasure, double> draw)
{
    private readonly (CordDesign Cord, string In)[] cords = [.. design.Stowed.Where(s => s.Cord is not null).Select(s => (s.Cord!, s.In))];

    public Rigging Resolve() => new(
        design.Stowed.Where(s => s.Canopy is not null).Select(Hanging).OfType<Hanging>().ToValueList(),
        cords.Select(c => Cord(c.Cord, c.In)).ToValueList(),
        design.Stowed.Where(s => s.Link is not null).Select(s => Link(s.Link!, s.In)).ToValueList(),
        cords.SelectMany((c, i) => Anchors(c.Cord, i)).ToValueList())
    {
        Blankets = design.Stowed.Select(s => s.Blanket).OfType<BlanketDesign>().Select(b => b.Name ?? "Blanket").ToValueList(),
    };

    private Hanging? Hanging(StowedDesign stowed)
    {
        var canopy = stowed.Canopy!;
        var cord = canopy.On is { } on ? Array.FindIndex(cords, c => c.Cord.Name == on) : Array.FindIndex(cords, c => c.In == stowed.In);
        return cord < 0 ? null : new(canopy.Name, cord, canopy.Along is { } along ? draw(along) : null);
    }

    private RiggedCord Cord(CordDesign cord, string part)
    {
        var known = CordMaterial.Find(cord.Material);
        var aramid = cord.Material.Contains("aramid", StringComparison.OrdinalIgnoreCase);
        var knot = cord.Ends is { } ends ? Knot.Find(ends) : null;
        var (share, source) = cord.JointEfficiency is { } typed ? (draw(typed), "design")
            : knot is null ? (Knot.Unknown, "ends of no kind typed: the least of the table")
            : (knot.Leaves(aramid), aramid && knot.Tied ? "a knot in para-aramid: common practice" : $"{knot.Name}: {knot.Source}");
        return new(
            cord.Name ?? cord.Material, part, cord.Width is { } width ? draw(width) : known?.Width, share, source, known is { Nylon: true }, cord.Sleeved,
            cord.Strength is null ? known?.Source ?? "" : "design", cord.At);
    }

    private RiggedLink Link(LinkDesign link, string part)
    {
        var row = RiggingPart.Find(link.Name);
        return new(
            link.Name, part, link.Joins,
            link.WorkingLoad is { } load ? draw(load) : link.Strength is null ? row?.WorkingLoad : null,
            link.Strength is { } strength ? draw(strength) : null,
            link.WorkingLoad is null && link.Strength is null ? row?.Source ?? "" : "design", link.At);
    }

    // A harness keeps its ties nose to tail, whichever was typed first.
    private IEnumerable<Anchor> Anchors(CordDesign cord, int index)
    {
        var ties = cord.Ties.Select(t => (Tie: t, Part: FiringResolver.PartOf(vehicle, t))).Where(t => t.Part is not null).OrderBy(t => t.Part).ToArray();
        for (var i = 0; i < ties.Length; i++) yield return Anchor(ties[i].Tie, index, i > 0, ties[i].Part!.Value, cord.At);
    }

    private Anchor Anchor(string tie, int cord, bool aft, int part, string at)
    {
        if (design.Parts.SelectMany(p => p.Plates).FirstOrDefault(p => p.Name == tie) is { } plate)
        {
            var row = plate.Hardware is { } fitted ? RiggingPart.Find(fitted) : null;
            return new(tie, cord, aft, part, plate.Hardware, row, Load(plate.HardwareLoad), plate.Washer is { } washer ? draw(washer) : row?.Washer, plate.At);
        }

        if (tie == DesignChecks.Motor && design.Parts[part] is TubeDesign { MotorMount: { } mount })
            return new(tie, cord, aft, part, mount.Hardware, mount.Hardware is { } eye ? RiggingPart.Find(eye) : null, Load(mount.HardwareLoad), null, mount.At);
        return new(tie, cord, aft, part, null, null, null, null, at);
    }

    private double? Load(IMeasure? typed) => typed is null ? null : draw(typed);
}
