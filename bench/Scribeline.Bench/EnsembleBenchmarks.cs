using BenchmarkDotNet.Attributes;
using Scribeline.Engine.Flight;
using Scribeline.Engine.Questions;

namespace Scribeline.Bench;

/// <summary>Many flights in lanes against the same flights one by one.</summary>
[MemoryDiagnoser]
public class EnsembleBenchmarks
{
    private const int Flights = 256, Different = 64;

    private EnsembleInputs many = null!;
    private EnsembleCase[] cases = null!;
    private FlightInputs[] alone = null!;

    [GlobalSetup]
    public void Prepare()
    {
        var studies = Studies.Of(NightHeron.Design);
        var nominal = studies.Nominal!;
        var inputs = NightHeron.Inputs(nominal) with { Options = FlightOptions.OneOfMany };
        many = new(inputs, nominal.Aero, (1.3 * nominal.Flight.Apogee!.Height) + 200);
        alone = [.. Enumerable.Range(0, Different).Select(i => NightHeron.Inputs(studies.Case(i)!) with { Options = FlightOptions.OneOfMany })];
        cases = [.. alone.Select(a => new EnsembleCase(a.Mass, a.Rail, a.Air, a.Wind, a.Recovery, a.Motor.Curve.TotalImpulse / inputs.Motor.Curve.TotalImpulse, AeroFactors.None))];
    }

    [Benchmark(Baseline = true, OperationsPerInvoke = Flights, Description = "one by one, 1e-4")]
    public int Alone()
    {
        var landed = 0;
        for (var i = 0; i < Flights; i++) landed += alone[i % Different].Fly(many.Aerodynamics).Landings.Count;
        return landed;
    }

    [Benchmark(OperationsPerInvoke = Flights, Description = "one lane, one core")]
    public int One() => Fly(1, 1);

    [Benchmark(OperationsPerInvoke = Flights, Description = "four lanes, one core")]
    public int Four() => Fly(4, 1);

    [Benchmark(OperationsPerInvoke = Flights, Description = "eight lanes, one core")]
    public int Eight() => Fly(8, 1);

    [Benchmark(OperationsPerInvoke = Flights, Description = "eight lanes, two cores")]
    public int EightOnTwo() => Fly(8, 2);

    [Benchmark(Description = "10 000 flights with their draws, as planned, on all cores")]
    public int TenThousand() => NightHeron.Fresh().Flying(10_000).Landings.Flights;

    private int Fly(int lanes, int threads) => many.Fly(Flights, i => cases[i % Different], lanes: lanes, threads: threads).Sum(e => e.Landings.Count);
}
