using Scribeline.Engine.Design;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Questions;

namespace Scribeline.Store.Logs;

/// <summary>What flights taught, written into a design by its builder's word, and taken out again.</summary>
public static class AcceptedLessons
{
    /// <summary>Writes one into the design as flown.</summary>
    /// <param name="text">Text of the design.</param>
    /// <param name="teachings">What flights teach of it.</param>
    /// <param name="id">Name of the one to accept.</param>
    public static TextChange Accept(string text, ValueList<Teaching> teachings, string id)
    {
        if (teachings.FirstOrDefault(t => t.Id == id) is not { } teaching)
            return new(text, new("", $"No flight teaches '{id}'.", teachings.Count == 0 ? "Add a record first: scribeline log FILE --add flight.csv" : $"What can be accepted: {string.Join(", ", teachings.Where(t => t.CanAccept).Select(t => t.Id))}."));
        return teaching.CanAccept
            ? DesignText.Flown(text, teaching.Path, teaching.Typed)
            : new(text, new("", $"Every flight contradicts what was known of the {teaching.Name}: it is not taken over.", "Look for what was different that day, or wrong in the design."));
    }

    /// <summary>Takes one out of the design; what it had before counts again.</summary>
    /// <param name="text">Text of the design.</param>
    /// <param name="design">The design.</param>
    /// <param name="id">Name of the one to take back.</param>
    public static TextChange TakeBack(string text, RocketDesign design, string id)
    {
        var accepted = In(design);
        return accepted.FirstOrDefault(a => a.Id == id) is { Path: not null } found
            ? DesignText.Remove(text, found.Path)
            : new(text, new("", $"The design holds no '{id}' from flights.", accepted.Count == 0 ? "Nothing was accepted." : $"Accepted are: {string.Join(", ", accepted.Select(a => a.Id))}."));
    }

    /// <summary>What a design holds from flights: name and place of each.</summary>
    public static ValueList<(string Id, string Path)> In(RocketDesign design)
    {
        List<(string, string)> found = [];
        if (design.DragScale is { Known: Basis.Flown }) found.Add(("drag-scale", "drag scale"));
        if (design.ThrustScale is { Known: Basis.Flown }) found.Add(("thrust-scale", "thrust scale"));
        if (design.PortLag is { Known: Basis.Flown }) found.Add(("port-lag", "port lag"));
        foreach (var canopy in design.Stowed.Select(s => s.Canopy).Where(c => c?.DragArea is { Known: Basis.Flown })) found.Add((Teaching.IdOf(canopy!.Name), $"{canopy.At}.drag area"));
        return found.ToValueList();
    }
}
