using System.CommandLine;
using Scribeline.Drawing.Sheets;

namespace Scribeline.App.Commands;

/// <summary>Arguments and options several commands share.</summary>
internal static class CommonOptions
{
    /// <summary>The design.</summary>
    public static Argument<string> File() => new("FILE") { Description = "A design file, or the folder that holds rocket.yaml." };

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
