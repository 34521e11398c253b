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

    /// <summary>Answers from the study alone. A missing input gives an open answer that names it.</summary>
    public abstract Answer Ask(Study study);
}
