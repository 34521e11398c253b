using Scribeline.Engine.Quantities;

namespace Scribeline.Drawing.Templates;

/// <summary>
/// A pattern at true size: lines and words in millimetres, x to the right and y down from its upper left corner. Every output, drawn or
/// cut, comes from these numbers.
/// </summary>
/// <param name="Id">Name for files: lower case with dashes, unique in a set.</param>
/// <param name="Title">In plain words.</param>
/// <param name="Width">mm.</param>
/// <param name="Height">mm.</param>
/// <param name="Lines">Everything drawn.</param>
/// <param name="Words">Everything written on it.</param>
/// <param name="Facts">What to know and to check when it is used, each a sentence.</param>
public sealed record Template(
    string Id, string Title, double Width, double Height, ValueList<TemplateLine> Lines, ValueList<TemplateWords> Words, ValueList<string> Facts);

/// <summary>What a line of a template is for; names the layer of a file for cutting.</summary>
public enum LineRole
{
    /// <summary>Cut along it.</summary>
    Cut,

    /// <summary>Edge of a hole.</summary>
    Hole,

    /// <summary>Middle of a hole.</summary>
    Cross,

    /// <summary>The scribe line.</summary>
    Scribe,

    /// <summary>Edge of something, or of a bond.</summary>
    Edge,

    /// <summary>A fin.</summary>
    Fin,

    /// <summary>Rail guides.</summary>
    Rail,

    /// <summary>An even share of the circle.</summary>
    Division,

    /// <summary>Glue tab.</summary>
    Tab,

    /// <summary>What stands on the forward face.</summary>
    Forward,

    /// <summary>What stands on the aft face.</summary>
    Aft,
}

/// <summary>A line of a template.</summary>
/// <param name="Role">What it is for.</param>
public abstract record TemplateLine(LineRole Role);

/// <summary>Straight from corner to corner.</summary>
/// <param name="Role">What it is for.</param>
/// <param name="Corners">mm.</param>
/// <param name="Closed">Whether the last corner meets the first.</param>
public sealed record CornerLine(LineRole Role, ValueList<(double X, double Y)> Corners, bool Closed) : TemplateLine(Role);

/// <summary>A circle.</summary>
/// <param name="Role">What it is for.</param>
/// <param name="X">mm.</param>
/// <param name="Y">mm.</param>
/// <param name="Radius">mm.</param>
public sealed record RoundLine(LineRole Role, double X, double Y, double Radius) : TemplateLine(Role);

/// <summary>Words on a template, on one line.</summary>
/// <param name="Words">Words.</param>
/// <param name="X">Left end of the base line, mm.</param>
/// <param name="Y">Base line, mm.</param>
/// <param name="Strong">Whether they stand out.</param>
/// <param name="Turn">Degrees clockwise about that end.</param>
public sealed record TemplateWords(string Words, double X, double Y, bool Strong = false, double Turn = 0);
