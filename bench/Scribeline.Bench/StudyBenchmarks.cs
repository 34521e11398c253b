using BenchmarkDotNet.Attributes;
using Scribeline.Engine.Aerodynamics;
using Scribeline.Engine.Flight;
using Scribeline.Engine.Questions;

namespace Scribeline.Bench;

/// <summary>What a person waits for: the flight, the table, all answers, their spread.</summary>
[MemoryDiagnoser]
public class StudyBenchmarks
{
    private FlightInputs inputs = null!;
    private AeroTable table = null!;

    [GlobalSetup]
    public void Prepare()
    {
        var study = NightHeron.Fresh();
        inputs = NightHeron.Inputs(study);
        table = study.Aero;
    }

    [Benchmark(Baseline = true, Description = "one flight, ignition to landing, 1e-8")]
    public FlightResult OneFlight() => (inputs with { Options = FlightOptions.Nominal }).Fly(table);

    [Benchmark(Description = "resolve the design, build the aero table")]
    public AeroTable ResolveAndTable() => NightHeron.Fresh().Aero;

    [Benchmark(Description = "all questions, as typed")]
    public int AllQuestions() => Ask(0);

    [Benchmark(Description = "all questions, 200 cases")]
    public int TwoHundredCases() => Ask(200);

    private static int Ask(int cases)
    {
        var studies = Studies.Of(NightHeron.Design);
        return Enquiry.Ask(Questionnaire.All, studies.Nominal!, studies.Case, cases).Count;
    }
}
