using System.Collections.Immutable;

namespace CanvasCut.Job;

/// <summary>results.json of a top with several carriers, a property for each name; docs/results.md tells what they hold.</summary>
internal sealed record TopDocument(
    string Format,
    string Version,
    string Language,
    string Job,
    ImmutableArray<string> Files,
    bool Failed,
    int Copies,
    ImmutableArray<CheckPart> Checks,
    ImmutableArray<MountingPart> Mountings,
    CutPlanPart CutPlan,
    ImmutableArray<OrderPart> Order,
    CostPart? Cost,
    ImmutableArray<SeamPart> Seams,
    ImmutableArray<MaterialPart> Materials,
    WorkPart Work);

/// <summary>One of the carriers.</summary>
internal sealed record MountingPart(
    string Name,
    string? Mirrors,
    string Folder,
    bool Failed,
    string LongSide,
    PlacePart Position,
    bool PositionChosenByProgram,
    double SpareMm);
