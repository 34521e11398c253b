using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Airframe;

/// <summary>Finds the bays of a vehicle: between neighbouring closures, by the inside of the innermost part at each station.</summary>
internal static class BaySurvey
{
    public static ValueList<Bay> Of(Vehicle vehicle, MotorLoad? motor)
    {
        List<Closure> closures = Closures(vehicle);
        List<Bay> bays = [];
        for (int i = 0; i + 1 < closures.Count; i++)
        {
            if (closures[i + 1].Front > closures[i].Rear) bays.Add(Between(vehicle, motor, closures[i], closures[i + 1]));
        }

        return bays.ToValueList();
    }

    private static List<Closure> Closures(Vehicle vehicle)
    {
        List<Closure> closures = [];
        for (int i = 0; i < vehicle.Parts.Count; i++)
        {
            Part part = vehicle.Parts[i];
            if (i == 0 && part is NoseCone) closures.Add(new(part.Name, 0, part.Front, part.CavityFront));
            foreach (BulkPlate plate in part.Fittings.OfType<BulkPlate>())
            {
                double front = part.Front + plate.Offset;
                closures.Add(new(plate.Name, i, front, front + plate.Thickness));
            }

            if (part.Fittings.OfType<MotorMount>().FirstOrDefault() is { } mount)
            {
                // The foremost ring closes the space round the mount tube; the motor closes the tube.
                double face = part.Fittings.OfType<CentringRing>().Select(r => r.Offset).DefaultIfEmpty(mount.Offset).Min();
                closures.Add(new(mount.Name, i, part.Front + face, Math.Max(part.Rear, part.Front + mount.Offset + mount.Length)));
            }
        }

        return [.. closures.OrderBy(c => c.Front)];
    }

    private static Bay Between(Vehicle vehicle, MotorLoad? motor, Closure forward, Closure aft)
    {
        (double front, double rear) = (forward.Rear, aft.Front);
        double[] breaks =
        [
            front,
            .. vehicle.Parts.SelectMany(p => new[] { p.FrontReach, p.Front, p.CavityFront, p.Rear, p.RearReach })
                .Where(s => s > front && s < rear).Distinct().Order(),
            rear,
        ];
        double volume = 0, bore = double.PositiveInfinity;
        for (int i = 0; i + 1 < breaks.Length; i++)
        {
            double middle = (breaks[i] + breaks[i + 1]) / 2, radius = vehicle.BoreAt(middle) ?? 0;
            volume += Tapers(vehicle, middle)
                ? ProfileVolume.Integrate(breaks[i], breaks[i], breaks[i + 1], vehicle.Inside()).Volume
                : Math.PI * radius * radius * (breaks[i + 1] - breaks[i]);
            if (!(vehicle.Parts[0] is NoseCone nose && middle < nose.Rear)) bore = Math.Min(bore, 2 * radius);
        }

        if (motor is not null && Mount(vehicle) is { } mount)
        {
            double ahead = Math.Min(vehicle.Parts[vehicle.MotorPart].Front + mount.Offset, rear) - Math.Max(motor.Front, front);
            volume -= Math.PI * motor.Diameter * motor.Diameter / 4 * Math.Max(ahead, 0);
        }

        double stowed = forward.Part == aft.Part && vehicle.Parts[forward.Part] is AltimeterBay bay ? bay.Filled : 0;
        foreach (Part part in vehicle.Parts)
        {
            volume -= part.Fittings.Sum(f => Taken(f, part.Front, front, rear));
            stowed += part.Stowed.Where(s => Within(part.Front + s.Offset + s.PackedLength / 2, front, rear)).Sum(s => s.Volume);
        }

        return new(Name(vehicle, forward, aft), forward, aft, volume, stowed, bore, Opens(vehicle, forward, aft));
    }

    // Whether anything there is no plain tube inside.
    private static bool Tapers(Vehicle vehicle, double station) =>
        vehicle.Parts.Any(p => station > p.Front && station < p.Rear && p.Outside.Any(s => s.FrontDiameter != s.RearDiameter));

    private static MotorMount? Mount(Vehicle vehicle) =>
        vehicle.MotorPart < 0 ? null : vehicle.Parts[vehicle.MotorPart].Fittings.OfType<MotorMount>().First();

    /// <summary>What a fitting takes from the space between two stations, m³.</summary>
    private static double Taken(Fitting fitting, double partFront, double front, double rear)
    {
        double start = partFront + fitting.Offset;
        double overlap = Math.Max(Math.Min(start + fitting.Length, rear) - Math.Max(start, front), 0);
        return fitting switch
        {
            Rods r => r.Volume * overlap / r.RodLength,
            MotorMount m => Math.PI * m.OuterDiameter * m.OuterDiameter / 4 * overlap,
            _ => 0,
        };
    }

    private static bool Within(double station, double front, double rear) => station >= front && station < rear;

    private static string Name(Vehicle vehicle, Closure forward, Closure aft) => forward.Part == aft.Part
        ? vehicle.Parts[forward.Part].Name
        : vehicle.Parts.MaxBy(p => Math.Min(p.Rear, aft.Front) - Math.Max(p.Front, forward.Rear))!.Name;

    private static ValueList<int> Opens(Vehicle vehicle, Closure forward, Closure aft) =>
        vehicle.Joints.Where(j => j.Separable && j.Forward >= forward.Part && j.Forward < aft.Part).Select(j => j.Forward).ToValueList();
}
