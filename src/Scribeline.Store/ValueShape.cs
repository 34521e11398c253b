using System.Reflection;
using Scribeline.Engine.Design;
using Scribeline.Engine.Quantities;
using UnitsNet;

namespace Scribeline.Store;

/// <summary>How a value is typed.</summary>
internal enum ValueForm
{
    /// <summary>Any text.</summary>
    Text,

    /// <summary>A whole number.</summary>
    Count,

    /// <summary>Yes or no.</summary>
    YesNo,

    /// <summary>One of some words.</summary>
    Word,

    /// <summary>A quantity, or a map of value and known.</summary>
    Measure,

    /// <summary>A short text with rules of its own.</summary>
    Readable,

    /// <summary>A file's name, or what the file holds.</summary>
    File,

    /// <summary>Limits by id.</summary>
    Limits,

    /// <summary>A list of points.</summary>
    Thrust,

    /// <summary>A record.</summary>
    Record,
}

/// <summary>Reads a short text as a value.</summary>
internal delegate (object? Value, TextProblem? Problem) ReadText(string text, Basis known, string at);

/// <summary>What one value may be.</summary>
internal sealed class ValueShape
{
    internal ValueShape(Type type)
    {
        Type = type;
        var open = type.IsGenericType ? type.GetGenericTypeDefinition() : null;
        Form = type == typeof(string) ? ValueForm.Text
            : type == typeof(int) ? ValueForm.Count
            : type == typeof(bool) ? ValueForm.YesNo
            : type.IsEnum ? ValueForm.Word
            : open == typeof(Measure<>) ? ValueForm.Measure
            : open == typeof(FileOr<>) ? ValueForm.File
            : type == typeof(LimitDesign) ? ValueForm.Limits
            : type == typeof(ThrustTable) ? ValueForm.Thrust
            : type.GetInterfaces().Any(i => i.IsGenericType && i.GetGenericTypeDefinition() == typeof(IReadable<>)) ? ValueForm.Readable
            : ValueForm.Record;
        if (Form == ValueForm.Measure) Quantity = type.GetGenericArguments()[0];
        if (Form == ValueForm.File) Held = new(type.GetGenericArguments()[0]);
        if (open == typeof(AutoOr<>)) Quantity = type.GetGenericArguments()[0];
        if (Form is ValueForm.Measure or ValueForm.Readable)
        {
            var name = Form == ValueForm.Measure ? nameof(ReadMeasure) : nameof(ReadReadable);
            Read = typeof(ValueShape).GetMethod(name, BindingFlags.NonPublic | BindingFlags.Static)!
                .MakeGenericMethod(Quantity is not null && Form == ValueForm.Measure ? Quantity : type).CreateDelegate<ReadText>();
        }
    }

    internal Type Type { get; }

    internal ValueForm Form { get; }

    /// <summary>Kind of quantity of a measure; null otherwise.</summary>
    internal Type? Quantity { get; }

    /// <summary>What a file holds.</summary>
    internal ValueShape? Held { get; }

    /// <summary>Reads measures and readable values.</summary>
    internal ReadText? Read { get; }

    /// <summary>Whether a readable value may also be typed as a map.</summary>
    internal bool RecordToo => Form == ValueForm.Readable && typeof(Placed).IsAssignableFrom(Type);

    internal Dimension? Dimension => Quantity is null ? null : Dimension.All.First(d => d.Holds(Quantity));

    /// <summary>Texts to show as examples, best first.</summary>
    internal IReadOnlyList<string> Examples => Form switch
    {
        ValueForm.Word => [.. RecordShape.Words(Type).Select(w => w.Word)],
        ValueForm.Measure => Dimension!.Plain ? ["0.75"] : [$"5{Dimension.Metric.Gap}{Dimension.Metric.Word}"],
        ValueForm.Readable => (IReadOnlyList<string>)Type.GetProperty("Examples", BindingFlags.Public | BindingFlags.Static)!.GetValue(null)!,
        ValueForm.Count => ["3"],
        ValueForm.YesNo => ["yes", "no"],
        _ => [],
    };

    private static (object?, TextProblem?) ReadMeasure<TQuantity>(string text, Basis known, string at)
        where TQuantity : struct, IQuantity
    {
        var reading = Measure.Read<TQuantity>(text, known, at);
        return (reading.Value, reading.Problem);
    }

    private static (object?, TextProblem?) ReadReadable<T>(string text, Basis known, string at)
        where T : class, IReadable<T>
    {
        var reading = T.Read(text, at);
        return (reading.Value, reading.Problem);
    }
}
