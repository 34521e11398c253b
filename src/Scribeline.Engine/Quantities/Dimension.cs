using UnitsNet;

namespace Scribeline.Engine.Quantities;

/// <summary>A kind of quantity with the units it can be typed in.</summary>
public sealed class Dimension
{
    private readonly Dictionary<string, UnitOfMeasure> exact = [];
    private readonly Dictionary<string, UnitOfMeasure?> anyCase = new(StringComparer.OrdinalIgnoreCase);

    internal Dimension(string name, Type quantity, string metric, string inch, ValueList<UnitOfMeasure> units)
    {
        (Name, Quantity, Units) = (name, quantity, units);
        foreach (var unit in units)
        {
            foreach (var word in unit.Also.Prepend(unit.Word))
            {
                var plain = Letters.Plain(word);
                exact.Add(plain, unit);
                anyCase[plain] = anyCase.TryGetValue(plain, out var other) && other != unit ? null : unit;
            }
        }

        (Metric, Inch, Longest) = (exact[Letters.Plain(metric)], exact[Letters.Plain(inch)], exact.Keys.Max(k => k.Length));
    }

    /// <summary>With its article, such as "a length".</summary>
    public string Name { get; }

    /// <summary>The units it can be typed in; the first is the SI unit.</summary>
    public ValueList<UnitOfMeasure> Units { get; }

    /// <summary>The SI unit, that of <see cref="Measure{TQuantity}.Si"/>.</summary>
    public UnitOfMeasure Si => Units[0];

    /// <summary>The unit shown in the metric system.</summary>
    public UnitOfMeasure Metric { get; }

    /// <summary>The unit shown in the inch system.</summary>
    public UnitOfMeasure Inch { get; }

    /// <summary>Whether a bare number is meant.</summary>
    public bool Plain => exact.ContainsKey("");

    /// <summary>Whether values have an offset zero, so that differences differ from values.</summary>
    public bool Offset => Quantity == typeof(Temperature);

    /// <summary>Whether this is the dimension of a UnitsNet quantity.</summary>
    public bool Holds(Type quantity) => Quantity == quantity;

    internal Type Quantity { get; }

    internal int Longest { get; }

    internal IEnumerable<string> Words => exact.Keys;

    /// <summary>The dimension of a UnitsNet quantity.</summary>
    /// <exception cref="KeyNotFoundException">No design uses this quantity: a bug.</exception>
    public static Dimension Of<TQuantity>()
        where TQuantity : struct, IQuantity => Dimensions.ByQuantity[typeof(TQuantity)];

    /// <summary>All dimensions, commonest first.</summary>
    public static IReadOnlyList<Dimension> All => Dimensions.All;

    /// <summary>The unit typed with this word; capitals matter only where two units differ by them. Null if there is none.</summary>
    public UnitOfMeasure? Find(string word)
    {
        var plain = Letters.Plain(word);
        return exact.TryGetValue(plain, out var unit) || anyCase.TryGetValue(plain, out unit) ? unit : null;
    }

    /// <inheritdoc/>
    public override string ToString() => Name;
}
