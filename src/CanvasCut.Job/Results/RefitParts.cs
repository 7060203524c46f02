using System.Collections.Immutable;
using System.Text.Json.Serialization;
using CanvasCut.Design;

namespace CanvasCut.Job;

/// <summary>What <c>refit --json</c> prints.</summary>
internal sealed record RefitDocument(
    string Format,
    string Version,
    string Language,
    string Job,
    string OldJob,
    bool Fits,
    bool? Failed,
    [property: Words] string Verdict,
    ImmutableArray<FatePart> Pieces,
    ImmutableArray<SizesPart> Ranges,
    [property: Words] ImmutableArray<string> Changes,
    [property: Words] ImmutableArray<string> Notes);

/// <summary>What becomes of a piece.</summary>
internal sealed record FatePart(string Id, [property: Words] string Name, RefitFate Fate, [property: Words] string Why);

/// <summary>The panels that fit one way round.</summary>
internal sealed record SizesPart(
    LongSide LongSide, ImmutableArray<double> LengthMm, ImmutableArray<double> WidthMm, ImmutableArray<SizeLimitPart> Limits, double MostThicknessMm);

/// <summary>A limit on lengths and widths together.</summary>
internal sealed record SizeLimitPart(int Lengths, int Widths, double MostMm);

/// <summary>What <c>compare-mounts --json</c> prints.</summary>
internal sealed record MountsDocument(string Format, string Version, string Job, ImmutableArray<MountChoicePart> Choices);

/// <summary>A job with its edges held in one way.</summary>
internal sealed record MountChoicePart(
    string Forward,
    string Aft,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] string? Port,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] string? Starboard,
    bool IsTheJobs,
    bool Fits,
    MountFiguresPart? Figures);

/// <summary>What comes of it.</summary>
internal sealed record MountFiguresPart(
    int Pieces,
    double SeamMm,
    double BenchHours,
    int Days,
    string? Currency,
    decimal? Cost,
    int? UnpricedLines,
    int RemovalActions,
    int? LifeMonths,
    string LifeOf,
    double? OffAtKn,
    bool OffAtKnown,
    double? EdgesHoldToKn,
    string? Weakest,
    int FailedChecks);
