using CanvasCut.Language;

namespace CanvasCut.JobFiles;

/// <summary>How a field may be written, for the message that it is missing.</summary>
internal static class FieldExample
{
    public static string Of(Field field) => $"{field.ShortName} = {Value(field)}";

    private static string Value(Field field) => field.Kind switch
    {
        FieldKind.Count => "1",
        FieldKind.Text => Say.Of("\"a name of your own\""),
        FieldKind.LengthPair => "[\"100 mm\", \"300 mm\"]",
        FieldKind.Length or FieldKind.LengthList => field.Range.To is "6 m" or "3 m" or "2 m" ? "\"1040 mm\"" : "\"20 mm\"",
        var kind => $"\"{FieldKinds.QuantityIn(kind)?.Example ?? "..."}\"",
    };
}
