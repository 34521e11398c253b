using Scribeline.Engine.Aerodynamics;
using Scribeline.Engine.Airframe;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Recovery;
using Scribeline.Engine.Separation;
using Scribeline.Engine.Shop;

namespace Scribeline.Engine.Questions;

/// <content>What reaches the bonds.</content>
public sealed partial class Study
{
    private ValueList<PathElement>? paths;

    /// <summary>Temperature of the workshop, K: as typed, or that of the day.</summary>
    public double BenchTemperature => Rocket.Shop.Practice.Temperature ?? Air.Temperature;

    /// <summary>Peak gauge pressure of a bay that is held shut while all its charges fire at once, Pa; 0 where none fires into it.</summary>
    /// <param name="bay">The bay.</param>
    public double HeldPressure(Bay bay)
    {
        ChargeFiring[] firings = [.. ChargeFirings.Where(f => f.Bay == bay)];
        if (firings.Length == 0) return 0;
        var held = firings[0].Held.Inputs;
        return Fire(held with
        {
            ChargeMass = firings.Sum(f => f.Held.Inputs.ChargeMass),
            Powder = held.Powder with { GrainRadius = firings.Min(f => f.Charge.GrainRadius) },
        }).PeakGauge;
    }

    /// <summary>Everything that pulls on a bond, N, in words; of a fin root the couple on its two fillets.</summary>
    /// <param name="bond">The bond.</param>
    public ValueList<BondLoad> LoadsOn(BondLine bond) => (bond.Kind switch
    {
        BondKind.Joint =>
            [FlownThrough(bond), .. Pushed(b => b.Forward.Part <= bond.Joint && b.Aft.Part > bond.Joint, bond.Diameter), .. Hung($"{Vehicle.Parts[bond.Joint].Name} to {Vehicle.Parts[bond.Joint + 1].Name}: bond")],
        BondKind.Band => [new BondLoad("mass of the bay at the greatest acceleration", Masses.Of(new Piece(bond.Part, bond.Part)).Mass * Flight.Maxima.Acceleration.Value)],
        BondKind.RingsInTube or BondKind.RingsOnMount =>
            [new BondLoad("greatest thrust", Motor.Curve.MaximumThrust), .. Pushed(b => b.Aft.Name == bond.Owner || b.Forward.Name == bond.Owner, bond.Diameter), .. Hung("Rings of the motor mount: bond")],
        BondKind.Plate => [.. Pushed(b => b.Aft.Name == bond.Owner || b.Forward.Name == bond.Owner, bond.Diameter), .. Hung($"{bond.Owner}: bond")],
        _ => OnFins(bond),
    }).Where(l => l.Force > 0).ToValueList();

    // Tension and bending together, as the pull that would load the whole ring like its most loaded line: F + 2M/r.
    private BondLoad FlownThrough(BondLine bond)
    {
        var forces = Ascent.Where(s => s.Time <= Flight.Bodies[0].End).Select(s => JointLoads.At(bond.Joint, MomentAt(s.Time)));
        return new("flight, tension and bending", forces.Select(f => Math.Abs(f.Tension) + (4 * f.Bending / bond.Diameter)).DefaultIfEmpty(0).Max());
    }

    private IEnumerable<BondLoad> Pushed(Func<Bay, bool> bay, double diameter) =>
        Bays.Where(bay).Select(b => new BondLoad($"all charges of {b.Name} at once, held shut", HeldPressure(b) * Math.PI / 4 * diameter * diameter));

    // What canopies and harnesses pull, element by element.
    private IEnumerable<BondLoad> Hung(string element) =>
        LazyInitializer.EnsureInitialized(ref paths, () => LoadPathOf(Flight)).Where(e => e.Name.StartsWith(element, StringComparison.Ordinal)).Select(e => new BondLoad(e.Cause, e.Load));

    private IEnumerable<BondLoad> OnFins(BondLine bond)
    {
        if (FreeAscent.Count == 0 || bond.Fillet <= 0 || Shape.Fins.FirstOrDefault(f => f.Name == bond.Owner) is not { } fins) yield break;
        var worst = FreeAscent.MaxBy(s => s.DynamicPressure * Math.Abs(s.AngleOfAttack))!;
        var slope = AeroBreakdown.Of(Shape, worst.Mach, ReynoldsPerMetreAt(worst)).Lift.Where(l => l.OfFins && l.Name.StartsWith(fins.Name, StringComparison.Ordinal)).Sum(l => l.Slope);
        var side = worst.DynamicPressure * Shape.ReferenceArea * slope * Math.Abs(worst.AngleOfAttack) / (fins.Count / 2.0);
        yield return new("side force in flight, as a couple on the two fillets", side * FinPlanform.Of(fins.Outline).SpanwiseCentre / (fins.Thickness + bond.Fillet));
    }
}

/// <summary>Something that pulls on a bond.</summary>
/// <param name="Name">In words.</param>
/// <param name="Force">N.</param>
public sealed record BondLoad(string Name, double Force);
