using Scribeline.Drawing.Sheets;
using Scribeline.Engine.Airframe;
using Scribeline.Engine.Quantities;
using Scribeline.Engine.Questions;

namespace Scribeline.Drawing.Templates;

/// <summary>Every template a rocket needs, from the same geometry that its clearances are checked with.</summary>
public static class RocketTemplates
{
    /// <summary>Strips, then plates and rings, then fins; each with a name of its own.</summary>
    /// <param name="study">The rocket as designed.</param>
    /// <param name="paper">The paper they must fit, where there is a choice.</param>
    public static ValueList<Template> Of(Study study, Paper paper)
    {
        var inch = study.Rocket.Inch;
        List<Template> all = [.. study.WrapTemplates.Select(s => WrapDrawing.Of(s, inch))];
        all.AddRange(study.Plates.Select(p => PlateDrawing.Of(p, [.. study.HoleSchedule.PlateHoles.Where(h => h.Plate == p.Name)], inch)));
        foreach (var fins in study.Vehicle.Parts.SelectMany(p => p.Fittings.OfType<FinPlates>()))
        {
            all.Add(FinDrawing.Outline(fins, inch));
            all.Add(FinDrawing.Guide(fins, TemplateSheets.Widest(paper), inch));
        }

        HashSet<string> taken = new(StringComparer.Ordinal);
        return all.Select(t => t with { Id = Unique(t.Id, taken) }).ToValueList();
    }

    private static string Unique(string id, HashSet<string> taken)
    {
        for (var n = 1; ; n++)
        {
            var name = n == 1 ? id : $"{id}-{n}";
            if (taken.Add(name)) return name;
        }
    }
}
