using BenchmarkDotNet.Attributes;
using Scribeline.Engine.Aerodynamics;
using Scribeline.Engine.Design;
using Scribeline.Engine.Flight;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Questions;
using UnitsNet;

namespace Scribeline.Bench;

/// <summary>What a person waits for: the flight, the table, all answers, their spread.</summary>
[MemoryDiagnoser]
public class StudyBenchmarks
{
    private FlightInputs inputs = null!;
    private AeroTable table = null!;
    private readonly ResultCache kept = new();
    private Study down = null!;
    private int edits;

    [GlobalSetup]
    public void Prepare()
    {
        var study = NightHeron.Fresh();
        inputs = NightHeron.Inputs(study);
        table = study.Aero;
        down = study;
    }

    [Benchmark(Baseline = true, Description = "one flight, ignition to landing, 1e-8")]
    public FlightResult OneFlight() => (inputs with { Options = FlightOptions.Nominal }).Fly(table);

    [Benchmark(Description = "resolve the design, build the aero table")]
    public AeroTable ResolveAndTable() => NightHeron.Fresh().Aero;

    [Benchmark(Description = "all questions, as typed")]
    public int AllQuestions() => Ask(0);

    [Benchmark(Description = "all questions, 100 cases")]
    public int HundredCases() => Ask(100);

    [Benchmark(Description = "coming apart, one charge changed")]
    public int OneChargeChanged()
    {
        // Another mass each time, so that nothing of this charge is kept from before.
        var mass = Measure.Si<Mass>(0.001 + (1e-7 * ++edits), at: "charges[0].mass");
        return Apart(NightHeron.Design with { Charges = [NightHeron.Design.Charges[0] with { Mass = new(mass, null, null) }, .. NightHeron.Design.Charges.Skip(1)] });
    }

    [Benchmark(Description = "coming apart, motor changed")]
    public int MotorChanged()
    {
        var motor = NightHeron.Design.Motor!.Value! with { LoadedMass = Measure.Si<Mass>(1.45 + (1e-6 * ++edits), at: "motor.loaded mass") };
        return Apart(NightHeron.Design with { Motor = new(null, motor) });
    }

    [Benchmark(Description = "packing, opening, load path and cords, flight and charges kept")]
    public int ComingDown()
    {
        // A study of its own each time: only what the cache holds is kept, as when the verdicts are asked anew.
        var study = new Study(down.Rocket, down.Motor, down.Day, down.Missing, kept);
        return Questionnaire.Down.Prepend(Questionnaire.Named("packs")!).Sum(q => q.Ask(study).Findings.Count);
    }

    private int Apart(RocketDesign design)
    {
        var study = Studies.Of(design, cache: kept).Nominal!;
        return Questionnaire.Apart.Sum(q => q.Ask(study).Findings.Count);
    }

    private static int Ask(int cases)
    {
        var studies = Studies.Of(NightHeron.Design);
        return Enquiry.Ask(Questionnaire.All, studies.Nominal!, studies.Case, cases).Count;
    }
}
