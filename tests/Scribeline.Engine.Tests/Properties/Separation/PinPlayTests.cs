using CsCheck;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Separation;
using Scribeline.Engine.Tables;

namespace Scribeline.Engine.Tests.Properties.Separation;

public class PinPlayTests
{
    private static readonly PinSet Three = PinSet.Of("#2-56 nylon", 3, ThreadGeometry.Of(ThreadName.Read("#2-56").Value!)!.Value, PinMaterial.Find("nylon")!);

    [Fact]
    public void Pins_without_play_share_evenly() => Assert.Equal(3 * Three.Low, Three.Weakest(296.15), 1e-9);

    // Plays 0, 0.2, 0.4 mm: (1 + 1 + 2/3) of three pins, by eq. F(x) = Σ F min((x − g)/δ_u, 1) at x = 0.6 mm, by hand.
    [Fact]
    public void Play_within_the_travel_of_a_pin_costs_the_last_one_a_part() =>
        Assert.Equal(8.0 / 9, PinSharing.ShareUnderPlay(3, 0.4e-3), 1e-12);

    [Fact]
    public void Great_play_leaves_one_pin_at_a_time() => Assert.Equal(1.0 / 4, PinSharing.ShareUnderPlay(4, 10e-3), 1e-12);

    [Fact]
    public void More_play_never_holds_better() => Gen.Select(Gen.Int[2, 8], Gen.Double[0, 2e-3], Gen.Double[0, 1e-3]).Sample((count, play, more) =>
        PinSharing.ShareUnderPlay(count, play + more) <= PinSharing.ShareUnderPlay(count, play) + 1e-12);

    [Fact]
    public void The_strongest_pins_know_no_play() =>
        Assert.Equal(Three.Strongest(296.15), (Three with { Play = 1e-3 }).Strongest(296.15));
}
