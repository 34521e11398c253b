using System.Globalization;
using Scribeline.Engine.Airframe;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Separation;

namespace Scribeline.Engine.Shop;

/// <summary>
/// Looks at a vehicle from the side. A point at radius r and clock angle θ stands r sin(θ - facing) across; it is on the near side where
/// cos(θ - facing) is positive. Clock angles run clockwise looking forward from the tail, so they grow to the right when the nose is up.
/// </summary>
public sealed class SideProjection
{
    private const int CurveSteps = 120;

    private readonly Vehicle vehicle;
    private readonly MotorLoad? motor;
    private readonly double facing;
    private readonly List<SideShape> shapes = [];
    private readonly Dictionary<(SideKind, int), int> counted = [];

    private SideProjection(Vehicle vehicle, MotorLoad? motor, double facing) => (this.vehicle, this.motor, this.facing) = (vehicle, motor, facing);

    /// <summary>The view of a vehicle.</summary>
    /// <param name="vehicle">The vehicle.</param>
    /// <param name="motor">The motor aboard; null for none.</param>
    /// <param name="charges">Charges to show at their plates.</param>
    /// <param name="holes">Holes through the outside.</param>
    /// <param name="balance">Centre of mass.</param>
    /// <param name="centreOfPressure">Where the side force acts.</param>
    /// <param name="facing">Clock angle that faces the onlooker, rad.</param>
    public static SideView Of(
        Vehicle vehicle,
        MotorLoad? motor,
        IEnumerable<ChargeLoad> charges,
        IEnumerable<SideHoleAt> holes,
        SideStation? balance = null,
        SideStation? centreOfPressure = null,
        double facing = 0)
    {
        var look = new SideProjection(vehicle, motor, facing);
        look.Project();
        var bays = vehicle.Bays(motor);
        ChargeLoad[] loads = [.. charges];
        return new(
            vehicle.Name, vehicle.Length, facing, look.shapes.OrderBy(s => s.Layer).ToValueList(), look.Joints().ToValueList(),
            bays.Select((b, i) => look.Bay(b, i, loads)).ToValueList(), loads.Select((c, i) => look.Charge(c, i, bays)).OfType<SideCharge>().ToValueList(),
            holes.OrderBy(h => h.Station).ThenBy(h => h.Clock).Select(look.Hole).ToValueList(), balance, centreOfPressure);
    }

    private void Project()
    {
        for (var i = 0; i < vehicle.Parts.Count; i++)
        {
            var part = vehicle.Parts[i];
            foreach (var section in part.Outside) Revolve(SideKind.Body, SideLayer.Body, section.Name, i, Curve(section, section.RadiusAt));
            Slipped(part, i);
            foreach (var fitting in part.Fittings) Fit(fitting, part, i);
            foreach (var thing in part.Stowed.Where(s => s.PackedLength > 0 && s.PackedDiameter > 0))
                Cylinder(SideKind.Stowed, thing.Name, i, part.Front + thing.Offset, thing.PackedLength, thing.PackedDiameter);
        }

        if (motor is not null) Cylinder(SideKind.Motor, motor.Name, Math.Max(vehicle.MotorPart, 0), motor.Front, motor.Length, motor.Diameter);
    }

    // What slides into neighbours, and the hollow of each part.
    private void Slipped(Part part, int index)
    {
        if (part is Coupler coupler)
        {
            Cylinder(SideKind.Coupler, part.Name, index, part.FrontReach, coupler.TubeLength, coupler.OuterDiameter);
            Cylinder(SideKind.Hollow, part.Name, index, part.FrontReach, coupler.TubeLength, coupler.InnerDiameter);
            return;
        }

        foreach (var (front, shoulder) in new[] { (part.FrontReach, part.Ahead), (part.Rear, part.Behind) })
        {
            if (shoulder.Length > 0) Cylinder(SideKind.Coupler, part.Name, index, front, shoulder.Length, shoulder.OuterDiameter);
            if (shoulder is { Length: > 0, InnerDiameter: > 0 }) Cylinder(SideKind.Hollow, part.Name, index, front, shoulder.Length, shoulder.InnerDiameter);
        }

        var cavity = Math.Max(part.CavityFront, part.Front);
        if (part.Outside.Count == 0 || cavity >= part.Rear || part.BoreAt((cavity + part.Rear) / 2) is not > 0) return;
        Revolve(SideKind.Hollow, SideLayer.Inside, part.Name, index, Stations(cavity, part.Rear, part is Tube).Select(s => (s, part.BoreAt(s) ?? 0)));
    }

