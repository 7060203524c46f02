using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Patterns;

namespace CanvasCut.Job;

/// <summary>What <c>order --json</c> prints.</summary>
internal sealed record OrderDocument(
    string Format,
    string Version,
    string Job,
    bool Failed,
    ImmutableArray<OrderPart> Order,
    CostPart? Cost,
    ImmutableArray<SeamPart> Seams,
    ImmutableArray<MaterialPart> Materials);

/// <summary>A line of the order.</summary>
internal sealed record OrderPart(
    string Grade,
    [property: Words] string Item,
    double? LengthMm,
    decimal Quantity,
    string Unit,
    decimal? OtherQuantity,
    string? OtherUnit,
    [property: Words] string Rounded,
    [property: Words] string Also,
    [property: Words] string For,
    ImmutableArray<string> Pieces);

/// <summary>What it costs.</summary>
internal sealed record CostPart(
    string Currency,
    string Date,
    ImmutableArray<CostLinePart> Lines,
    decimal Materials,
    decimal Waste,
    bool LabourCounted,
    decimal Labour,
    decimal Total,
    int UnpricedLines);

/// <summary>A line of the cost.</summary>
internal sealed record CostLinePart(string Grade, decimal? Price, string? Per, decimal? Amount);

/// <summary>A seam.</summary>
internal sealed record SeamPart(
    SeamKind Kind,
    Side? Edge,
    [property: Words] string Name,
    int Copies,
    ImmutableArray<string> Pieces,
    double SewnMm,
    double ThreadMm,
    LayersPart Usual,
    LayersPart Thickest);

/// <summary>The layers under a seam.</summary>
internal sealed record LayersPart(
    int Plies,
    int Cloth,
    int ZipperTape,
    int Binding,
    int Webbing,
    int HookAndLoop,
    double ThicknessMm);

/// <summary>A grade used.</summary>
internal sealed record MaterialPart(string Grade, [property: Words] string Name, string Confidence, [property: Words] string Source);

/// <summary>What <c>cloth --json</c> prints.</summary>
internal sealed record ClothDocument(string Format, string Version, string Job, ImmutableArray<ClothPart> ClothChoices);

/// <summary>A way to buy and lay the cloth.</summary>
internal sealed record ClothPart(
    double RollWidthMm,
    string Turns,
    int CarrierWidths,
    bool IsOwn,
    double UsedMm,
    double OrderMm,
    decimal? Cost,
    bool? CostByWidth,
    double Use,
    double LowerBoundMm,
    string Verdict,
    [property: Words] string GivesUp);
