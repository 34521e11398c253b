using System.CommandLine;
using Scribeline.Drawing.Sheets;

namespace Scribeline.App.Commands;

/// <summary>Arguments and options several commands share.</summary>
internal static class CommonOptions
{
    /// <summary>The design.</summary>
    public static Argument<string> File() => new("FILE") { Description = "A design file, or the folder that holds rocket.yaml." };

    /// <summary>How many cases to draw.</summary>
    public static Option<int> Samples(int usual)
    {
        const int Most = 100_000;
        var samples = new Option<int>("--samples")
        {
            Description = "Cases drawn from the tolerances of the design; 0 for none.",
            HelpName = "N",
            DefaultValueFactory = _ => usual,
        };
        samples.Validators.Add(result =>
        {
            if (result.Tokens.Count == 1 && int.TryParse(result.Tokens[0].Value, out var typed) && typed is < 0 or > Most)
                result.AddError($"--samples must be a number from 0 to {Most}.");
        });
        return samples;
    }

    /// <summary>Which cases to draw.</summary>
    public static Option<ulong> Seed() => new("--seed")
    {
        Description = "Another seed draws other cases.",
        HelpName = "N",
        DefaultValueFactory = _ => 1,
    };

    /// <summary>Size of paper to print on.</summary>
    public static Option<string> PaperSize()
    {
        var paper = new Option<string>("--paper") { Description = "Paper to print on: a4 or letter.", HelpName = "SIZE", DefaultValueFactory = _ => "a4" };
        paper.Validators.Add(result =>
        {
            foreach (var token in result.Tokens.Where(t => Paper.Named(t.Value) is null)) result.AddError($"There is no paper \"{token.Value}\" here. Type instead: --paper a4, or --paper letter");
        });
        paper.CompletionSources.Add("a4", "letter");
        return paper;
    }

    /// <summary>Output for programs.</summary>
    public static Option<bool> Json() => new("--json") { Description = "Write JSON for programs: SI, every digit. See docs/json.md." };
}
