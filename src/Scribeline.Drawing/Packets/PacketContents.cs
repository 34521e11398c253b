using Scribeline.Drawing.Sheets;
using Scribeline.Engine.Questions;

namespace Scribeline.Drawing.Packets;

/// <summary>What a packet is made from; it computes nothing of its own.</summary>
/// <param name="Study">The rocket on its day, as typed.</param>
/// <param name="Answers">Every answer, in order.</param>
/// <param name="Facts">At the foot of every page.</param>
/// <param name="File">The design file as a person named it.</param>
/// <param name="Cases">Drawn from the tolerances; 0 for none.</param>
/// <param name="Seed">Of these cases.</param>
/// <param name="Paper">To print on.</param>
public sealed record PacketContents(Study Study, IReadOnlyList<Answer> Answers, SheetFacts Facts, string File, int Cases, ulong Seed, Paper Paper)
{
    /// <summary>Whether inch and pound units are shown.</summary>
    public bool Inch => Study.Rocket.Inch;

    /// <summary>The answer to a question; null where it was not asked.</summary>
    /// <param name="id">Of the question.</param>
    public Answer? Of(string id) => Answers.FirstOrDefault(a => a.Question.Id == id);
}