    private void Fit(Fitting fitting, Part part, int index)
    {
        var front = part.Front + fitting.Offset;
        switch (fitting)
        {
            case BulkPlate plate:
                Cylinder(SideKind.Plate, plate.Name, index, front, plate.Thickness, plate.Diameter);
                break;
            case CentringRing ring:
                var (inner, outer) = (ring.InnerDiameter / 2, ring.OuterDiameter / 2);
                Box(SideKind.Ring, SideLayer.Inside, ring.Name, index, front, ring.Thickness, -outer, -inner);
                Box(SideKind.Ring, SideLayer.Inside, ring.Name, index, front, ring.Thickness, inner, outer);
                break;
            case MotorMount mount:
                Cylinder(SideKind.Mount, mount.Name, index, front, mount.TubeLength, mount.OuterDiameter);
                break;
            case Rods rods:
                for (var i = 0; i < rods.Count; i++)
                {
                    var across = rods.CircleRadius * Math.Sin(rods.FirstClock + (2 * Math.PI * i / rods.Count) - facing);
                    Box(SideKind.Rod, SideLayer.Inside, rods.Name, index, front, rods.RodLength, across - (rods.Diameter / 2), across + (rods.Diameter / 2));
                }

                break;
            case FinPlates fins:
                for (var i = 0; i < fins.Fins.Count; i++) Fin(fins, front, index, fins.Fins.FirstClock + (2 * Math.PI * i / fins.Fins.Count) - facing);
                break;
            case RailGuide guide:
                Guide(guide, front, index);
                break;
            default:
                break;
        }
    }

    // A fin is a flat plate: seen aslant its span shortens and its thickness begins to show.
    private void Fin(FinPlates fins, double front, int part, double angle)
    {
        var layer = Math.Cos(angle) > 1e-9 ? SideLayer.Front : SideLayer.Behind;
        var corners = FinCorners.Of(fins.Fins.Outline);
        Plate(SideKind.Fin, layer, fins, part, angle, corners.Select(c => (front + c.X, fins.Fins.BodyRadius + c.Y)));
        if (fins is not { TabLength: > 0, TabDepth: > 0 }) return;
        double from = front + fins.TabFront, to = from + fins.TabLength, root = fins.Fins.BodyRadius, foot = root - fins.TabDepth;
        Plate(SideKind.FinTab, SideLayer.Inside, fins, part, angle, [(from, foot), (from, root), (to, root), (to, foot)]);
    }

    private void Plate(SideKind kind, SideLayer layer, FinPlates fins, int part, double angle, IEnumerable<(double Station, double Radius)> corners)
    {
        double sin = Math.Sin(angle), half = fins.Fins.Thickness / 2 * Math.Abs(Math.Cos(angle));
        SidePoint[] plane = [.. corners.Select(c => new SidePoint(c.Station, c.Radius * sin))];
        if (half < 1e-6)
        {
            Add(kind, layer, fins.Name, part, plane);
            return;
        }

        var both = plane.SelectMany(p => new[] { p with { Across = p.Across - half }, p with { Across = p.Across + half } });
        Add(kind, layer, fins.Name, part, OutlineHull.IsConvex(plane) ? OutlineHull.Of(both) : OutlineHull.Thickened(plane, half));
    }

    // A round button as wide as it is long, standing out of the surface.
    private void Guide(RailGuide guide, double middle, int part)
    {
        var angle = guide.Clock - facing;
        double sin = Math.Sin(angle), aside = guide.Width / 2 * Math.Abs(Math.Cos(angle)), foot = guide.Radius * sin, head = (guide.Radius + guide.Height) * sin;
        Box(
            SideKind.Guide, Math.Cos(angle) > 1e-9 ? SideLayer.Front : SideLayer.Behind, guide.Name, part, middle - (guide.Width / 2), guide.Width,
            Math.Min(foot, head) - aside, Math.Max(foot, head) + aside);
    }

