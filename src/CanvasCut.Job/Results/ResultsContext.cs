using System.Text.Json.Serialization;

namespace CanvasCut.Job;

/// <summary>Reads and writes every JSON document of this project by code made at compile time, so that it works ahead of time and without reflection.</summary>
[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.SnakeCaseLower)]
[JsonSerializable(typeof(ResultsDocument))]
[JsonSerializable(typeof(TopDocument))]
[JsonSerializable(typeof(OrderDocument))]
[JsonSerializable(typeof(WorkPart))]
[JsonSerializable(typeof(ClothDocument))]
[JsonSerializable(typeof(MountsDocument))]
[JsonSerializable(typeof(RefitDocument))]
internal sealed partial class ResultsContext : JsonSerializerContext;
