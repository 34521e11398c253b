using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Airframe;

/// <summary>A closed volume between two closures.</summary>
/// <param name="Name">Of the part that holds most of its length.</param>
/// <param name="Forward">What closes it ahead.</param>
/// <param name="Aft">What closes it behind.</param>
/// <param name="Volume">Empty of what is stowed, but less rods and motor mount, m³.</param>
/// <param name="StowedVolume">What is stowed or built into it takes, m³.</param>
/// <param name="Bore">Smallest inner diameter between the closures, not counting the hollow of a nose, m.</param>
/// <param name="Opens">Indices of the separable joints that open it, nose to tail.</param>
public sealed record Bay(string Name, Closure Forward, Closure Aft, double Volume, double StowedVolume, double Bore, ValueList<int> Opens)
{
    /// <summary>Station of its forward end, m.</summary>
    public double Front => Forward.Rear;

    /// <summary>Station of its aft end, m.</summary>
    public double Rear => Aft.Front;

    /// <summary>m.</summary>
    public double Length => Rear - Front;

    /// <summary>Left for the gas, m³; may come out negative where too much is stowed.</summary>
    public double FreeVolume => Volume - StowedVolume;
}

/// <summary>What closes a bay at one end.</summary>
/// <param name="Name">As typed: a plate, the nose, the motor mount.</param>
/// <param name="Part">Index of the part it belongs to.</param>
/// <param name="Front">Station of its forward face, m.</param>
/// <param name="Rear">Station of its aft face, m.</param>
public sealed record Closure(string Name, int Part, double Front, double Rear);
