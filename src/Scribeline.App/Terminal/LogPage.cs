using Scribeline.Engine.Questions;
using Scribeline.Engine.Resolving;
using Scribeline.Store.Logs;

namespace Scribeline.App.Terminal;

/// <summary>Recorded flights as a person reads them at a terminal: the list, and what the one asked about says.</summary>
/// <param name="page">Where it is written.</param>
/// <param name="rocket">What flew.</param>
internal sealed class LogPage(Page page, Rocket rocket)
{
    private const int Indent = 3;

    /// <summary>Writes.</summary>
    public void Write(string file, FlownFlights flights, IReadOnlyList<string> notes, IReadOnlyList<Answer> answers)
    {
        page.Paragraph(rocket.Name, style: Page.Bold);
        page.Paragraph(file, style: Page.Quiet);
        foreach (var note in notes) page.Paragraph(note);
        page.Gap();
        if (flights.Logged.Count == 0) page.Paragraph("No flight is recorded. Add one: scribeline log FILE --add flight.csv");
        foreach (var flight in flights.Logged)
        {
            var words = string.Join("; ", new[] { flight.Flown, flight.File, flight.Words }.Where(w => w.Length > 0));
            page.Paragraph($"flight {flight.Number}: {words}{(flight.Number == flights.Asked ? " (asked about)" : "")}", Indent, flight.Number == flights.Asked ? Page.Bold : Page.Quiet);
        }

        page.Gap();
        if (flights.Logged.Count > 0) new AnswerPage(page, rocket.Inch, showWorking: false, showTables: true).Write(answers);
        page.Paragraph(Cautions.Everything, style: Page.Quiet);
    }
}
