using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Patterns;
using CanvasCut.Takeoff;

namespace CanvasCut.Job;

/// <summary>A piece; of a piece cut in widths each is one.</summary>
internal sealed record PiecePart(
    string Id,
    string Kind,
    Side? Edge,
    string? Corner,
    int? Bow,
    int? Width,
    [property: Words] string Name,
    int Quantity,
    Hand Hand,
    [property: Words] string Face,
    WarpDirection Warp,
    ImmutableArray<PointPart> FinishedMm,
    ImmutableArray<PointPart> CutMm,
    ImmutableArray<LinePart> Lines,
    [property: Words] ImmutableArray<string> Notes);

/// <summary>A line on a piece.</summary>
internal sealed record LinePart(PieceLineKind Kind, LineShows Shows, bool Closed, [property: Words] string Text, ImmutableArray<PointPart> PointsMm);

/// <summary>A zipper.</summary>
internal sealed record ZipperPart(
    Side Edge, ZipperKind Kind, double BuyMm, double RunMm, double SetbackMm, Side StartsAt, double StartSetbackMm, ImmutableArray<double> TicksFromMiddleMm);

/// <summary>What holds an edge in the place of a zipper.</summary>
internal sealed record MountPart(
    Side Edge,
    MountKind Kind,
    double RunMm,
    double SetbackMm,
    int? Count,
    double? PitchMm,
    ImmutableArray<PlacePart> OnCarrier,
    ImmutableArray<PlacePart> OnTop,
    RodPart? Rod);

/// <summary>The rod of a sleeve.</summary>
internal sealed record RodPart(double DiameterMm, double LengthMm, double FromEdgeMm, int LugsOnCarrier, int LugsOnTop, double LugPitchMm, double GapMm);

/// <summary>A pocket.</summary>
internal sealed record PocketPart(string Corner, double LegMm, double CoversMm);

/// <summary>The cut plan.</summary>
internal sealed record CutPlanPart(
    double RollWidthMm,
    double UsedMm,
    double OrderMm,
    double LowerBoundMm,
    string LowerBoundBy,
    PlanVerdict Verdict,
    double Use,
    ImmutableArray<PlacedPart> Placed,
    ImmutableArray<StraightCutPart> StraightCuts,
    ImmutableArray<LeftoverPart> Leftovers);

/// <summary>A piece on the roll.</summary>
internal sealed record PlacedPart(int Number, string Piece, int Copy, double FromCutEndMm, double FromSelvageMm, int TurnedDegrees, ImmutableArray<PointPart> CutMm);

/// <summary>Where the roll can be cut straight across.</summary>
internal sealed record StraightCutPart(int After, double FromCutEndMm);

/// <summary>What is worth keeping.</summary>
internal sealed record LeftoverPart(string Name, double FromCutEndMm, double FromSelvageMm, double AlongRollMm, double AcrossRollMm);
