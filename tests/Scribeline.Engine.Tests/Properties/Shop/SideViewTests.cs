using Scribeline.Engine.Airframe;
using Scribeline.Engine.Shop;
using Scribeline.Engine.Tests.Properties.Airframe;

namespace Scribeline.Engine.Tests.Properties.Shop;

/// <summary>The side view is the vehicle's own geometry, projected; nothing about it is decided anew.</summary>
public class SideViewTests
{
    private static readonly Vehicle Sample = SampleRocket.Vehicle(finClock: Math.PI / 3);

    private static SideView Look(double facing = 0, Vehicle? vehicle = null) =>
        SideProjection.Of(vehicle ?? Sample, SampleRocket.Motor, [new("Drogue A", "Bay bottom", "Mount", 2, 1e-3, 1e-4, null, default), new("Main A", "Nose", "Bay top", 0, 1e-3, 1e-4, null, default)], [new(SideHoleKind.Pin, "pin", 0.42, Math.PI / 3, null)], facing: facing);

    [Fact]
    public void Every_part_is_as_long_and_as_wide_as_the_vehicle_says()
    {
        var view = Look();
        var bodies = view.Shapes.Where(s => s.Kind == SideKind.Body).ToList();
        Assert.Equal(["Nose", "Payload", "Bay", "Booster"], bodies.Select(b => b.Name));
        Assert.All(bodies, body =>
        {
            var part = Sample.Parts[body.Part];
            Assert.Equal(part.Front, body.Front, 1e-12);
            Assert.Equal(part.Rear, body.Rear, 1e-12);
            Assert.Equal(part.Outside.Max(s => Math.Max(s.FrontDiameter, s.RearDiameter)), body.Right - body.Left, 1e-12);
        });
        Assert.Equal(0.40 + 0.50 + 0.025 + 0.90, view.Length, 1e-12);
        Assert.Equal(0.040, view.BodyRadius, 1e-12);
    }

    // The volume of the solid of revolution under the drawn corners, frustum by frustum, against the integral of the curve itself.
    [Fact]
    public void The_drawn_nose_encloses_the_volume_of_its_curve()
    {
        var nose = Look().Shapes.First(s => s.Kind == SideKind.Body);
        var right = nose.Outline.TakeWhile(p => p.Across >= 0).ToList();
        var volume = right.Zip(right.Skip(1), (a, b) =>
            Math.PI / 3 * (b.Station - a.Station) * ((a.Across * a.Across) + (a.Across * b.Across) + (b.Across * b.Across))).Sum();
        var exact = Sample.Parts[0].Outside[0].Moments().Volume;
        Assert.InRange(volume / exact, 1 - 2e-4, 1);
    }

    // Between two corners the chord may leave the curve by no more than a thin pencil line.
    [Fact]
    public void Curves_are_drawn_to_two_hundredths_of_a_millimetre()
    {
        var section = Sample.Parts[0].Outside[0];
        var right = Look().Shapes.First(s => s.Kind == SideKind.Body).Outline.TakeWhile(p => p.Across >= 0).ToList();
        Assert.All(right.Zip(right.Skip(1)), pair =>
        {
            var middle = (pair.First.Station + pair.Second.Station) / 2;
            Assert.Equal(section.RadiusAt(middle), (pair.First.Across + pair.Second.Across) / 2, 2e-5);
        });
    }

    [Theory]
    [InlineData(0)]
    [InlineData(0.4)]
    [InlineData(-2.1)]
    public void A_fin_stands_where_its_clock_angle_puts_it(double facing)
    {
        // Fins of the sample: body radius 40 mm, span 90 mm, 3.5 mm thick, at 60, 180 and 300 degrees.
        var fins = Look(facing).Shapes.Where(s => s.Kind == SideKind.Fin).ToList();
        var expected = new[] { 60, 180, 300 }.Select(degrees =>
        {
            var angle = (degrees * Math.PI / 180) - facing;
            return (0.130 * Math.Abs(Math.Sin(angle))) + (0.00175 * Math.Abs(Math.Cos(angle)));
        });
        Assert.Equal(expected.Order(), fins.Select(f => Math.Max(Math.Abs(f.Left), Math.Abs(f.Right))).Order(), (a, b) => Math.Abs(a - b) < 1e-12);

        // The root leading edge is 0.69 m aft of the booster's front, which lies at 0.925 m; the tip's trailing edge 0.20 m behind that.
        Assert.All(fins, f => Assert.Equal((0.925 + 0.69, 0.925 + 0.69 + 0.20), (f.Front, f.Rear), (a, b) => Math.Abs(a.Item1 - b.Item1) + Math.Abs(a.Item2 - b.Item2) < 1e-12));
    }

