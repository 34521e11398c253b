using BenchmarkDotNet.Attributes;
using Scribeline.Engine.Flight;
using Scribeline.Engine.Questions;

namespace Scribeline.Bench;

/// <summary>What the table of failures costs once the flight as planned is known, beside one flight.</summary>
[MemoryDiagnoser]
public class FailureBenchmarks
{
    private static readonly Question Question = Questionnaire.Named("if-it-fails")!;

    private FlightInputs inputs = null!;
    private Study study = null!;

    [GlobalSetup]
    public void Prepare() => inputs = NightHeron.Inputs(NightHeron.Fresh());

    // A study that knows its air and its flight and nothing of failures.
    [IterationSetup]
    public void FlyAsPlanned()
    {
        study = NightHeron.Fresh();
        _ = study.Flight;
    }

    [Benchmark(Baseline = true, Description = "one flight, ignition to landing, 1e-8")]
    public FlightResult OneFlight() => inputs.Fly(study.Aero);

    [Benchmark(Description = "the failure table, two cores")]
    public Answer FailureTable() => Question.Ask(study);
}
