using System.Globalization;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace CanvasCut.Job;

/// <summary>A point of an outline or a line, in millimetres; written as [x, y].</summary>
[JsonConverter(typeof(PointForm))]
internal readonly record struct PointPart(double X, double Y);

/// <summary>Reads and writes a point.</summary>
internal sealed class PointForm : JsonConverter<PointPart>
{
    public override PointPart Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        if (reader.TokenType != JsonTokenType.StartArray)
        {
            throw new JsonException();
        }

        var x = NextNumber(ref reader);
        var y = NextNumber(ref reader);
        return reader.Read() && reader.TokenType == JsonTokenType.EndArray ? new(x, y) : throw new JsonException();
    }

    public override void Write(Utf8JsonWriter writer, PointPart value, JsonSerializerOptions options)
    {
        // On one line, so that a person can read an outline.
        writer.WriteRawValue(string.Create(CultureInfo.InvariantCulture, $"[{value.X:R}, {value.Y:R}]"), skipInputValidation: true);
    }

    private static double NextNumber(ref Utf8JsonReader reader) =>
        reader.Read() && reader.TokenType == JsonTokenType.Number && reader.TryGetDouble(out var number) && double.IsFinite(number) ? number : throw new JsonException();
}
