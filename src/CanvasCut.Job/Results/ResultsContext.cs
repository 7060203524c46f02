using System.Text.Json.Serialization;

namespace CanvasCut.Job;

/// <summary>Reads and writes every JSON document of this project by code made at compile time, so that it works ahead of time and without reflection.</summary>
/// <remarks>What a file must have to be read is every parameter of a record that has no value of its own; a later one is given such a value.</remarks>
[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.SnakeCaseLower,
    RespectNullableAnnotations = true,
    RespectRequiredConstructorParameters = true,
    AllowDuplicateProperties = false)]
[JsonSerializable(typeof(ResultsDocument))]
[JsonSerializable(typeof(TopDocument))]
[JsonSerializable(typeof(OrderDocument))]
[JsonSerializable(typeof(WorkPart))]
[JsonSerializable(typeof(ClothDocument))]
[JsonSerializable(typeof(MountsDocument))]
[JsonSerializable(typeof(RefitDocument))]
[JsonSerializable(typeof(ResultsHead))]
[JsonSerializable(typeof(ResultsFiles))]
[JsonSerializable(typeof(EarlierResults))]
internal sealed partial class ResultsContext : JsonSerializerContext;
