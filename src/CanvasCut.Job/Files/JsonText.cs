using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;

namespace CanvasCut.Job;

/// <summary>How every JSON text of the program is written.</summary>
public static class JsonText
{
    /// <summary>Digits kept of a length in millimetres; finer than any drawing.</summary>
    public const int Digits = 6;

    /// <summary>Indented, the same line ends everywhere.</summary>
    /// <param name="root">What is written.</param>
    /// <param name="form">Its form, made at compile time.</param>
    public static string Of<T>(T root, JsonTypeInfo<T> form)
    {
        using var buffer = new MemoryStream();
        using (var json = new Utf8JsonWriter(buffer, new() { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping }))
        {
            JsonSerializer.Serialize(json, root, form);
        }

        return Encoding.UTF8.GetString(buffer.ToArray()) + "\n";
    }

    /// <summary>Millimetres as they are written; never minus zero.</summary>
    public static double Mm(double millimetres) => Math.Round(millimetres, Digits) + 0.0;
}
