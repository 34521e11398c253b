using CsCheck;
using Scribeline.Engine.Airframe;
using Scribeline.Engine.Design;
using Scribeline.Engine.Motors;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Resolving;
using Scribeline.Engine.Tables;
using UnitsNet;
using static Scribeline.Engine.Tests.Properties.Resolving.SampleDesign;

namespace Scribeline.Engine.Tests.Properties.Resolving;

public class AirframeResolverTests
{
    private const double Inch = 0.0254;

    private static Vehicle Made(RocketDesign design, Motor? motor = null)
    {
        AirframeResolution resolution = AirframeResolver.Resolve(design, motor);
        Assert.Empty(resolution.Problems);
        return resolution.Vehicle!;
    }

    private static RocketDesign With(int index, PartDesign part) =>
        TypedRocket with { Parts = TypedRocket.Parts.Select((p, i) => i == index ? part : p).ToValueList() };

    private static void Complains(RocketDesign design, string at, string words) =>
        Assert.Contains(AirframeResolver.Resolve(design).Problems, p => p.At == at && p.Message.Contains(words, StringComparison.Ordinal));

    [Fact]
    public void A_whole_design_becomes_an_airframe()
    {
        Vehicle vehicle = Made(TypedRocket);
        Assert.Equal((15 + 20 + 1 + 36) * Inch, vehicle.Length, 1e-12);
        Assert.Equal(6e-6, vehicle.Roughness);
        Assert.Equal([JointKind.Pinned, JointKind.Screwed, JointKind.Pinned], vehicle.Joints.Select(j => j.Kind));
        Assert.Equal(3.5 * Inch, vehicle.Joints[2].Engagement, 1e-12);
        Assert.Equal(["Payload", "Bay", "Booster"], vehicle.Bays().Select(b => b.Name));

        // Fins end a quarter inch before the tail.
        FinSet fins = vehicle.Outside().Fins[0];
        Assert.Equal(vehicle.Length - 8.25 * Inch, fins.RootLeadingEdge, 1e-12);
        Assert.Equal(MaterialTable.Find("glass epoxy")!.ShearModulus, fins.ShearModulus);
    }

    [Fact]
    public void Typed_masses_and_balances_rule()
    {
        MassBreakdown masses = Made(TypedRocket).Masses();
        Assert.Equal(0.318, masses.Parts[0].Built.Mass, 1e-12);
        Assert.Equal(9.4 * Inch, masses.Parts[0].Built.Station, 1e-12);
        Assert.Equal(Basis.Measured, masses.Parts[0].Built.Basis);
        Assert.Equal(0.420, masses.Parts[2].Built.Mass, 1e-12);
        Assert.Equal(Basis.Estimated, masses.Parts[2].Built.Basis);
        Assert.Equal(0.270, masses.Parts[1].Stowed.Mass, 1e-12);
        Assert.Equal(25 * 0.3048 * 0.020, masses.Parts[3].Stowed.Mass, 1e-12);
    }

    [Fact]
    public void Plates_sit_inside_unless_they_are_wider_than_the_bore()
    {
        Vehicle vehicle = Made(TypedRocket);
        Part bay = vehicle.Parts[2];
        BulkPlate[] plates = [.. bay.Fittings.OfType<BulkPlate>()];
        Assert.Equal(bay.FrontReach, bay.Front + plates[0].Offset, 1e-12);
        Assert.Equal(bay.RearReach, bay.Front + plates[1].Offset, 1e-12);

        // Rods: half an inch of thread beyond the plates at each end.
        Rods rods = bay.Fittings.OfType<Rods>().Single();
        Assert.Equal((8 + 0.25 + 1) * Inch, rods.Length, 1e-12);
        Assert.Equal(0.2175 * Inch, rods.Diameter, 1e-5 * Inch * 10);
    }

    [Fact]
    public void Stowed_things_lie_in_order_against_the_aft_closure()
    {
        Vehicle vehicle = Made(TypedRocket);
        Bay bay = vehicle.Bays()[0];
        Stowed main = vehicle.Parts[1].Stowed[0], blanket = vehicle.Parts[1].Stowed[1];
        Assert.Equal(bay.Rear, vehicle.Parts[1].Front + blanket.Offset + Inch, 1e-12);
        Assert.Equal(blanket.Offset, main.Offset + 6 * Inch, 1e-12);

        // A length alone fills the bay from wall to wall.
        Assert.Equal(500e-6 + Math.PI / 4 * bay.Bore * bay.Bore * Inch, bay.StowedVolume, 1e-12);
        Stowed cord = vehicle.Parts[3].Stowed[0];
        Bay booster = vehicle.Bays()[2];
        Assert.Equal((booster.Front + booster.Rear) / 2, vehicle.Parts[3].Front + cord.Offset, 1e-12);
    }

    [Fact]
    public void A_missing_mass_is_open_and_a_missing_material_a_problem()
    {
        RocketDesign open = TypedRocket with { Stowed = [new() { In = "Payload", Canopy = new() { Name = "Main", Type = CanopyType.Annular, At = "stowed[0].canopy" } }] };
        Assert.Contains(AirframeResolver.Resolve(open).Open, p => p.At == "stowed[0].canopy.mass");
        Complains(With(1, Payload with { Material = null }), "parts[1]", "neither a material nor a mass");
        Complains(With(1, Payload with { Material = "glas epoxi" }), "parts[1].material", "no known material");
        Assert.Contains("glass epoxy", AirframeResolver.Resolve(With(1, Payload with { Material = "glas epoxi" })).Problems[0].Suggestion);
        Made(With(1, Payload with { Material = null, Mass = M("400 g") }));
    }

