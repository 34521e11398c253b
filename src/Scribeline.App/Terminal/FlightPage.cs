using System.Globalization;
using Scribeline.Engine.Flight;
using Scribeline.Engine.Questions;
using Spectre.Console;

namespace Scribeline.App.Terminal;

/// <summary>A flight as a person reads it at a terminal: events, greatest values, landings.</summary>
/// <param name="page">Where it is written.</param>
/// <param name="inch">Whether inch and pound units are shown.</param>
internal sealed class FlightPage(Page page, bool inch)
{
    /// <summary>Writes the flight.</summary>
    public void Write(string name, string file, FlightResult flight)
    {
        page.Paragraph(name, style: Page.Bold);
        page.Paragraph($"{file}, as typed", style: Page.Quiet);
        page.Gap();
        Events(flight);
        page.Gap();
        Maxima(flight.Maxima);
        page.Gap();
        if (flight.Landings.Count > 0) Landings(flight);
        if (flight.Failure != FlightFailure.None) page.Paragraph(Reason(flight.Failure), style: VerdictMark.Style(Verdict.Stop), hanging: "■ ");
        page.Paragraph(Cautions.Everything, style: Page.Quiet);
    }

    private void Events(FlightResult flight)
    {
        var table = Table("event", "time", "height", "speed");
        foreach (var e in flight.Events) Row(table, e.Name, Text(e.Time, Unit.Time), Text(e.At.Height, Unit.Height), Text(e.At.Speed, Unit.Speed));
        page.Write(table);
    }

    private void Maxima(FlightMaxima maxima)
    {
        var table = Table("greatest", "value", "time", "height");
        Add("speed", maxima.Speed, Unit.Speed);
        Add("Mach number", maxima.Mach, Unit.Mach);
        Add("dynamic pressure", maxima.DynamicPressure, Unit.Pressure);
        Add("acceleration", maxima.Acceleration, Unit.Acceleration);
        Add("angle to the air", maxima.AngleOfAttack, Unit.Angle);
        Add("thrust", maxima.Thrust, Unit.Force);
        page.Write(table);

        void Add(string name, FlightMaximum maximum, Unit unit) =>
            Row(table, name, Text(maximum.Value, unit), Text(maximum.Time, Unit.Time), Text(maximum.Height, Unit.Height));
    }

    private void Landings(FlightResult flight)
    {
        var table = Table("lands", "time", "rate", "from the pad");
        foreach (var landing in flight.Landings)
        {
            var distance = Math.Sqrt((landing.East * landing.East) + (landing.North * landing.North));
            var bearing = (Math.Atan2(landing.East, landing.North) * 180 / Math.PI + 360) % 360;
            Row(
                table,
                string.Join(", ", landing.Pieces),
                Text(landing.At.Time, Unit.Time),
                Text(landing.DescentRate, Unit.Speed),
                string.Create(CultureInfo.InvariantCulture, $"{Text(distance, Unit.Height)} at {bearing:000}°"));
        }

        page.Write(table);
        page.Gap();
    }

    private Table Table(string name, params string[] columns)
    {
        const int Figures = 14;
        var table = new Table { Border = TableBorder.None, Expand = false };
        var width = page.Width - (columns.Length * Figures) - 6;
        table.AddColumn(new Spectre.Console.TableColumn(new Text(name, Page.Quiet)) { Width = width, Padding = new Padding(0, 0, 2, 0) });
        foreach (var (column, i) in columns.Select((c, i) => (c, i)))
        {
            table.AddColumn(new Spectre.Console.TableColumn(new Text(column, Page.Quiet))
            {
                Width = i == columns.Length - 1 ? Figures + 4 : Figures - 2,
                Padding = new Padding(0, 0, i == columns.Length - 1 ? 0 : 2, 0),
                Alignment = Justify.Right,
            });
        }

        return table;
    }

    private static void Row(Table table, params string[] cells) => table.AddRow(cells.Select((c, i) => new Text(c, i == 1 ? Page.Bold : Style.Plain)));

    private string Text(double value, Unit unit) => Shown.Text(value, unit, inch);

    private static string Reason(FlightFailure failure) => failure switch
    {
        FlightFailure.NoLiftOff => "It does not lift off: the thrust never reaches what the weight and the rail ask for.",
        FlightFailure.TooManySteps => "The flight was given up after too many steps: the inputs ask for something that changes faster than it can be followed.",
        _ => "The flight could not be computed to its end: the inputs contradict each other.",
    };
}
