using Scribeline.Engine.Design;
using Scribeline.Engine.Evidence;
using Scribeline.Engine.Motors;
using Scribeline.Engine.Numerics;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Recovery;
using Scribeline.Engine.Separation;
using Scribeline.Engine.Shop;

namespace Scribeline.Engine.Resolving;

/// <summary>Turns a design into a rocket and a day, with everything that is wrong or missing.</summary>
public static class DesignResolver
{
    /// <summary>Resolves the design.</summary>
    /// <param name="design">As typed, its files read.</param>
    /// <param name="draw">Value to take for a measure, see <see cref="Draws"/>.</param>
    /// <param name="gusts">Stream of the turbulence; null for the mean wind alone.</param>
    /// <param name="chosen">Charges chosen for the design as typed, when this is a case of it; null to choose them now.</param>
    public static Resolution Resolve(RocketDesign design, Func<IMeasure, double> draw, RandomStream? gusts = null, ValueList<ChargeLoad>? chosen = null)
    {
        List<Problem> problems = [];
        List<string> missing = [], recovery = [];
        var motor = design.Motor?.Value is { } typed ? MotorResolver.Resolve(typed, draw, problems) : null;
        var thrustScale = design.ThrustScale is { } factor ? draw(factor) : 1;
        if (thrustScale is > 0 and not 1) motor = motor?.Scaled(thrustScale, 1);
        var airframe = AirframeResolver.Resolve(design, motor, draw);
        var vehicle = airframe.Vehicle;
        problems.AddRange(airframe.Problems);
        var day = DayResolver.Resolve(design, motor, draw, gusts, missing, problems);
        var limits = LimitResolver.Resolve(design.Limits, problems);
        if (vehicle is null) return new(null, motor, day, missing.ToValueList(), problems.ToValueList());

        missing.AddRange(airframe.Open.Select(o => o.ToString()));
        if (vehicle.MotorPart < 0) missing.Add("parts: a motor mount");
        if (vehicle.GuideStations().Length < 2) missing.Add("parts: rail guides, at least two");
        var canopies = design.Stowed.Where(s => s.Canopy is not null).Select(s => CanopyResolver.Resolve(s.Canopy!, s.In, draw, recovery)).OfType<Canopy>().ToValueList();
        var firing = new FiringResolver(design, vehicle, canopies.Select(c => c.Name).ToValueList(), draw, problems);
        var firings = firing.Resolve();
        if (design.Firing.Count == 0) recovery.Add("firing: an altimeter with the charges it fires");
        if (canopies.Count == 0 && recovery.Count == 0) recovery.Add("stowed: a canopy");
        var gear = new SeparationResolver(design, vehicle, draw).Resolve();
        var coldest = day?.Air.At<Scalar>(day.Air.Elevation).Temperature ?? double.PositiveInfinity;
        var outside = new HoleResolver(design, vehicle, draw);
        var holes = outside.Holes();
        var charges = new ChargeResolver(design, vehicle, motor, firing, gear, holes, limits, coldest, draw).Resolve(chosen);
        var shop = ShopResolver.Resolve(design, vehicle, draw);
        var failures = new FailureResolver(design, vehicle, firing, firings, draw, problems).Resolve();
        var rocket = new Rocket(design.Name, design.Display == DisplaySystem.Inch, vehicle, canopies, firings, design.DragScale is { } scale ? draw(scale) : 1, recovery.ToValueList(), airframe.Open, airframe.Assumed, limits)
        {
            DragBasis = design.DragScale?.Known ?? Basis.Estimated,
            ThrustScale = thrustScale,
            PortLag = design.PortLag is { } lag ? draw(lag) : null,
            Failures = failures,
            Separation = gear with { Charges = charges },
            Rigging = new RiggingResolver(design, vehicle, draw).Resolve(),
            Holes = holes,
            SurfaceThings = outside.Things(),
            Shop = shop,
            Build = chosen is null ? new BuildResolver(design, vehicle, shop).Resolve() : BuildSteps.None,
            Weighings = chosen is null ? ReconciliationResolver.Resolve(design, vehicle) : Weighings.None,
            Swung = WeighingResolver.Swings(vehicle, design, draw),
            Shots = chosen is null ? ShotResolver.Resolve(design) : [],
            ShotsCount = design.Records is { ShotsCount: true },
            Circuits = CircuitResolver.Circuits(design, draw),
        };
        return new(rocket, motor, missing.Count > 0 ? null : day, missing.ToValueList(), problems.ToValueList());
    }
}
