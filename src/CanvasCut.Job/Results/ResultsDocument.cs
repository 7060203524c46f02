using System.Collections.Immutable;
using System.Text.Json.Serialization;

namespace CanvasCut.Job;

/// <summary>results.json, a property for each name; docs/results.md tells what they hold. What is null in what does not wait for the plan is left out.</summary>
internal sealed record ResultsDocument(
    string Format,
    string Version,
    string Language,
    string Job,
    ImmutableArray<string> Files,
    bool Failed,
    ImmutableArray<string> Notices,
    ImmutableArray<CheckPart> Checks,
    PlacePart Position,
    bool PositionChosenByProgram,
    ImmutableArray<OptionPart> Options,
    ImmutableArray<PiecePart> Pieces,
    ImmutableArray<PiecePart> KeptPieces,
    SewnPart? Sewn,
    ImmutableArray<ZipperPart> Zippers,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] IReadOnlyList<MountPart>? Mounts,
    ImmutableArray<PocketPart> Pockets,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] CutPlanPart? CutPlan,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] ImmutableArray<OrderPart>? Order,
    CostPart? Cost,
    ImmutableArray<SeamPart> Seams,
    ImmutableArray<MaterialPart> Materials,
    WorkPart Work,
    CarePart Care,
    ImmutableArray<MarkPart> Marks,
    ImmutableArray<DiagonalPart> Diagonals,
    PaperPart Paper,
    ImmutableArray<DefaultPart> Defaults);

/// <summary>A check.</summary>
internal sealed record CheckPart(
    string Code,
    string Subject,
    ImmutableArray<string> About,
    string Verdict,
    double? ValueMm,
    double? LimitMm,
    double? Value,
    double? Limit,
    string? Unit,
    string LimitIs,
    string Source,
    string Advice);

/// <summary>A place on the top.</summary>
internal sealed record PlacePart(double StationMm, double OffsetMm);

/// <summary>A way round that was looked at.</summary>
internal sealed record OptionPart(string LongSide, PlacePart Position, double SpareMm, bool MayBend);

/// <summary>A mark on the top.</summary>
internal sealed record MarkPart(string Name, double StationMm, double OffsetMm);

/// <summary>A distance between two marks.</summary>
internal sealed record DiagonalPart(string Name, double DistanceMm);

/// <summary>The paper of the templates.</summary>
internal sealed record PaperPart(string Name, double? ReadXMm, double? ReadYMm);

/// <summary>A field that the job file left out.</summary>
internal sealed record DefaultPart(string Field, string Value, string Source);
