using CsCheck;
using Scribeline.Engine.Numerics;
using Scribeline.Engine.Shop;

namespace Scribeline.Engine.Tests.Properties.Shop;

/// <summary>Outlines and layouts of plates.</summary>
public class PlateProperties
{
    private static readonly Gen<PlateOutline> AnyOutline = Gen.OneOf<PlateOutline>(
        Gen.Select(Gen.Double[-0.04, 0.04], Gen.Double[-0.04, 0.04], Gen.Double[0.002, 0.015], (x, y, r) => (PlateOutline)new PlateCircle(x, y, r)),
        Gen.Select(Gen.Double[-0.04, 0.04], Gen.Double[-0.04, 0.04], Gen.Double[0.004, 0.03], Gen.Double[0.004, 0.03], Gen.Double[0, 3.1], (x, y, l, w, t) => (PlateOutline)new PlateRectangle(x, y, l, w, t)));

    // Points all along both outlines, taken pair by pair: their least distance can only be a little more than the true gap.
    [Fact]
    public void A_gap_is_the_least_distance_of_points_on_the_outlines() => Gen.Select(AnyOutline, AnyOutline).Sample((a, b) =>
    {
        var gap = Outlines.Gap(a, b);
        var least = Points(a).Min(p => Points(b).Min(q => Math.Sqrt(((p.X - q.X) * (p.X - q.X)) + ((p.Y - q.Y) * (p.Y - q.Y)))));
        return gap > 0 ? least >= gap - 1e-9 && least <= gap + 0.0006 : least <= 0.0006 || Inside(a, b) || Inside(b, a);
    }, iter: 300);

    [Fact]
    public void A_gap_is_the_same_from_either_side_and_after_a_turn() => Gen.Select(AnyOutline, AnyOutline, Gen.Double[0, 6.28]).Sample((a, b, turn) =>
    {
        var (sin, cos) = Math.SinCos(turn);
        PlateOutline Turned(PlateOutline o) => o.At((o.X * cos) - (o.Y * sin), (o.X * sin) + (o.Y * cos), turn);
        return Math.Abs(Outlines.Gap(a, b) - Outlines.Gap(b, a)) < 1e-12 && Math.Abs(Outlines.Gap(a, b) - Outlines.Gap(Turned(a), Turned(b))) < 1e-9;
    });

    private static IEnumerable<(double X, double Y)> Points(PlateOutline outline)
    {
        if (outline is PlateCircle c) return Enumerable.Range(0, 200).Select(i => (c.X + (c.Radius * Math.Cos(i * Math.PI / 100)), c.Y + (c.Radius * Math.Sin(i * Math.PI / 100))));
        var corners = ((PlateRectangle)outline).Corners;
        return Enumerable.Range(0, 4).SelectMany(k => Enumerable.Range(0, 60).Select(i =>
        {
            var (from, to) = (corners[k], corners[(k + 1) % 4]);
            return (from.X + ((to.X - from.X) * i / 60), from.Y + ((to.Y - from.Y) * i / 60));
        }));
    }

    private static bool Inside(PlateOutline a, PlateOutline b) => Outlines.Gap(new PlateCircle(a.X, a.Y, 0), b) < 0;

    private static PlateDraft Draft(params PlateGroup[] groups) => new(new("plate", 0, 0.096, 0, 0.0032, 0, 0.0991, 0.0991, []), [.. groups]);

    private static PlateGroup Round(string name, double diameter, double? fromCentre = null, double? clock = null, int count = 1) => new(
        name, count, fromCentre, clock, [new PlateThing(name + "#", PlateThingKind.Other, PlateFace.Forward, new PlateCircle(0, 0, diameter / 2), "", true)]);

    private static double Least(PlateLayout layout) => PlateGaps.Of(layout).Min(g => g.Width);

    // Three equal circles in a ring: as wide apart as the wall lets them, on a triangle. With s the free width to the wall and between
    // them, r = R - ρ - s and r √3 = 2 ρ + s give s by hand.
    [Fact]
    public void Three_cups_find_their_triangle()
    {
        double wall = 0.0991 / 2, rho = 0.010, s = ((Math.Sqrt(3) * (wall - rho)) - (2 * rho)) / (1 + Math.Sqrt(3));
        Assert.Equal(s, Least(PlateSolver.Solve(Draft(Round("a", 0.020), Round("b", 0.020), Round("c", 0.020)))), 0.0002);
    }

