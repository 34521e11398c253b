using System.CommandLine;

namespace Scribeline.App.Commands;

/// <summary>Arguments and options several commands share.</summary>
internal static class CommonOptions
{
    /// <summary>The design.</summary>
    public static Argument<string> File() => new("FILE") { Description = "A design file, or the folder that holds rocket.yaml." };

    /// <summary>Output for programs.</summary>
    public static Option<bool> Json() => new("--json") { Description = "Write JSON for programs: SI, every digit. See docs/json.md." };
}
