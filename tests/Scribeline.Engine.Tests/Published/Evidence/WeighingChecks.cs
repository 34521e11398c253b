using CsCheck;
using MathNet.Numerics.LinearAlgebra;
using Scribeline.Engine.Evidence;
using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Tests.Published.Evidence;

/// <summary>
/// Weighings of parts and of the whole brought together, and moments of inertia from swings. The worked values were computed by hand from the
/// closed forms named beside them; chance values agree with tables of chi squared with one degree of freedom.
/// </summary>
public class WeighingChecks
{
    private static readonly ValueList<MassReading> Parts =
        [new("a", 1.210, 0.005), new("b", 1.835, 0.005), new("c", 0.940, 0.005), new("d", 3.350, 0.010)];

    // Closed form for one whole: with the gap D and V = sum of all squared uncertainties, chi squared is D²/V.
    [Theory]
    [InlineData(7.352, 1.445, 0.229)]
    [InlineData(7.380, 10.125, 0.0015)]
    public void Parts_of_7335_g_against_a_whole(double whole, double chiSquared, double chance)
    {
        var together = Together(whole);
        Assert.Equal(chiSquared, together.ChiSquared, 0.005);
        Assert.Equal(chance, together.Chance, 0.0005);
        Assert.Equal(1, together.Freedom);
    }

    // m_i' = m_i + u_i² D/V; the sum's variance is 1/(1/sum u_i² + 1/u_M²).
    [Fact]
    public void Parts_move_by_their_squared_uncertainty()
    {
        var masses = Together(7.352).Parts.Select(p => 1000 * p.Mass).ToArray();
        Assert.Equal([1212.1, 1837.1, 942.1, 3358.5], masses, (x, y) => Math.Abs(x - y) < 0.05);
        Assert.Equal(7349.9, masses.Sum(), 0.05);
    }

    [Fact]
    public void Without_a_whole_the_parts_stay() => Assert.Equal((Parts, 1.0), (MassReconciliation.Of(Parts, []).Parts, MassReconciliation.Of(Parts, []).Chance));

    // Straight by the normal equations, x = (Aᵀ W A)⁻¹ Aᵀ W y, over all readings of masses and moments at once.
    [Fact]
    public void Agrees_with_the_normal_equations() =>
        Gen.Select(Gen.Double[0.1, 5], Gen.Double[0.001, 0.1], Gen.Double[0, 3], Gen.Double[0.001, 0.05]).Array[2, 5].SelectMany(
            p => Gen.Select(Gen.Const(p), Gen.Double[0.9, 1.1], Gen.Double[-0.02, 0.02])).Sample((p, factor, shift) =>
        {
            var parts = p.Select((x, i) => new MassReading($"{i}", x.Item1, x.Item2, x.Item3, x.Item4)).ToValueList();
            var mass = parts.Sum(x => x.Mass);
            var whole = new MassReading("whole", mass * factor, 0.01, (parts.Sum(x => x.Moment) / mass) + shift, 0.002);
            var ours = MassReconciliation.Of(parts, [new([.. Enumerable.Range(0, p.Length)], whole, mass)]);

            MassReading[] all = [.. parts, whole];
            var a = Matrix<double>.Build.Dense(2 * all.Length, 2 * p.Length, (r, c) => r / 2 == p.Length ? (r % 2 == c % 2 ? 1 : 0) : (r == c ? 1 : 0));
            var y = Vector<double>.Build.Dense(2 * all.Length, r => r % 2 == 0 ? all[r / 2].Mass : all[r / 2].Moment);
            var c = Matrix<double>.Build.Dense(2 * all.Length, 2 * all.Length);
            for (var i = 0; i < all.Length; i++)
            {
                double m = all[i].MassSigma * all[i].MassSigma, x = all[i].Station, s = all[i].StationSigma;
                (c[2 * i, 2 * i], c[2 * i, (2 * i) + 1], c[(2 * i) + 1, 2 * i]) = (m, x * m, x * m);
                c[(2 * i) + 1, (2 * i) + 1] = (x * x * m) + (all[i].Mass * all[i].Mass * s * s);
            }

            var w = c.Inverse();
            var straight = (a.Transpose() * w * a).Solve(a.Transpose() * w * y);
            for (var i = 0; i < p.Length; i++)
            {
                Assert.Equal(straight[2 * i], ours.Parts[i].Mass, 1e-7 * mass);
                Assert.Equal(straight[(2 * i) + 1], ours.Parts[i].Moment, 1e-6 * mass);
            }

            var residual = y - (a * straight);
            Assert.Equal(residual * (w * residual), ours.ChiSquared, 1e-5 * (1 + ours.ChiSquared));
        });

    // A whole known far better than its parts is matched by them.
    [Fact]
    public void A_sure_whole_rules()
    {
        ValueList<MassReading> parts = [new("a", 1, 0.05, 0.5, 0.02), new("b", 2, 0.05, 1.5, 0.02)];
        var together = MassReconciliation.Of(parts, [new([0, 1], new("whole", 3.1, 1e-7, 1.2, 1e-7), 3)]).Parts;
        Assert.Equal(3.1, together.Sum(p => p.Mass), 1e-6);
        Assert.Equal(1.2, together.Sum(p => p.Moment) / 3.1, 1e-6);
    }

    [Fact]
    public void A_balance_alone_moves_the_balance_of_the_parts()
    {
        ValueList<MassReading> parts = [new("a", 1, 1e-6, 0.5, 0.02), new("b", 1, 1e-6, 1.5, 0.02)];
        var together = MassReconciliation.Of(parts, [new([0, 1], new("whole", double.NaN, 0, 1.02, 1e-7), 2)]);
        Assert.Equal(1.02, together.Parts.Sum(p => p.Moment) / 2, 1e-5);

        // Two stations of 20 mm each give their mean 14.1 mm: 20 mm off is 1.414 of that, squared 2.
        Assert.Equal(2, together.ChiSquared, 1e-3);
    }

    // m g d² T²/(16 π² L) with 7.380 kg, 0.800 m, 1.200 m, 3.170 s; radius of gyration the root of I/m.
    [Fact]
    public void A_level_swing()
    {
        var swing = new Swing(7.380, 0.400, 0.400, 1.200, 3.170);
        Assert.Equal(2.4563, swing.Inertia, 0.0002 * 2.4563);
        Assert.Equal(0.5769, Math.Sqrt(swing.Inertia / swing.Mass), 0.0002 * 0.5769);
        Assert.Equal(0.00441, swing.Uncertainty(0.005, 0.001, 0.002, 0.005), 0.00005);
    }

    // m g a b T²/(4 π² L).
    [Fact]
    public void Unequal_arms() => Assert.Equal(2.4179, new Swing(7.380, 0.35, 0.45, 1.200, 3.170).Inertia, 0.0002 * 2.4179);

    // Two lines 0.05 m from the axis, nose up.
    [Fact]
    public void A_rolling_swing() => Assert.Equal(0.00462, new Swing(7.380, 0.05, 0.05, 1.200, 1.1).Inertia, 0.002 * 0.00462);

    // Second term of the series of the period; the whole period by quadrature agrees.
    [Fact]
    public void A_swing_of_ten_degrees_takes_a_little_longer() => Assert.Equal(0.00127, new Swing(1, 1.0 / 3, 1.0 / 3, 1, 1).Excess(Math.PI / 18), 0.00002);

    private static MassReconciliation Together(double whole) => MassReconciliation.Of(Parts, [new([0, 1, 2, 3], new("whole", whole, 0.005), 7.335)]);
}
