using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Patterns;
using UnitsNet;

namespace CanvasCut.Takeoff;

/// <summary>A piece as it is sewn: one piece cut, or several widths to be joined.</summary>
/// <param name="Key">Of the whole piece.</param>
/// <param name="Name">What the sewist calls it.</param>
/// <param name="Widths">What is cut.</param>
internal sealed record WholePiece(PieceKey Key, string Name, ImmutableArray<PatternPiece> Widths)
{
    /// <summary>As in "weather-strip-forward", for the ids of steps.</summary>
    public string Id => Key.Id;

    /// <summary>Whether widths must be joined.</summary>
    public bool IsJoined => Widths.Length > 1;

    /// <summary>What there is before the piece's own edges are finished.</summary>
    public ImmutableArray<WorkPart> Flat => IsJoined ? [WorkParts.Joined(Key)] : [WorkParts.Marked(Widths[0])];

    /// <summary>All its rows of stitches.</summary>
    public Length Rows => Widths.Aggregate(Length.Zero, (sum, piece) => sum + WorkTimes.Rows(piece));

    /// <summary>All rows of several.</summary>
    public static Length RowsOf(IEnumerable<WholePiece> pieces) => pieces.Aggregate(Length.Zero, (sum, piece) => sum + piece.Rows);
}

/// <summary>The job as the steps see it.</summary>
internal sealed class WorkSubject
{
    public WorkSubject(PatternSet patterns)
    {
        Patterns = patterns;
        Pockets = Wholes(PieceKind.Pocket);
        Strips = [.. Wholes(PieceKind.WeatherStrip).Where(piece => SewnTo(piece) == StripGround.Top)];
        CarrierStrips = [.. Wholes(PieceKind.WeatherStrip).Where(piece => SewnTo(piece) == StripGround.Carrier)];
        Chafe = Wholes(PieceKind.ChafePatch);
        Carrier = Wholes(PieceKind.Carrier)[0];
        EndCap = Wholes(PieceKind.EndCap).FirstOrDefault();
        Flaps = Wholes(PieceKind.MountFlap);
        MountStrips = Wholes(PieceKind.MountStrip);
        ExitPatches = Wholes(PieceKind.ExitPatch);
        TopParts = TopPart.All(this);
    }

    public PatternSet Patterns { get; }

    public CarrierJob Job => Patterns.Job;

    public ImmutableArray<ZipperPlace> Zippers => Patterns.Mounted.Fastened.Zippers;

    public ImmutableArray<EdgePlace> Edges => Patterns.Mounted.Fastened.Edges;

    /// <summary>What there is on the carrier when all is sewn to it: each edge's half ready to be closed, and its own weather strips.</summary>
    public IEnumerable<WorkPart> CarrierSides =>
    [
        .. Edges.Select(edge => edge switch
        {
            FlapPlace { Fasteners: not null } => WorkParts.SetInCarrier(edge),
            { Kind: MountKind.Sleeve } => WorkParts.RodOf(edge),
            _ => WorkParts.OnCarrier(edge),
        }),
        .. CarrierStrips.Select(strip => WorkParts.OnCarrier(strip.Key)),
        .. HeldOnCarrier.Select(strip => WorkParts.HoldOnCarrier(KeyOf(strip))),
    ];

    /// <summary>What bonds the panel, as it is drawn and ordered.</summary>
    public BondPlan Bond => Patterns.Bond;

    public WholePiece Carrier { get; }

    /// <summary>The caps of the zippers' ends; null without zippers.</summary>
    public WholePiece? EndCap { get; }

    /// <summary>The carrier's flaps, where it has them.</summary>
    public ImmutableArray<WholePiece> Flaps { get; }

    /// <summary>What lies under or against the flaps on the top.</summary>
    public ImmutableArray<WholePiece> MountStrips { get; }

    /// <summary>The patch round the hole of each cable that goes through the carrier.</summary>
    public ImmutableArray<WholePiece> ExitPatches { get; }

