using Scribeline.Engine.Flight;

namespace Scribeline.Engine.Questions;

/// <summary>Where a flight's altimeter is, whatever body carries it: the whole rocket, then the body that is longest in the air.</summary>
/// <param name="Flight">It reaches apogee.</param>
public sealed record DescentPath(FlightResult Flight)
{
    /// <summary>s after ignition.</summary>
    public double LiftOff { get; } = Flight.Events.FirstOrDefault(e => e.Kind == FlightEventKind.LiftOff)?.Time ?? 0;

    /// <summary>Its last landing, s after lift-off.</summary>
    public double End => Flight.End - LiftOff;

    /// <summary>Greatest upward speed, m/s.</summary>
    public double Fastest => Flight.At(Flight.Maxima.Speed.Time).VerticalSpeed;

    /// <summary>At a time after lift-off, s.</summary>
    public FlightSample At(double time)
    {
        var after = time + LiftOff;
        var body = Flight.Bodies.Where(b => b.Start <= after).MaxBy(b => (Math.Min(b.End, after), b.End)) ?? Flight.Bodies[0];
        return Flight.At(after, body.Index);
    }

    /// <summary>m above the pad at a time after lift-off, s; nil once it has landed.</summary>
    public double HeightAt(double time) => time >= End ? 0 : time <= 0 ? 0 : At(time).Height;

    /// <summary>Where it comes down through a height, m; null where it never is so high or comes apart above it and below.</summary>
    public FlightSample? Descending(double height)
    {
        if (Flight.Apogee is not { } apogee || apogee.Height <= height || height <= 0) return null;
        double early = apogee.Time - LiftOff, late = End;
        for (var i = 0; i < 60; i++)
        {
            var middle = (early + late) / 2;
            if (At(middle).Height > height) early = middle;
            else late = middle;
        }

        return At(early);
    }
}
