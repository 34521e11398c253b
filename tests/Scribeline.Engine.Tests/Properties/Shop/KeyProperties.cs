using CsCheck;
using Scribeline.Engine.Shop;

namespace Scribeline.Engine.Tests.Properties.Shop;

/// <summary>Keys of joints.</summary>
public class KeyProperties
{
    // About even: each hole within a seventh of the pitch of its even place.
    private static readonly Gen<(double Clock, double Along)[]> Pattern =
        Gen.Select(Gen.Double[-0.14, 0.14], Gen.Double[0.01, 0.05]).Array[2, 6]
            .Select(moved => moved.Select((m, i) => (2 * Math.PI * (i + m.Item1) / moved.Length, m.Item2)).ToArray());

    // Turned a little at a time through all that is not the right way, each hole held against every hole: the best of it is the best wrong
    // fit, to what the steps and the holes' slopes allow.
    [Fact]
    public void The_best_wrong_fit_is_found_by_turning_too() => Pattern.Sample(holes =>
    {
        const double radius = 0.05;
        double pitch = 2 * Math.PI / holes.Length, step = 2 * Math.PI / 7200;
        var turned = double.PositiveInfinity;
        for (var turn = pitch / 2; turn <= (2 * Math.PI) - (pitch / 2); turn += step)
        {
            turned = Math.Min(turned, holes.Max(h => holes.Min(o =>
            {
                double round = radius * Math.IEEERemainder(o.Clock - h.Clock - turn, 2 * Math.PI), along = o.Along - h.Along;
                return Math.Sqrt((round * round) + (along * along));
            })));
        }

        // The nearest hole may serve twice, so turning can only find less; with room between the holes it finds the same.
        var best = Keying.BestWrongFit(holes, radius);
        return turned <= best + (radius * step) && (turned >= best - 1e-9 || best > radius * pitch / 4);
    }, iter: 60);

    [Fact]
    public void A_key_does_not_depend_on_the_scribe_line() => Gen.Select(Pattern, Gen.Double[0, 6.28]).Sample((holes, turn) =>
        Math.Abs(Keying.BestWrongFit(holes, 0.05) - Keying.BestWrongFit([.. holes.Select(h => (h.Clock + turn, h.Along))], 0.05)) < 1e-7);

    // One hole of an even row moved along by a: the best wrong fit is a itself.
    [Fact]
    public void A_moved_hole_keys_by_its_offset() => Gen.Select(Gen.Int[2, 8], Gen.Double[0.001, 0.01]).Sample((n, a) =>
        Math.Abs(Keying.BestWrongFit([.. Enumerable.Range(0, n).Select(i => (2 * Math.PI * i / n, i == 0 ? a : 0.0))], 0.05) - a) < 1e-7);

    [Fact]
    public void A_coupler_of_like_ends_can_be_turned_round() =>
        Assert.Equal(0, Keying.BestReversedFit([(0, 0.02), (2, 0.03)], [(0, 0.02), (-2, 0.03)], 0.05), 1e-7);
}
