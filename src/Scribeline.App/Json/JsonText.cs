using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace Scribeline.App.Json;

/// <summary>Writes what programs read: SI, every digit, null where a value is not known.</summary>
internal static class JsonText
{
    /// <summary>Version of every format described in docs/json.md.</summary>
    public const int Format = 1;

    private static readonly JsonSerializerOptions Options = new()
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        WriteIndented = true,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        Converters = { new FiniteNumbers() },
    };

    /// <summary>A document as text, with a line end.</summary>
    public static string Of<T>(T document) => JsonSerializer.Serialize(document, Options) + "\n";

    private sealed class FiniteNumbers : JsonConverter<double>
    {
        public override double Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) => reader.GetDouble();

        public override void Write(Utf8JsonWriter writer, double value, JsonSerializerOptions options)
        {
            if (double.IsFinite(value)) writer.WriteNumberValue(value);
            else writer.WriteNullValue();
        }
    }
}