    [Fact]
    public void What_is_fixed_stays()
    {
        var solved = PlateSolver.Solve(Draft(Round("rod", 0.028, 0.03175, 0, 2), Round("cup", 0.016), Round("other", 0.016, clock: 1)));
        Assert.Equal(0.03175, solved.Things.First(t => t.Owner == "rod 1").Outline.X, 1e-12);
        Assert.Equal(1, solved.Proposals.Single(p => p.Group == "other").Clock, 1e-12);
        Assert.Equal(["cup", "other"], solved.Proposals.Select(p => p.Group));
        Assert.False(solved.Things.Single(t => t.Owner == "cup").Fixed);
    }

    // No place drawn at random may beat what the solver found by more than a fifth of a millimetre.
    [Fact]
    public void No_random_layout_is_better()
    {
        var groups = new[] { Round("rod", 0.028, 0.03175, 0, 2), Round("cup", 0.016), Round("second cup", 0.016), Round("hole", 0.006) };
        var found = Least(PlateSolver.Solve(Draft(groups)));
        RandomStream stream = new(7, "layouts");
        double Radius() => stream.Uniform() * 0.045;
        double Clock() => stream.Uniform() * 2 * Math.PI;
        for (var i = 0; i < 3000; i++)
        {
            var tried = Draft([groups[0], .. groups.Skip(1).Select(g => g with { FromCentre = Radius(), Clock = Clock() })]);
            Assert.True(Least(PlateSolver.Solve(tried)) <= found + 0.0002);
        }
    }

    // Rods run straight through: one plate may not ask for another place than the other.
    [Fact]
    public void Rods_sit_alike_on_both_plates()
    {
        var solved = PlateSolver.Solve([Draft(Round("rod", 0.028, count: 2), Round("cup", 0.016)), Draft(Round("rod", 0.028, count: 2), Round("block", 0.030), Round("hole", 0.006))]);
        Assert.Equal(solved[0].Things.Where(t => t.Owner.StartsWith("rod", StringComparison.Ordinal)).Select(t => t.Outline), solved[1].Things.Where(t => t.Owner.StartsWith("rod", StringComparison.Ordinal)).Select(t => t.Outline));
        Assert.All(solved, p => Assert.Contains(p.Proposals, q => q.Group == "rod"));
        Assert.All(solved, p => Assert.True(Least(p) > 0));
    }

    [Fact]
    public void Both_faces_are_apart()
    {
        var cup = new PlateCircle(0.02, 0, 0.008);
        PlateLayout On(PlateFace first, PlateFace second) => new(
            "plate", 0, 0.096, 0, 0.0032, 0, 0.0991, 0.0991,
            [new PlateThing("a", PlateThingKind.ChargeCup, first, cup, "a", true), new PlateThing("b", PlateThingKind.ChargeCup, second, cup, "b", true)]);
        Assert.Contains(PlateGaps.Of(On(PlateFace.Forward, PlateFace.Forward)), g => !g.Wall);
        Assert.DoesNotContain(PlateGaps.Of(On(PlateFace.Forward, PlateFace.Aft)), g => !g.Wall);
        Assert.Contains(PlateGaps.Of(On(PlateFace.Through, PlateFace.Aft)), g => !g.Wall);
    }

    // An antenna's space keeps off nuts, not off a hole for wires, and may reach over the edge.
    [Fact]
    public void Kept_clear_of_metal()
    {
        PlateLayout With(PlateThingKind kind) => new(
            "plate", 0, 0.096, 0, 0.0032, 0, 0.0991, 0.0991,
            [new PlateThing("antenna", PlateThingKind.KeepClear, PlateFace.Aft, new PlateCircle(0.04, 0, 0.02), "antenna", true), new PlateThing("b", kind, PlateFace.Through, new PlateCircle(0.02, 0, 0.004), "b", true)]);
        Assert.Single(PlateGaps.Of(With(PlateThingKind.Hole)), g => !g.Wall && g.Width < 0);
        Assert.DoesNotContain(PlateGaps.Of(With(PlateThingKind.WireHole)), g => !g.Wall);
        Assert.DoesNotContain(PlateGaps.Of(With(PlateThingKind.WireHole)), g => g.First == "antenna");
    }
}
