namespace Scribeline.Engine.Questions;

/// <summary>Which symbols the locals of a formula stand for, where one formula serves many things.</summary>
internal static class Locals
{
    /// <summary>Each local with the same ending, for <see cref="Working.StepOf"/>.</summary>
    /// <param name="ending">For example "_2".</param>
    /// <param name="locals">Names of the locals.</param>
    public static (string Local, string Symbol)[] Numbered(string ending, params ReadOnlySpan<string> locals)
    {
        var names = new (string, string)[locals.Length];
        for (var i = 0; i < locals.Length; i++) names[i] = (locals[i], locals[i] + ending);
        return names;
    }
}
