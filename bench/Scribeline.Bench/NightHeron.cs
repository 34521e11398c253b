using Scribeline.Engine.Air;
using Scribeline.Engine.Design;
using Scribeline.Engine.Flight;
using Scribeline.Engine.Questions;
using Scribeline.Store;

namespace Scribeline.Bench;

/// <summary>The example that is measured.</summary>
internal static class NightHeron
{
    /// <summary>Its design, files read.</summary>
    public static RocketDesign Design { get; } = Read();

    /// <summary>A study that has computed nothing yet.</summary>
    public static Study Fresh() => Studies.Of(Design).Nominal!;

    /// <summary>What decides its flight.</summary>
    public static FlightInputs Inputs(Study study) => new(
        study.Shape,
        study.Vehicle.History(study.Vehicle.Whole, study.MotorLoad),
        study.Motor,
        study.Air,
        new AirMotion(study.Day.Wind, study.Day.Turbulence),
        study.Day.Latitude!.Value,
        study.Rail,
        study.Plan);

    private static RocketDesign Read()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            var example = Path.Combine(folder.FullName, "examples", "night-heron");
            if (Directory.Exists(example)) return DesignFile.Read(example).Design!;
        }

        throw new InvalidOperationException("The benchmarks run outside the repository.");
    }
}
