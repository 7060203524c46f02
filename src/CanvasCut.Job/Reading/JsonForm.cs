using System.Globalization;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using System.Text.RegularExpressions;
using CanvasCut.Language;

namespace CanvasCut.Job;

/// <summary>What should stand at a place of a JSON text, in words, by the form of the whole.</summary>
internal static partial class JsonForm
{
    /// <summary>The place as the reader of JSON names it, as in $.marks[0].name, with items counted from 1.</summary>
    public static string FieldOf(string path) => Steps().Matches(path).Aggregate(string.Empty, (field, step) => Inside(field, step, 1));

    /// <summary>What is wrong at a place where a text does not keep to a form.</summary>
    /// <param name="form">The form of the whole.</param>
    /// <param name="field">The place, items counted from 1.</param>
    /// <param name="places">What is there.</param>
    /// <returns>The field, empty for the whole, and what it should be.</returns>
    public static (string Field, string Message) Complaint(JsonTypeInfo form, string field, JsonPlaces places)
    {
        var (here, there) = (form, string.Empty);
        foreach (Match step in Steps().Matches($".{field}"))
        {
            var (next, inside) = (step.Groups["item"].Success ? ElementOf(here) : PropertyOf(here, step.Groups["name"].Value), Inside(there, step, 0));
            if (next is null || !places.Has(inside))
            {
                break;
            }

            (here, there) = (next, inside);
        }

        return places.IsTable(there) && MissingIn(here, there, places) is { Length: > 0 } missing
            ? (there, Say.Of($"should have {missing}."))
            : (there, Say.Of($"should be {Wanted(here.Type)}."));
    }

    private static string Inside(string field, Match step, int more) => step.Groups["item"] is { Success: true } item
        ? FormattableString.Invariant($"{field}[{int.Parse(item.Value, CultureInfo.InvariantCulture) + more}]")
        : field.Length > 0 ? $"{field}.{step.Groups["name"].Value}" : step.Groups["name"].Value;

    /// <summary>The names that must be there and are not.</summary>
    private static string MissingIn(JsonTypeInfo form, string field, JsonPlaces places) => form is { Kind: JsonTypeInfoKind.Object }
        ? string.Join(", ", form.Properties.Where(property => property.IsRequired && !places.Has(field.Length > 0 ? $"{field}.{property.Name}" : property.Name)).Select(property => property.Name))
        : string.Empty;

    private static JsonTypeInfo? ElementOf(JsonTypeInfo list) => list.ElementType is { } element ? list.Options.GetTypeInfo(element) : null;

    private static JsonTypeInfo? PropertyOf(JsonTypeInfo table, string name) =>
        table is { Kind: JsonTypeInfoKind.Object } && table.Properties.FirstOrDefault(property => property.Name == name) is { } found ? table.Options.GetTypeInfo(Nullable.GetUnderlyingType(found.PropertyType) ?? found.PropertyType) : null;

    private static string Wanted(Type type)
    {
        var plain = Nullable.GetUnderlyingType(type) ?? type;
        return plain switch
        {
            { IsEnum: true } => Say.Of($"one of {string.Join(", ", Enum.GetNames(plain).Select(name => $"\"{JsonNamingPolicy.KebabCaseLower.ConvertName(name)}\""))}"),
            _ when plain == typeof(double) || plain == typeof(decimal) => Say.Of("a number"),
            _ when plain == typeof(int) => Say.Of("a whole number"),
            _ when plain == typeof(bool) => Say.Of("true or false"),
            _ when plain == typeof(string) => Say.Of("a text"),
            _ when plain == typeof(PointPart) => Say.Of("a point, [x, y]"),
            _ when typeof(System.Collections.IEnumerable).IsAssignableFrom(plain) => Say.Of("a list"),
            _ => Say.Of("a table in braces, each name in it once"),
        };
    }

    [GeneratedRegex(@"\[(?<item>[0-9]+)\]|\['(?<name>[^']*)'\]|\.(?<name>[^.\[\]]+)")]
    private static partial Regex Steps();
}