    public ImmutableArray<WholePiece> Pockets { get; }

    /// <summary>The weather strips for the top.</summary>
    public ImmutableArray<WholePiece> Strips { get; }

    /// <summary>The weather strips for the carrier.</summary>
    public ImmutableArray<WholePiece> CarrierStrips { get; }

    /// <summary>The strips for which something is set on the carrier, or in a strip of the carrier's.</summary>
    public IEnumerable<StripPlace> HeldOnCarrier => Held.Where(strip => strip.IsOnCarrier || strip.Holding!.Kind != StripHold.Rod);

    /// <summary>The strips for which something is set on the top, or in a strip of the top's.</summary>
    public IEnumerable<StripPlace> HeldOnTop => Patterns.IsRefit ? [] : Held.Where(strip => !strip.IsOnCarrier || strip.Holding!.Kind != StripHold.Rod);

    private IEnumerable<StripPlace> Held => Patterns.Mounted.Fastened.Strips.Where(strip => strip.Holding is { Kind: StripHold.Rod } or { Centres.IsEmpty: false });

    /// <summary>Whether any edge has a weather strip.</summary>
    public bool HasStrips => !Strips.IsEmpty || !CarrierStrips.IsEmpty;

    public ImmutableArray<WholePiece> Chafe { get; }

    /// <summary>The pieces that are finished by themselves and then sewn to the top.</summary>
    public IEnumerable<WholePiece> TopPieces => [.. Pockets, .. Strips, .. MountStrips, .. Chafe];

    /// <summary>All that is sewn to the top, what lies lowest first.</summary>
    public ImmutableArray<TopPart> TopParts { get; }

    /// <summary>Whether zippers hold the forward and the aft edge, and nothing the sides.</summary>
    public bool HasZippersOnly => Patterns.Mounted.Fastened.HasEndZippersOnly;

    /// <summary>Which piece a strip is, whether it is made or kept.</summary>
    public PieceKey KeyOf(StripPlace strip) => Patterns.Whole(PieceKind.WeatherStrip, strip.Side)!.Key;

    /// <summary>The piece of a flap.</summary>
    public WholePiece FlapOf(FlapPlace flap) => Flaps.Single(piece => piece.Key.Side == flap.Side);

    /// <summary>What is sewn to the top for a flap.</summary>
    public TopPart TopPartOf(FlapPlace flap) => TopParts.Single(part => part.Edge == flap);

    /// <summary>Whether the panel is bonded before the top is marked.</summary>
    public bool IsBondFirst => Job.Work.Order == BondOrder.BondFirst;

    /// <summary>A length in the job's units.</summary>
    public string Text(double millimetres) => LengthText.Of(Length.FromMillimeters(millimetres), Job.Units);

    /// <summary>How far something may be off at most, inches to 1/32.</summary>
    public string AtMost(double millimetres) => LimitWords.Most(Length.FromMillimeters(millimetres), Job.Units, InchFraction.ThirtySecond);

    /// <summary>A length below a millimetre, inches to 1/64.</summary>
    public string FineText(double millimetres)
    {
        var length = Length.FromMillimeters(millimetres);
        var inches = LengthText.Inches(length, InchFraction.SixtyFourth);
        return Job.Units switch
        {
            PrintUnits.Metric => LengthText.Millimetres(length),
            PrintUnits.Imperial => inches,
            _ => $"{LengthText.Millimetres(length)} ({inches})",
        };
    }

    private StripGround SewnTo(WholePiece piece) => Job.Fastenings.WeatherStrip.SewnTo[piece.Key.Side!.Value];

    private ImmutableArray<WholePiece> Wholes(PieceKind kind) =>
    [
        .. Patterns.Pieces
            .Where(piece => piece.Key.Kind == kind)
            .GroupBy(piece => piece.Key.Whole)
            .Select(group => new WholePiece(group.Key, group.First().Title.WholeName, [.. group])),
    ];
}
