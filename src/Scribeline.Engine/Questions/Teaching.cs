using Scribeline.Engine.Evidence;
using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Questions;

/// <summary>What all recorded flights of a design teach together, each allowed to move a value only as far as flights differ among themselves.</summary>
/// <param name="Id">Name to accept it by, such as <c>drag-scale</c>.</param>
/// <param name="Name">In plain words.</param>
/// <param name="Unit">What is measured.</param>
/// <param name="Prior">Before any flight.</param>
/// <param name="Flights">By each flight alone, with the scatter between flights in its uncertainty.</param>
/// <param name="Scatter">Standard deviation from flight to flight that is assumed, SI.</param>
/// <param name="Path">Where it is written in the design.</param>
/// <param name="Now">As the design has it now, SI.</param>
/// <param name="Accepted">Whether what the design has now came from flights.</param>
public sealed record Teaching(string Id, string Name, Unit Unit, Estimate Prior, ValueList<FlightSays> Flights, double Scatter, string Path, double Now, bool Accepted)
{
    // Assumptions: build-ups of drag are good to a tenth; finish, wind and mounting move it from flight to flight; motors of one kind and thermals likewise.
    private const double DragPrior = 0.10, DragScatter = 0.04, ThrustScatter = 0.02, CanopyScatter = 0.04, LagPrior = 0.05, LagScatter = 0.005;

    /// <summary>A flight this far from what was known before contradicts it and is not averaged in, standard uncertainties.</summary>
    public const double Contradiction = 3;

    /// <summary>Flights that contradict what was known before.</summary>
    public IEnumerable<FlightSays> Contradicting => Flights.Where(f => Math.Abs(f.Value.Apart(Prior)) > Contradiction);

    /// <summary>Flights that count.</summary>
    public IEnumerable<FlightSays> Counting => Flights.Except(Contradicting);

    /// <summary>With every flight that counts; the prior where none does.</summary>
    public Estimate Posterior => Estimate.Of([Prior, .. Counting.Select(f => f.Value)]);

    /// <summary>Whether there is something to accept.</summary>
    public bool CanAccept => Counting.Any();

    /// <summary>What is written into the design: the value with twice its standard uncertainty.</summary>
    public string Typed
    {
        get
        {
            var (value, sigma) = (Posterior.Value, 2 * Posterior.Sigma);
            return Unit switch
            {
                Unit.Area => $"{MeasureText.Decimal(Rounded(value, 4))} m² ± {MeasureText.Decimal(Rounded(sigma, 2))} m²",
                Unit.Time => $"{MeasureText.Decimal(Math.Round(1000 * Math.Max(value, 0), 1))} ms ± {MeasureText.Decimal(Rounded(1000 * sigma, 2))} ms",
                _ => $"{MeasureText.Decimal(Math.Round(value, 3))} ± {MeasureText.Decimal(Rounded(sigma, 2))}",
            };
        }
    }

    /// <summary>Everything that flights teach of a design.</summary>
    /// <param name="study">The design as it is now, with its flights.</param>
    public static ValueList<Teaching> Of(Study study)
    {
        var flights = study.RecordedFlights.Where(f => f.Lesson is not null).ToArray();
        List<Teaching> all = [];
        var climbs = flights.Where(f => f.Lesson!.Climb is not null && f.Untaught!.Shape.Equals(study.Shape)).ToArray();
        if (climbs.Length > 0)
        {
            all.Add(new("drag-scale", "drag over that predicted", Unit.Ratio, new(1, DragPrior), Say(climbs, f => f.Lesson!.Climb!.Drag, DragScatter), DragScatter, "drag scale", study.Rocket.DragScale, study.Rocket.DragBasis == Basis.Flown));
        }

        var alike = climbs.Where(f => study.HasMotor && f.Lesson!.Motor == study.Motor.Name).ToArray();
        if (alike.Length > 0)
        {
            all.Add(new("thrust-scale", "impulse over that printed", Unit.Ratio, new(1, alike[0].ImpulseSigma), Say(alike, f => f.Lesson!.Climb!.Impulse, ThrustScatter), ThrustScatter, "thrust scale", study.Rocket.ThrustScale, study.Rocket.ThrustScale != 1));
        }

        foreach (var canopy in study.Rocket.Canopies)
        {
            var under = flights.Where(f => f.Lesson!.Canopies.Any(c => c.Name == canopy.Name)).ToArray();
            if (under.Length == 0) continue;
            CanopyLesson Own(FlownFlight f) => f.Lesson!.Canopies.First(c => c.Name == canopy.Name);
            var planned = Own(under[^1]);
            var scatter = CanopyScatter * planned.Planned;
            all.Add(new(IdOf(canopy.Name), $"drag area of {canopy.Name}", Unit.Area, new(planned.Planned, planned.PlannedSigma), Say(under, f => Own(f).Area, scatter), scatter, $"{canopy.At}.drag area", canopy.DragArea, canopy.Basis == Basis.Flown));
        }

        var lags = climbs.Where(f => f.Lesson!.Climb!.PortLag is not null).ToArray();
        if (lags.Length > 0)
        {
            all.Add(new("port-lag", "time the pressure in the bay is behind", Unit.Time, new(0, LagPrior), Say(lags, f => f.Lesson!.Climb!.PortLag!.Value, LagScatter), LagScatter, "port lag", study.Rocket.PortLag ?? 0, study.Rocket.PortLag is not null));
        }

        return all.ToValueList();
    }

    private static ValueList<FlightSays> Say(IEnumerable<FlownFlight> flights, Func<FlownFlight, Estimate> says, double scatter) =>
        flights.Select(f => new FlightSays(f.Number, f.Name, says(f), says(f).Blurred(scatter))).ToValueList();

    /// <summary>Name to accept the drag area of a canopy by.</summary>
    public static string IdOf(string canopy) => $"canopy-{Word(canopy)}";

    private static string Word(string name) => string.Join('-', name.ToLowerInvariant().Split(' ', StringSplitOptions.RemoveEmptyEntries));

    private static double Rounded(double value, int digits)
    {
        if (value == 0 || !double.IsFinite(value)) return value;
        var places = digits - 1 - (int)Math.Floor(Math.Log10(Math.Abs(value)));
        return places is >= 0 and <= 15 ? Math.Round(value, places) : value;
    }
}

/// <summary>What one flight says of one value.</summary>
/// <param name="Number">Of the flight.</param>
/// <param name="Flight">In words.</param>
/// <param name="Alone">As fitted.</param>
/// <param name="Value">With the scatter between flights.</param>
public sealed record FlightSays(long Number, string Flight, Estimate Alone, Estimate Value);
