using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Design;

/// <summary>Finds where a design contradicts itself: names, order, references, choices. Geometry is checked once it is resolved.</summary>
public static class DesignChecks
{
    /// <summary>The name that stands for the motor in ties and charges.</summary>
    public const string Motor = "Motor";

    /// <summary>Every contradiction, in the order of the file.</summary>
    /// <param name="design">The design; parts of it may be missing if they could not be read.</param>
    /// <param name="unread">Names of what could not be read: nobody is blamed for mentioning them.</param>
    public static ValueList<Problem> In(RocketDesign design, ValueList<string>? unread = null)
    {
        List<Problem> problems = [];
        var names = new DesignNames(design, unread ?? ValueList<string>.Empty);
        if (design.FormatVersion != 1)
            problems.Add(new("scribeline", $"Version {design.FormatVersion} of the file format is not known.", "Write scribeline: 1"));
        names.Unique(problems);
        PartChecks.In(design, names, problems);
        JointChecks.In(design, names, problems);
        StowedChecks.In(design, names, problems);
        FiringChecks.In(design, names, problems);
        FailureChecks.In(design, names, problems);
        OtherChecks.In(design, names, problems);
        return problems.ToValueList();
    }
}
