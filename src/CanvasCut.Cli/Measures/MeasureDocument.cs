using System.Collections.Immutable;
using System.Text.Json.Serialization;

namespace CanvasCut.Cli;

/// <summary>What <c>measure --json</c> prints.</summary>
internal sealed record MeasureDocument(
    string Format,
    string Name,
    bool Agrees,
    bool Settled,
    ImmutableArray<string> Verdict,
    double? TapeMm,
    int Freedom,
    double? Misfit,
    double? MisfitLimit,
    double? NormalisedLimit,
    ImmutableArray<string> Suspects,
    ImmutableArray<ReadingPart> Readings,
    ImmutableArray<BowEndsPart> Bows);

/// <summary>A reading and what became of it.</summary>
internal sealed record ReadingPart(string Name, double? ReadMm, double? AdjustedMm, double? ResidualMm, double? Normalised, double? SeenFromMm);

/// <summary>The ends of a bow.</summary>
internal sealed record BowEndsPart(string Name, double? StationMm, EndPart Port, EndPart Starboard);

/// <summary>The end of a bow on the top.</summary>
internal sealed record EndPart(double? OffsetMm, double? StationMm);

/// <summary>Writes it by code made at compile time.</summary>
[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.SnakeCaseLower)]
[JsonSerializable(typeof(MeasureDocument))]
internal sealed partial class MeasureContext : JsonSerializerContext;
