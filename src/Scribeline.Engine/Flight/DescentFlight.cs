using Scribeline.Engine.Numerics;
using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Flight;

/// <summary>What a body without attitude begins with.</summary>
/// <param name="Index">Of the body.</param>
/// <param name="Parent">Index of the body it came from.</param>
/// <param name="First">First piece.</param>
/// <param name="Last">Last piece.</param>
/// <param name="Masses">Of all pieces of the rocket, kg.</param>
/// <param name="Time">s after ignition.</param>
/// <param name="Position">m.</param>
/// <param name="Velocity">m/s.</param>
/// <param name="Attitude">Of the rocket when it came apart.</param>
/// <param name="ApogeePassed">Whether apogee has passed.</param>
/// <param name="Plan">What may still fire on it.</param>
/// <param name="Canopies">On their way out or open.</param>
internal sealed record DescentStart(
    int Index, int Parent, int First, int Last, double[] Masses, double Time, Vector3<Scalar> Position, Vector3<Scalar> Velocity,
    Quaternion<Scalar> Attitude, bool ApogeePassed, FiringPlan Plan, List<FreedCanopy> Canopies);

/// <summary>A body without attitude from its beginning until it comes apart further, the ground, or the end asked for.</summary>
internal sealed class DescentFlight<TModel>
    where TModel : struct, IFlightModel
{
    private readonly TModel model;
    private readonly ValueList<FlightPiece> pieces;
    private readonly FlightOptions options;
    private readonly FlightLog log;
    private readonly FlightRecorder recorder;
    private readonly List<DescentMotion<TModel>> stretches = [];
    private readonly List<FreedCanopy> canopies;
    private readonly double[] y;

    public DescentFlight(TModel model, ValueList<FlightPiece> pieces, DescentStart start, FlightOptions options, FlightLog log)
    {
        (this.model, this.pieces, Start, this.options, this.log) = (model, pieces, start, options, log);
        recorder = new(options.RelativeTolerance, FlightTolerance.Point(), options.MaximumSteps);
        y = [start.Position.X, start.Position.Y, start.Position.Z, start.Velocity.X, start.Velocity.Y, start.Velocity.Z];
        canopies = [.. start.Canopies];
        (Time, ApogeePassed) = (start.Time, start.ApogeePassed);
        for (int i = start.First; i <= start.Last; i++)
        {
            Mass += start.Masses[i];
            BodyDragArea += pieces[i].BodyDragArea;
        }
    }

    public DescentStart Start { get; }

    /// <summary>s after ignition.</summary>
    public double Time { get; private set; }

    public bool ApogeePassed { get; private set; }

    public bool Landed { get; private set; }

    public double Mass { get; }

    public double BodyDragArea { get; }

    public IReadOnlyList<FreedCanopy> Canopies => canopies;

    public Vector3<Scalar> Position => new(y[0], y[1], y[2]);

    public Vector3<Scalar> Velocity => new(y[3], y[4], y[5]);

    public FlightEffort Effort => recorder.Effort;

    public FlightSample Sample => SampleMaker.Descent(Motion(), Time, y, Start.Attitude);

    /// <summary>The motion so far.</summary>
    public DescentTrack<TModel> Track()
    {
        if (stretches.Count == 0) stretches.Add(Motion());
        recorder.KeepAtLeast(Time, y, stretches.Count - 1);
        return new(recorder, stretches, Start.Attitude);
    }

    /// <summary>Flies until two sides part and returns what parted them; null at the end, whether good or bad.</summary>
    public RecoveryAction? Fly()
    {
        while (true)
        {
            if (!ApogeePassed && y[5] <= 0 && Apogee()) return null;
            if (ApogeePassed) Start.Plan.KnowReading(Time, model.AltimeterHeight(y[2]));
            while (Start.Plan.Due(Time) is { } action)
            {
                log.Add(FlightEventKind.Charge, action.Name, Start.Index, Sample);
                FreedCanopy.Free(canopies, action.Canopies, Time);
                if (action.Joint is not null && !action.Tethered) return action;
            }

            Stretch();
            double until = Math.Min(Start.Plan.NextTime, NextCanopyTime());
            stretches.Add(Motion());
            (Time, int happened, FlightFailure failure) = recorder.Run(stretches[^1], Time, until, y, [], stretches.Count - 1);
            if (failure != FlightFailure.None)
            {
                log.Fail(failure);
                return null;
            }

            if (happened >= 0 ? Happened(happened) : Opened()) return null;
        }
    }

    private DescentMotion<TModel> Motion() => new(
        model, Mass, BodyDragArea,
        [.. canopies.Where(c => c.FillTime is not null).Select(c => new OpenCanopy(c.Canopy, c.LineStretch, c.FillTime!.Value))],
        new(!ApogeePassed, ApogeePassed ? Start.Plan.NextReading : null));

    /// <summary>Canopies whose lines are stretched now begin to fill.</summary>
    private void Stretch()
    {
        for (int i = 0; i < canopies.Count; i++)
        {
            FreedCanopy canopy = canopies[i];
            if (canopy.FillTime is not null || canopy.LineStretch > Time) continue;
            FlightSample at = Sample;
            canopies[i] = canopy with { FillTime = Inflation.FillTime(canopy.Canopy, at.Airspeed, model.Gravity<Scalar>(at.Height)) };
            log.Add(FlightEventKind.LineStretch, $"{canopy.Canopy.Name}: line stretch", Start.Index, at);
        }
    }

    private double NextCanopyTime()
    {
        double next = double.PositiveInfinity;
        foreach (FreedCanopy canopy in canopies)
        {
            double time = canopy.FillTime is { } fill ? canopy.LineStretch + fill : canopy.LineStretch;
            if (time > Time) next = Math.Min(next, time);
        }

        return next;
    }

    /// <summary>Notes canopies that have just filled. Never ends the flight.</summary>
    private bool Opened()
    {
        foreach (FreedCanopy canopy in canopies)
        {
            if (canopy.FillTime is { } fill && canopy.LineStretch + fill == Time)
            {
                log.Add(FlightEventKind.FullyOpen, $"{canopy.Canopy.Name}: fully open", Start.Index, Sample);
            }
        }

        return false;
    }

    /// <summary>Acts on an event; true where the flight ends with it.</summary>
    private bool Happened(int which) => which switch
    {
        Watch.AtApogee => Apogee(),
        Watch.AtReading => Reading(),
        _ => Landed = true,
    };

    private bool Reading()
    {
        Start.Plan.KnowReading(Time, Start.Plan.NextReading!.Value);
        return false;
    }

    private bool Apogee()
    {
        FlightSample at = Sample;
        log.Apogee ??= at;
        log.Add(FlightEventKind.Apogee, "apogee", Start.Index, at);
        ApogeePassed = true;
        Start.Plan.KnowApogee(Time, at.AltimeterHeight);
        return options.Extent == FlightExtent.Apogee;
    }
}
