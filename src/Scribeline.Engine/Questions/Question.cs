namespace Scribeline.Engine.Questions;

/// <summary>
/// A thing the builder must know: a pure function from a study to an answer. One class and one file each; adding one means adding its
/// file, its reference check and its entry in the documentation.
/// </summary>
/// <param name="id">Name used on the command line and in links, for example "rail-exit".</param>
/// <param name="text">The question in plain words.</param>
/// <param name="place">Where it is asked.</param>
public abstract class Question(string id, string text, Place place)
{
    /// <summary>Name used on the command line and in links.</summary>
    public string Id => id;

    /// <summary>The question in plain words.</summary>
    public string Text => text;

    /// <summary>Where it is asked.</summary>
    public Place Place => place;

    /// <summary>Whether it can be answered only for a rocket that can be flown: with motor, site and rail.</summary>
    protected virtual bool NeedsFlight => true;

    /// <summary>Whether it is asked of drawn cases too; not where tolerances do not move the answer, or moving it would tell nothing.</summary>
    public virtual bool HasSpread => true;

    /// <summary>Whether it flies the rocket many times over: asked last, and again with more flights.</summary>
    public virtual bool FliesMany => false;

    /// <summary>Whether it tells of the answers to all others, so that asking it asks them.</summary>
    public virtual bool TellsOfAll => false;

    /// <summary>Answers from the study alone, once for each study. A missing input gives an open answer that names it.</summary>
    public Answer Ask(Study study) => study.Once(this, s =>
    {
        var answer = NeedsFlight && s.Missing.Count > 0 ? Answer.Open(this, s.Missing.Span) : Work(s);
        return s.Untaught is { } before && !s.IsSample && place is not Place.Log ? Taught.Kept(answer, Ask(before)) : answer;
    });

    /// <summary>Works the answer out.</summary>
    protected abstract Answer Work(Study study);
}
