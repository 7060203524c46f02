using System.Text.Json.Serialization;
using CanvasCut.Checks;
using CanvasCut.Design;
using CanvasCut.Patterns;
using CanvasCut.Takeoff;

namespace CanvasCut.Job;

/// <summary>Reads and writes every JSON document of this project by code made at compile time, so that it works ahead of time and without reflection.</summary>
/// <remarks>
/// What a file must have to be read is every parameter of a record that has no value of its own. A property that is added later gets such
/// a value, at the end of its record, so that files written before are still read.
/// </remarks>
[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.SnakeCaseLower,
    RespectNullableAnnotations = true,
    RespectRequiredConstructorParameters = true,
    AllowDuplicateProperties = false,
    Converters =
    [
        typeof(CodeForm<Verdict>), typeof(CodeForm<LimitIs>), typeof(CodeForm<LongSide>), typeof(CodeForm<Side>), typeof(CodeForm<Hand>),
        typeof(CodeForm<WarpDirection>), typeof(CodeForm<PieceLineKind>), typeof(CodeForm<LineShows>), typeof(CodeForm<ZipperKind>), typeof(CodeForm<MountKind>),
        typeof(CodeForm<PlanVerdict>), typeof(CodeForm<SeamKind>), typeof(CodeForm<BondOrder>), typeof(CodeForm<WorkStage>), typeof(CodeForm<WorkKind>),
        typeof(CodeForm<RefitFate>), typeof(CodeForm<StripHold>),
    ])]
[JsonSerializable(typeof(ResultsDocument))]
[JsonSerializable(typeof(OrderDocument))]
[JsonSerializable(typeof(WorkPart))]
[JsonSerializable(typeof(ClothDocument))]
[JsonSerializable(typeof(MountsDocument))]
[JsonSerializable(typeof(RefitDocument))]
[JsonSerializable(typeof(ResultsHead))]
[JsonSerializable(typeof(ResultsFiles))]
[JsonSerializable(typeof(EarlierResults))]
internal sealed partial class ResultsContext : JsonSerializerContext;
