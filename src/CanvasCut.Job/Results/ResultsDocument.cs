using System.Collections.Immutable;
using CanvasCut.Checks;
using CanvasCut.Design;

namespace CanvasCut.Job;

/// <summary>
/// results.json, a property for each name; docs/results.md tells what they hold. What is in words says so, all else is the same in every
/// language.
/// </summary>
/// <remarks>Of one carrier and of several. What waits for the cut plan is null where it was not waited for.</remarks>
internal sealed record ResultsDocument(
    string Format,
    string Version,
    string Language,
    string Job,
    ImmutableArray<string> Files,
    bool Failed,
    int Copies,
    ImmutableArray<CheckPart> Checks,
    ImmutableArray<MountingPart> Mountings,
    CutPlanPart? CutPlan,
    ImmutableArray<OrderPart>? Order,
    CostPart? Cost,
    ImmutableArray<SeamPart> Seams,
    ImmutableArray<MaterialPart> Materials,
    WorkPart Work,
    PaperPart Paper);

/// <summary>One of the carriers with all that is its own.</summary>
internal sealed record MountingPart(
    string? Name,
    string? Mirrors,
    string? Folder,
    bool Failed,
    [property: Words] ImmutableArray<string> Notices,
    ImmutableArray<CheckPart> Checks,
    LongSide LongSide,
    PlacePart Position,
    bool PositionChosenByProgram,
    double SpareMm,
    ImmutableArray<OptionPart> Options,
    ImmutableArray<PiecePart> Pieces,
    ImmutableArray<PiecePart> KeptPieces,
    SewnPart? Sewn,
    ImmutableArray<ZipperPart> Zippers,
    ImmutableArray<MountPart> Mounts,
    ImmutableArray<PocketPart> Pockets,
    ImmutableArray<MarkPart> Marks,
    ImmutableArray<DiagonalPart> Diagonals,
    CarePart Care,
    ImmutableArray<DefaultPart> Defaults);

/// <summary>A check.</summary>
internal sealed record CheckPart(
    string Code,
    [property: Words] string Subject,
    ImmutableArray<string> About,
    Verdict Verdict,
    double? ValueMm,
    double? LimitMm,
    double? Value,
    double? Limit,
    string? Unit,
    LimitIs LimitIs,
    [property: Words] string Source,
    [property: Words] string Advice);

/// <summary>On which side of a limit a value must lie.</summary>
internal enum LimitIs
{
    AtLeast,
    AtMost,
}

/// <summary>A place on the top.</summary>
internal sealed record PlacePart(double StationMm, double OffsetMm);

/// <summary>A way round that was looked at.</summary>
internal sealed record OptionPart(LongSide LongSide, PlacePart Position, double SpareMm, bool MayBend);

/// <summary>A mark on the top.</summary>
internal sealed record MarkPart(string Id, [property: Words] string Name, double StationMm, double OffsetMm);

/// <summary>A distance between two marks.</summary>
internal sealed record DiagonalPart(string From, string To, [property: Words] string Name, double DistanceMm);

/// <summary>The paper of the templates.</summary>
internal sealed record PaperPart(string Name, double? ReadXMm, double? ReadYMm);

/// <summary>A field that the job file left out.</summary>
internal sealed record DefaultPart(string Field, [property: Words] string Value, [property: Words] string Source);
