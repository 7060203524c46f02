using System.Collections.Immutable;
using CanvasCut.Design;

namespace CanvasCut.Job;

/// <summary>What is sewn to the top, for a later refit; its numbers are not rounded.</summary>
internal sealed record SewnPart(
    SewnCarrierPart Carrier, SewnPanelPart Panel, SewnZipperPart Zipper, SewnPocketPart Pocket, SewnStripPart WeatherStrip, SewnChafePart Chafe);

/// <summary>The carrier that is sewn for.</summary>
internal sealed record SewnCarrierPart(double StationMm, double OffsetMm, double AthwartMm, double ForeAftMm);

/// <summary>The panel that is sewn for.</summary>
internal sealed record SewnPanelPart(LongSide LongSide, double AthwartMm, double ForeAftMm, double ThicknessMm);

/// <summary>The zippers on the top.</summary>
internal sealed record SewnZipperPart(
    ZipperKind Kind,
    double ChainMm,
    double OverallWidthMm,
    double RevealMm,
    double RunMm,
    double SetbackMm,
    double BuyMm,
    Side? Start = null,
    double? StartSetbackMm = null);

/// <summary>The pockets on the top.</summary>
internal sealed record SewnPocketPart(ImmutableArray<double> LegsMm, double EaseMm, HemPart Mouth, double SeamAllowanceMm, bool OverZipper);

/// <summary>The weather strips, and which of them are sewn to the carrier.</summary>
internal sealed record SewnStripPart(
    ImmutableArray<Side> Edges, double OverlapMm, double SeamAllowanceMm, HemPart Hem, double OverhangMm, double? SeamClearanceMm = null, ImmutableArray<Side>? OnCarrier = null, SewnHoldPart? Held = null);

/// <summary>What holds the free edges of the weather strips.</summary>
internal sealed record SewnHoldPart(StripHold Kind, double PitchMm, double SquareMm, double RodMm);

/// <summary>The chafe patches under the top.</summary>
internal sealed record SewnChafePart(double WidthBeyondTubeMm, double TurnUnderMm);

/// <summary>A hem.</summary>
internal sealed record HemPart(double TurnUnderMm, double WidthMm);