    [Fact]
    public void The_builders_own_material_comes_first()
    {
        RocketDesign own = TypedRocket with
        {
            Materials = [new() { Name = "Glass Epoxy", Density = Measure.Read<Density>("2 g/cm³").Value!, Source = "weighed" }],
        };
        double usual = Made(TypedRocket).Parts[1].Bare.Mass, heavier = Made(own).Parts[1].Bare.Mass;
        Assert.Equal(2000.0 / 1825, heavier / usual, 1e-12);
        Assert.True(double.IsNaN(Made(own).Outside().Fins[0].ShearModulus));
    }

    [Fact]
    public void Joints_must_join_neighbours_once()
    {
        Complains(TypedRocket with { Joints = [TypedRocket.Joints[0], TypedRocket.Joints[1]] }, "joints", "how Payload meets Bay");
        Complains(
            TypedRocket with { Joints = [.. TypedRocket.Joints, new() { Between = ["Nose", "Booster"], Kind = JointWord.Bonded, At = "joints[3]" }] },
            "joints[3]", "cannot be joined");
    }

    [Fact]
    public void Problems_of_a_joint_are_placed_where_the_design_has_it() =>
        Complains(With(0, Nose with { Shoulder = new() { Length = L("3 in"), Outside = L("3.05 in") } }), "joints[1]", "too wide");

    [Fact]
    public void Everything_wrong_is_said_at_once()
    {
        RocketDesign bad = TypedRocket with
        {
            Parts = [Nose with { Wall = null }, Payload with { Inside = null }, SampleDesign.Bay with { Band = SampleDesign.Bay.Band with { FromAftEnd = null } }, Booster],
        };
        Assert.Equal(3, AirframeResolver.Resolve(bad).Problems.Count);
    }

    [Fact]
    public void Defaults_are_listed() =>
        Assert.Contains(AirframeResolver.Resolve(TypedRocket with { Surface = null }).Assumed, p => p.Message.Contains("20 µm", StringComparison.Ordinal));

    [Fact]
    public void Drawn_values_take_the_place_of_nominal_ones() => Gen.Double[-2, 2].Sample(deviations =>
    {
        Vehicle drawn = AirframeResolver.Resolve(TypedRocket, null, m => m.Si + deviations * m.Sigma).Vehicle!;
        Assert.Equal(0.318 + deviations * 0.001, drawn.Masses().Parts[0].Built.Mass, 1e-12);
        Assert.Equal(0.420 + deviations * 0.005, drawn.Masses().Parts[2].Built.Mass, 1e-12);
    });

    [Fact]
    public void A_weighing_with_the_motor_needs_the_motor()
    {
        RocketDesign weighed = TypedRocket with
        {
            Records = new() { Weighed = [new() { Mass = M("4.6 kg"), Balance = L("44 in"), Stowed = true, Motor = true, At = "records.weighed[0]" }] },
        };
        Assert.Contains(AirframeResolver.Resolve(weighed).Open, p => p.At == "records.weighed[0]");
        Motor motor = new(
            "M", new([new(0, 0), new(0.1, 500), new(2, 400), new(2.1, 0)]), 0.054, 0.40, 1.2, 0.6, null, null, null, [], true, Basis.Measured);
        Vehicle vehicle = Made(weighed, motor);
        MassProperties whole = MassProperties.Sum(vehicle.Masses().Of(vehicle.Whole), vehicle.Load(motor)!.Loaded);
        Assert.Equal(4.6, whole.Mass, 1e-12);
        Assert.Equal(44 * Inch, whole.Station, 1e-12);
    }

    [Fact]
    public void Units_make_no_difference()
    {
        RocketDesign metric = With(1, Payload with { Length = L("508 mm"), Outside = L("79.248 mm"), Inside = L("7.62 cm") });
        Vehicle a = Made(TypedRocket), b = Made(metric);
        Assert.Equal(a.Parts[1].Bare.Mass, b.Parts[1].Bare.Mass, 1e-12);
        Assert.Equal(a.Length, b.Length, 1e-12);
    }

    [Fact]
    public void A_free_outline_must_close_and_not_cross()
    {
        FinsDesign free = Booster.Fins[0] with { Shape = FinShape.Free, Corners = [Corner("0 in", "0 in"), Corner("6 in", "3 in"), Corner("2 in", "3 in"), Corner("8 in", "0 in")] };
        Complains(With(3, Booster with { Fins = [free] }), "parts[3].fins[0].corners", "crosses itself");
        Complains(With(3, Booster with { Fins = [free with { Corners = [Corner("0 in", "0 in"), Corner("6 in", "3 in"), Corner("8 in", "1 in")] }] }), "parts[3].fins[0].corners", "end on the root");
        Made(With(3, Booster with { Fins = [free with { Corners = [Corner("0 in", "0 in"), Corner("5 in", "3 in"), Corner("8 in", "0 in")] }] }));
    }

    private static CornerDesign Corner(string aft, string outward) => new() { Aft = L(aft), Out = L(outward) };
}
