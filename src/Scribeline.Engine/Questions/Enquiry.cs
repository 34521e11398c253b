namespace Scribeline.Engine.Questions;

/// <summary>Asks questions of the nominal study, and of many studies drawn from the tolerances of the design.</summary>
public static class Enquiry
{
    /// <summary>Flights of questions that fly many, at least, where twenty cases or more are sampled.</summary>
    public const int UsualFlights = 1000;

    private const int FlightsEach = 50;

    /// <summary>Answers with their spread.</summary>
    /// <param name="questions">What to ask.</param>
    /// <param name="nominal">The study without perturbation.</param>
    /// <param name="draw">
    /// The study of case 0, 1, 2 ...: a pure function of the number, safe to call from several threads; null where the drawn values do not
    /// make a rocket, which counts as a case that meets no limit. Null when the design states no tolerance: nothing is sampled then.
    /// </param>
    /// <param name="samples">Number of cases, 0 for none.</param>
    /// <param name="progress">Told the share done, 0 to 1, from any thread; may be null.</param>
    /// <param name="cancel">Ends the sampling early with an <see cref="OperationCanceledException"/>.</param>
    /// <returns>One answer for each question, in their order.</returns>
    public static IReadOnlyList<Answer> Ask(
        IReadOnlyList<Question> questions,
        Study nominal,
        Func<int, Study?>? draw,
        int samples,
        Action<double>? progress = null,
        CancellationToken cancel = default)
    {
        // A share of one in a hundred is not told from a hundred flights.
        if (samples > 0 && questions.Any(q => q.FliesMany)) nominal = nominal.Flying(Math.Max(samples, Math.Min(UsualFlights, FlightsEach * samples)), progress, cancel);

        // Results that questions share are made once by whichever comes first; the others wait for them. What keeps every core busy by itself,
        // or tells of all other answers, would be waited for longest: it comes after, one by one.
        var answers = new Answer[questions.Count];
        var alone = Enumerable.Range(0, questions.Count).ToLookup(q => questions[q].FliesMany || questions[q].TellsOfAll);
        Parallel.ForEach(alone[false], new ParallelOptions { CancellationToken = cancel }, q => answers[q] = questions[q].Ask(nominal));
        foreach (var q in alone[true].OrderBy(q => questions[q].TellsOfAll))
        {
            cancel.ThrowIfCancellationRequested();
            answers[q] = questions[q].Ask(nominal);
        }

        if (draw is null || samples == 0) return answers;

        var drawn = Enumerable.Range(0, questions.Count).Where(q => questions[q].HasSpread).ToArray();
        if (drawn.Length == 0) return answers;
        var cases = new Answer[]?[samples];
        var taughtNothing = new Answer[]?[samples];
        var done = 0;
        Parallel.For(0, samples, new ParallelOptions { CancellationToken = cancel }, i =>
        {
            var study = draw(i);
            cases[i] = study is null ? null : [.. drawn.Select(q => questions[q].Ask(study))];
            taughtNothing[i] = study?.Untaught is { } before ? [.. drawn.Select(q => questions[q].Ask(before))] : null;
            progress?.Invoke((double)Interlocked.Increment(ref done) / samples);
        });
        for (var i = 0; i < drawn.Length; i++) answers[drawn[i]] = WithSpread(answers[drawn[i]], [.. cases.Select(c => c?[i])]);
        if (nominal.Untaught is not { } untaught) return answers;
        for (var i = 0; i < drawn.Length; i++)
            answers[drawn[i]] = Taught.Kept(answers[drawn[i]], WithSpread(questions[drawn[i]].Ask(untaught), [.. taughtNothing.Select(c => c?[i])]));
        return answers;
    }

    private static Answer WithSpread(Answer answer, Answer?[] cases)
    {
        var findings = answer.Findings.Select(finding =>
        {
            var values = cases.Select(c => c?.Findings.FirstOrDefault(f => f.Name == finding.Name)?.Value ?? double.NaN).ToArray();
            var spread = Spread.Of(values, finding.Limit);
            return spread is null || spread.IsPoint ? finding : finding.With(spread);
        });
        return answer with { Findings = [.. findings] };
    }
}
