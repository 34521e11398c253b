using Scribeline.App.Documents;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Questions;

namespace Scribeline.App.Web;

/// <summary>What a phone is shown.</summary>
/// <param name="Answers">The newest answers; null for a phone that was not let in.</param>
/// <param name="Progress">The lists of the day; null where there are none yet.</param>
/// <param name="Token">What its forms carry.</param>
/// <param name="Problems">Why its last tick was not kept.</param>
/// <param name="Code">The code it came with, to be used; null for none.</param>
public sealed record PhoneView(AnswerSheet? Answers, DayProgress? Progress, string Token, ValueList<Problem> Problems, string? Code);
