namespace Scribeline.Engine.Questions;

/// <summary>
/// A thing the builder must know: a pure function from a study to an answer. One class and one file each; adding one means adding its
/// file, its reference check and its entry in the documentation.
/// </summary>
public abstract class Question
{
    /// <summary>Name used on the command line and in links, for example "rail-exit".</summary>
    public abstract string Id { get; }

    /// <summary>The question in plain words.</summary>
    public abstract string Text { get; }

    /// <summary>Where it is asked.</summary>
    public abstract Place Place { get; }

    /// <summary>Whether it can be answered only for a rocket that can be flown: with motor, site and rail.</summary>
    protected virtual bool NeedsFlight => true;

    /// <summary>Answers from the study alone. A missing input gives an open answer that names it.</summary>
    public Answer Ask(Study study) => NeedsFlight && study.Missing.Count > 0 ? Answer.Open(this, study.Missing.Span) : Work(study);

    /// <summary>Works the answer out.</summary>
    protected abstract Answer Work(Study study);
}