    [Fact]
    public void Edge_on_a_fin_shows_its_thickness()
    {
        var behind = Look().Shapes.Single(s => s.Kind == SideKind.Fin && Math.Abs(s.Left + s.Right) < 1e-9);
        Assert.Equal(SideLayer.Behind, behind.Layer);
        Assert.Equal(0.0035, behind.Right - behind.Left, 1e-12);
    }

    [Fact]
    public void Looked_at_from_the_other_side_everything_is_mirrored()
    {
        // Rings are cut through the axis, so they look the same from every side.
        var near = Look(0.3);
        var far = Look(0.3 + Math.PI);
        Assert.Equal(Extents(near).Order(), Extents(far).Select(e => (e.Id, -e.Right, -e.Left)).Order(), Close);
        Assert.Equal(near.Holes[0].Across, -far.Holes[0].Across, 1e-12);
        Assert.NotEqual(near.Holes[0].Near, far.Holes[0].Near);

        static IEnumerable<(string Id, double Left, double Right)> Extents(SideView view) =>
            view.Shapes.Where(s => s.Kind != SideKind.Ring).Select(s => (s.Id, s.Left, s.Right));
        static bool Close((string Id, double Left, double Right) a, (string Id, double Left, double Right) b) =>
            a.Id == b.Id && Math.Abs(a.Left - b.Left) < 1e-12 && Math.Abs(a.Right - b.Right) < 1e-12;
    }

    [Fact]
    public void A_fin_with_a_notch_keeps_its_notch_and_its_width()
    {
        FreeFin notched = new([new(0, 0), new(0.05, 0.09), new(0.10, 0.04), new(0.15, 0.09), new(0.20, 0)]);
        var parts = SampleRocket.Parts(Math.PI / 2);
        parts[3] = parts[3] with { Fittings = [.. parts[3].Fittings.Select(f => f is FinPlates p ? p with { Fins = p.Fins with { Outline = notched } } : f)] };
        var fin = Look(0.2, Vehicle.Stack("Notched", parts, SampleRocket.Kinds)).Shapes.Single(s => s.Id == "fin-3-0");
        var angle = (Math.PI / 2) - 0.2;
        Assert.Equal((0.130 * Math.Sin(angle)) + (0.00175 * Math.Cos(angle)), fin.Right, 1e-12);
        Assert.Contains(fin.Outline, p => Math.Abs(p.Across - ((0.080 * Math.Sin(angle)) + (0.00175 * Math.Cos(angle)))) < 1e-12);
    }

    [Fact]
    public void Holes_stand_on_the_surface_at_their_clock_angle()
    {
        var hole = Look().Holes.Single();
        Assert.Equal(0.040 * Math.Sin(Math.PI / 3), hole.Across, 1e-12);
        Assert.True(hole.Near);
    }

    [Fact]
    public void Joints_bays_and_charges_are_the_vehicles()
    {
        var view = Look();
        Assert.Equal(Sample.Joints.Select(j => (j.Break, j.Separable)), view.Joints.Select(j => (j.Break, j.Separable)));
        Assert.All(view.Joints, j => Assert.Equal(Sample.Joints[j.Joint].Engagement, j.To - j.From, 1e-12));
        Assert.Equal(Sample.Bays(SampleRocket.Motor).Select(b => (b.Name, b.Front, b.Rear)), view.Bays.Select(b => (b.Name, b.Front, b.Rear)));
        Assert.Equal(["Main"], view.Bays[0].Contents);

        // Both charges stand on the plates of the altimeter bay, and fire away from it.
        var (drogue, main) = (view.Charges[0], view.Charges[1]);
        Assert.True(drogue.Aftward);
        Assert.False(main.Aftward);
        var bay = view.Bays.Single(b => b.Name == "Bay");
        Assert.True(main.Station < bay.Front && drogue.Station > bay.Rear);
    }

    [Fact]
    public void Every_name_for_picking_is_its_own()
    {
        var view = Look();
        string[] ids = [.. view.Shapes.Select(s => s.Id), .. view.Joints.Select(j => j.Id), .. view.Bays.Select(b => b.Id), .. view.Charges.Select(c => c.Id), .. view.Holes.Select(h => h.Id)];
        Assert.Equal(ids.Length, ids.Distinct().Count());
        Assert.True(view.Shapes.Zip(view.Shapes.Skip(1)).All(p => p.First.Layer <= p.Second.Layer));
        Assert.Equal(view, Look());
    }
}