    private IEnumerable<SideJoint> Joints() => vehicle.Joints.Select(j =>
    {
        var (from, to) = j.ShoulderAhead ? (j.Break, j.Break + j.Engagement) : (j.Break - j.Engagement, j.Break);
        var radius = vehicle.Parts[j.Forward].Outside is [.., var last] ? last.RearDiameter / 2
            : vehicle.Parts[j.Aft].Outside is [var first, ..] ? first.FrontDiameter / 2 : j.BoreDiameter / 2;
        return new SideJoint(
            Id("joint", j.Forward), j.Forward, $"{vehicle.Parts[j.Forward].Name} to {vehicle.Parts[j.Aft].Name}",
            j.Kind.ToString().ToLowerInvariant(), j.Separable, j.Break, from, to, radius);
    });

    private SideBay Bay(Bay bay, int index, ChargeLoad[] charges) => new(
        Id("bay", index), bay.Name, bay.Front, bay.Rear, bay.Bore / 2,
        vehicle.Parts.SelectMany(p => p.Stowed.Select(s => (s.Name, Middle: p.Front + s.Offset + (s.PackedLength / 2))))
            .Where(s => s.Middle >= bay.Front && s.Middle < bay.Rear).OrderBy(s => s.Middle).Select(s => s.Name).ToValueList(),
        charges.Where(c => Fills(c, bay)).Select(c => c.Name).ToValueList());

    // A charge stands on the plate of the altimeter bay where it is one; otherwise on what closes its bay ahead.
    private SideCharge? Charge(ChargeLoad charge, int index, IEnumerable<Bay> bays)
    {
        if (bays.FirstOrDefault(b => Fills(charge, b)) is not { } bay) return null;
        var aftward = vehicle.Parts[bay.Aft.Part] is not AltimeterBay || vehicle.Parts[bay.Forward.Part] is AltimeterBay;
        return new(Id("charge", index), charge.Name, charge.Joint, aftward ? bay.Front : bay.Rear, aftward);
    }

    private static bool Fills(ChargeLoad charge, Bay bay) => bay.Forward.Name == charge.Forward && bay.Aft.Name == charge.Aft;

    private SideHole Hole(SideHoleAt hole, int index)
    {
        var (sin, cos) = Math.SinCos(hole.Clock - facing);
        return new(Id("hole", index), hole.Kind, hole.Name, hole.Station, hole.Clock, RadiusAt(hole) * sin, cos >= -1e-9, hole.Diameter);
    }

    private double RadiusAt(SideHoleAt hole)
    {
        var under = vehicle.Parts.SelectMany(p => p.Outside).Where(s => hole.Station >= s.Front && hole.Station <= s.Front + s.Length).ToList();
        return under.Count > 0 ? under.Max(s => s.RadiusAt(hole.Station)) : 0;
    }

    private void Cylinder(SideKind kind, string name, int part, double front, double length, double diameter) =>
        Box(kind, SideLayer.Inside, name, part, front, length, -diameter / 2, diameter / 2);

    private void Box(SideKind kind, SideLayer layer, string name, int part, double front, double length, double left, double right) =>
        Add(kind, layer, name, part, [new(front, right), new(front + length, right), new(front + length, left), new(front, left)]);

    // Down the right side and up the left.
    private void Revolve(SideKind kind, SideLayer layer, string name, int part, IEnumerable<(double Station, double Radius)> side)
    {
        SidePoint[] right = [.. side.Select(p => new SidePoint(p.Station, p.Radius))];
        Add(kind, layer, name, part, [.. right, .. right.Reverse().Where(p => p.Across > 0).Select(p => p with { Across = -p.Across })]);
    }

    private void Add(SideKind kind, SideLayer layer, string name, int part, IEnumerable<SidePoint> outline)
    {
        var number = counted.GetValueOrDefault((kind, part));
        counted[(kind, part)] = number + 1;
        shapes.Add(new(string.Create(CultureInfo.InvariantCulture, $"{kind.ToString().ToLowerInvariant()}-{part}-{number}"), kind, layer, name, part, outline.ToValueList()));
    }

    private static string Id(string what, int index) => string.Create(CultureInfo.InvariantCulture, $"{what}-{index}");

    private static IEnumerable<(double Station, double Radius)> Curve(BodySection section, Func<double, double> radius) =>
        Stations(section.Front, section.Front + section.Length, section.Profile.Shape == BodyShape.Conical).Select(s => (s, radius(s)));

    // Closer towards both ends, where noses are round.
    private static IEnumerable<double> Stations(double from, double to, bool straight) => straight
        ? [from, to]
        : Enumerable.Range(0, CurveSteps + 1).Select(i => i == CurveSteps ? to : from + ((to - from) * (1 - Math.Cos(Math.PI * i / CurveSteps)) / 2));
}
