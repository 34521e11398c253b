using Scribeline.Engine.Airframe;
using Scribeline.Engine.Design;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Separation;

namespace Scribeline.Engine.Resolving;

/// <summary>Finds the holes through which bays breathe, and what stands on the surface ahead of them.</summary>
internal sealed class HoleResolver(RocketDesign design, Vehicle vehicle, Func<IMeasure, double> draw)
{
    /// <summary>Ports, open switch holes and vents, nose to tail.</summary>
    public ValueList<HoleRow> Holes() => design.Parts.SelectMany((part, i) => Of(part, i)).ToValueList();

    /// <summary>Pins, screws, rail guides and switches whose clock angle is known.</summary>
    public ValueList<SurfaceThing> Things() => [.. Fasteners(), .. Guides(), .. Switches()];

    private IEnumerable<HoleRow> Of(PartDesign design, int index)
    {
        var part = vehicle.Parts[index];
        if (design is AltimeterBayDesign bay)
        {
            if (bay.Ports is { } ports)
            {
                yield return new(
                    $"ports of {part.Name}", index, FromBand(part, ports.StationFromBandCentre), ports.Count, Typed(ports.Diameter.Typed),
                    ClockAngles.Even(ports.Count, Si(ports.FirstClock)).ToValueList(), true);
            }

            foreach (var open in bay.Switch.Where(s => s.Vents))
            {
                yield return new(
                    open.Name ?? $"switch of {part.Name}", index, FromBand(part, open.StationFromBandCentre), 1, draw(open.Diameter),
                    open.Clock is { } clock ? [draw(clock)] : [], false);
            }
        }

        foreach (var vents in design.Vents)
        {
            yield return new($"vents of {part.Name}", index, StationOf(vents, part, draw), vents.Count, Typed(vents.Diameter.Typed), ClockAngles.Of(vents.Clock, draw), false);
        }
    }

    private IEnumerable<SurfaceThing> Fasteners()
    {
        foreach (var joint in vehicle.Joints)
        {
            string ahead = vehicle.Parts[joint.Forward].Name, behind = vehicle.Parts[joint.Aft].Name;
            if (JointResolver.Of(design, vehicle, joint) is not { } typed) continue;
            var (what, clocks, edges) = typed switch
            {
                { Pins: { } pins } => ("pin", pins.Clock, pins.FromEdge),
                { Screws: { } screws } => ("screw", screws.Clock, screws.FromEdge),
                _ => ("", ValueList<ClockPattern>.Empty, ValueList<Measure<UnitsNet.Length>>.Empty),
            };
            var angles = ClockAngles.Of(clocks, draw);
            for (var i = 0; i < angles.Count && edges.Count > 0; i++)
            {
                // The edge is that of the tube the other part slides into.
                var edge = draw(edges[Math.Min(i, edges.Count - 1)]);
                yield return new($"{what} between {ahead} and {behind}", joint.Break + (joint.ShoulderAhead ? edge : -edge), angles[i]);
            }
        }
    }

    private IEnumerable<SurfaceThing> Guides() => vehicle.Parts.SelectMany(p =>
        p.Fittings.OfType<RailGuide>().Select(g => new SurfaceThing(g.Name, p.Front + g.Offset, g.Clock)));

    private IEnumerable<SurfaceThing> Switches() => design.Parts.SelectMany((p, i) =>
        p is not AltimeterBayDesign bay ? [] : bay.Switch.Where(s => s.Clock is not null).Select(s =>
            new SurfaceThing(s.Name ?? $"switch of {p.Name}", FromBand(vehicle.Parts[i], s.StationFromBandCentre), draw(s.Clock!))));

    /// <summary>Station of something typed forward of the middle of a band, m.</summary>
    internal static double FromBand(Part part, IMeasure? forward, Func<IMeasure, double> draw) =>
        ((part.Front + part.Rear) / 2) - (forward is null ? 0 : draw(forward));

    /// <summary>Station of a row of vents, m; the middle of the part where none is typed.</summary>
    internal static double StationOf(HolesDesign vents, Part part, Func<IMeasure, double> draw) =>
        vents.FromForwardEnd is { } ahead ? part.Datum + draw(ahead)
        : vents.FromAftEnd is { } behind ? part.RearReach - draw(behind)
        : (part.Front + part.Rear) / 2;

    private double FromBand(Part part, IMeasure? forward) => FromBand(part, forward, draw);

    private double Si(IMeasure? typed) => typed is null ? 0 : draw(typed);

    private double? Typed(IMeasure? typed) => typed is null ? null : draw(typed);
}
