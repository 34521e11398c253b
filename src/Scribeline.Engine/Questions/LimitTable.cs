using System.Globalization;
using Scribeline.Engine.Quantities;

namespace Scribeline.Engine.Questions;

/// <summary>Every limit a question judges by: the table's, or the builder's own from the design file.</summary>
/// <param name="Own">Limits the design overrides, by id.</param>
public sealed record LimitTable(ValueList<OwnLimit> Own)
{
    private static readonly Dictionary<string, Limit> Standard = Read();

    /// <summary>The limits of the table alone.</summary>
    public static LimitTable Default { get; } = new(ValueList<OwnLimit>.Empty);

    /// <summary>Ids of all limits, in the order of the table.</summary>
    public static IReadOnlyCollection<string> Ids => Standard.Keys;

    /// <summary>The limit with this id.</summary>
    /// <exception cref="KeyNotFoundException">No question has such a limit: a bug.</exception>
    public Limit this[string id]
    {
        get
        {
            var standard = Standard[id];
            foreach (var own in Own)
            {
                if (own.Id == id) return standard with { Value = own.Value, Source = "the design file, in place of: " + standard.Source };
            }

            return standard;
        }
    }

    private static Dictionary<string, Limit> Read()
    {
        using var stream = typeof(LimitTable).Assembly.GetManifestResourceStream("Scribeline.Engine.Tables.limits.csv")!;
        using var reader = new StreamReader(stream);
        reader.ReadLine();
        var limits = new Dictionary<string, Limit>();
        while (reader.ReadLine() is { } line)
        {
            // The source is last and may hold commas in quotes.
            var cells = line.Split(',', 7);
            var limit = new Limit(
                cells[0],
                double.Parse(cells[1], CultureInfo.InvariantCulture),
                cells[3] == "at least" ? Sense.AtLeast : Sense.AtMost,
                double.Parse(cells[4], CultureInfo.InvariantCulture),
                cells[5] == "must",
                cells[6].Trim('"'));
            limits.Add(limit.Id, limit);
        }

        return limits;
    }
}

/// <summary>A builder's own bound in place of the table's.</summary>
/// <param name="Id">Id of the limit.</param>
/// <param name="Value">The bound, SI.</param>
public sealed record OwnLimit(string Id, double Value);
