using Scribeline.Engine.Recovery;
using Scribeline.Engine.Tests.Published.Air;

namespace Scribeline.Engine.Tests.Published.Recovery;

/// <summary>X1 over four decades of the ballistic parameter: recovery-x1.csv, verified there by direct maximisation (four printed digits).</summary>
public class ForceReductionTests
{
    [Theory]
    [InlineData("X1_n_half", 0.5)]
    [InlineData("X1_n1", 1)]
    [InlineData("X1_n2", 2)]
    [InlineData("X1_n6", 6)]
    public void Curve_is_met(string column, double growth)
    {
        var rows = AirTable.Read("recovery-x1.csv");
        Assert.Equal(27, rows.Count);
        Assert.All(rows, r => Assert.Equal(r.Number(column), OpeningForce.ReductionAt(r.Number("A"), growth), 0.00006));
    }

    /// <summary>Turning points in closed form: (n+2)/(n(n+1)).</summary>
    [Theory]
    [InlineData(0.5, 10.0 / 3)]
    [InlineData(1, 1.5)]
    [InlineData(2, 2.0 / 3)]
    public void Peak_comes_at_full_inflation_from(double growth, double ballistic)
    {
        Assert.Equal(ballistic, OpeningForce.TurningPoint(growth), 1e-12);
        Assert.Equal(OpeningForce.ReductionAt(ballistic * 0.999999, growth), OpeningForce.ReductionAt(ballistic, growth), 1e-5);
    }

    /// <summary>The same mass slowed by a drag area of t^6 (j = 6), integrated without gravity, is the closed solution for n = 6.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(9)]
    [InlineData(200)]
    public void Integration_without_gravity_is_the_closed_solution(double mass)
    {
        const double area = 3.5, density = 1.19, speed = 25, fill = 0.78;
        var opening = new OpeningInputs
        {
            Mass = mass,
            DragArea = area,
            NominalDiameter = 1,
            FillConstant = fill * speed,
            GrowthExponent = 6,
            Speed = speed,
            PathAngle = 0.3,
            Density = density,
            Gravity = 0,
        }.Open();
        var closed = new OpeningForce(area, speed, density, mass, fill, 1, 6).Peak;
        Assert.Equal(closed, opening.Peak, 2e-4 * closed);
    }

    /// <summary>The handbook's own mistakes to catch: a hole within the vent of handbook canopies counts as cloth, a larger one does not.</summary>
    [Fact]
    public void A_vent_is_cloth_and_a_spill_hole_is_not()
    {
        Assert.Equal(0.75, ClothArea.DragAreaWithHole(0.75, 1, 0.01), 1e-12);
        Assert.Equal(0.75 * 0.96, ClothArea.DragAreaWithHole(0.75, 1, 0.04), 1e-12);
        Assert.Equal(100 / (12 * Math.Cos(0.3)), ClothArea.LineLoad(100, 12, 0.3), 1e-12);
    }

    /// <summary>By hand: two canopies of 1 m² that lean 20° away give 2 cos 20°.</summary>
    [Fact]
    public void Canopies_side_by_side_lean_away() => Assert.Equal(1.8794, SteadyDescent.SideBySide([1, 1], double.DegreesToRadians(20)), 1e-4);
}
