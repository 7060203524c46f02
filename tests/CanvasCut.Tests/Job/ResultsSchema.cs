using System.Reflection;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Json.Serialization.Metadata;
using CanvasCut.Job;

namespace CanvasCut.Tests.Job;

/// <summary>The JSON Schema of results.json, made from the types that write and read it.</summary>
internal static class ResultsSchema
{
    private const string Words = "In words, in the language that the file names.";

    /// <summary>The whole schema, draft 2020-12.</summary>
    public static JsonObject Whole()
    {
        var tables = new SortedDictionary<string, JsonNode>(StringComparer.Ordinal) { ["point"] = Point() };
        var root = Table(ResultsContext.Default.ResultsDocument, tables);
        root["properties"]!["format"] = new JsonObject { ["const"] = ResultsJson.Format };
        return new(
        [
            new("$schema", "https://json-schema.org/draft/2020-12/schema"),
            new("title", "What make writes to results.json, and check --json prints"),
            new("description", "Lengths whose names end in _mm are millimetres. docs/results.md tells what each name holds."),
            .. root.Select(member => new KeyValuePair<string, JsonNode?>(member.Key, member.Value?.DeepClone())),
            new("$defs", new JsonObject(tables.Select(table => new KeyValuePair<string, JsonNode?>(table.Key, table.Value)))),
        ]);
    }

    /// <summary>The form of a property.</summary>
    public static JsonTypeInfo FormOf(JsonTypeInfo table, string name) => FormOf(table, PropertyOf(table, name));

    /// <summary>The form of a list's items; of what is written as a list without being one, its own.</summary>
    public static JsonTypeInfo ElementOf(JsonTypeInfo list) => list.ElementType is { } element ? list.Options.GetTypeInfo(element) : list;

    /// <summary>Whether a property is in words.</summary>
    public static bool IsWords(JsonTypeInfo table, string name) => Declared(table, PropertyOf(table, name)).GetCustomAttribute<WordsAttribute>() is not null;

    private static JsonTypeInfo FormOf(JsonTypeInfo table, JsonPropertyInfo property) =>
        table.Options.GetTypeInfo(Nullable.GetUnderlyingType(property.PropertyType) ?? property.PropertyType);

    private static JsonPropertyInfo PropertyOf(JsonTypeInfo table, string name) => table.Properties.Single(property => property.Name == name);

    private static PropertyInfo Declared(JsonTypeInfo table, JsonPropertyInfo property) =>
        table.Type.GetProperties().Single(declared => JsonNamingPolicy.SnakeCaseLower.ConvertName(declared.Name) == property.Name);

    private static JsonObject Table(JsonTypeInfo form, SortedDictionary<string, JsonNode> tables) => new()
    {
        ["type"] = "object",
        ["properties"] = new JsonObject(form.Properties.Select(property => new KeyValuePair<string, JsonNode?>(property.Name, Property(form, property, tables)))),
        ["required"] = new JsonArray([.. form.Properties.Where(property => property.IsRequired).Select(property => JsonValue.Create(property.Name))]),
    };

    private static JsonObject Property(JsonTypeInfo table, JsonPropertyInfo property, SortedDictionary<string, JsonNode> tables)
    {
        var value = Value(FormOf(table, property), tables);
        if (Nullable.GetUnderlyingType(property.PropertyType) is not null || (!property.PropertyType.IsValueType && property.IsGetNullable))
        {
            value = value["type"] is JsonValue type && value["enum"] is null
                ? With(value, "type", new JsonArray(type.GetValue<string>(), "null"))
                : new() { ["anyOf"] = new JsonArray(value, new JsonObject { ["type"] = "null" }) };
        }

        return IsWords(table, property.Name) ? With(value, "description", Words) : value;
    }

    private static JsonObject With(JsonObject value, string name, JsonNode what)
    {
        value[name] = what;
        return value;
    }

    private static JsonObject Value(JsonTypeInfo form, SortedDictionary<string, JsonNode> tables)
    {
        var type = form.Type;
        return type switch
        {
            _ when type == typeof(string) => new() { ["type"] = "string" },
            _ when type == typeof(bool) => new() { ["type"] = "boolean" },
            _ when type == typeof(int) => new() { ["type"] = "integer" },
            _ when type == typeof(double) || type == typeof(decimal) => new() { ["type"] = "number" },
            _ when type == typeof(PointPart) => Reference("point"),
            { IsEnum: true } => new() { ["enum"] = new JsonArray([.. Enum.GetNames(type).Select(name => JsonValue.Create(JsonNamingPolicy.KebabCaseLower.ConvertName(name)))]) },
            _ when form.ElementType is { } element => new() { ["type"] = "array", ["items"] = Value(form.Options.GetTypeInfo(element), tables) },
            _ => Named(form, tables),
        };
    }

    private static JsonObject Named(JsonTypeInfo form, SortedDictionary<string, JsonNode> tables)
    {
        var name = JsonNamingPolicy.KebabCaseLower.ConvertName(form.Type.Name.Replace("Part", string.Empty, StringComparison.Ordinal));
        if (!tables.ContainsKey(name))
        {
            tables[name] = new JsonObject();
            tables[name] = Table(form, tables);
        }

        return Reference(name);
    }

    private static JsonObject Reference(string name) => new() { ["$ref"] = $"#/$defs/{name}" };

    private static JsonObject Point() => new()
    {
        ["description"] = "x and y in millimetres.",
        ["type"] = "array",
        ["prefixItems"] = new JsonArray(new JsonObject { ["type"] = "number" }, new JsonObject { ["type"] = "number" }),
        ["minItems"] = 2,
        ["items"] = false,
    };
}
