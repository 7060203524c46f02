using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Geometry;

namespace CanvasCut.Patterns;

/// <summary>Every piece to cut for a job, and where everything lies on the top.</summary>
/// <param name="Job">The job.</param>
/// <param name="Mounted">What is mounted, at its place on the top.</param>
/// <param name="WholeCarrier">The carrier as one piece, whether or not the roll is wide enough.</param>
/// <param name="CarrierPieces">The carrier, or its widths from port to starboard or aft to forward.</param>
/// <param name="TopPieces">What is sewn to the top and stays there when the carrier comes off: pockets, strips, chafe patches.</param>
/// <param name="NotionPieces">The small pieces for zippers and cable, the flaps that hold the carrier's edges in the place of zippers, and the
/// strips that are sewn to the carrier.</param>
public sealed record PatternSet(
    CarrierJob Job,
    MountedShape Mounted,
    PatternPiece WholeCarrier,
    ImmutableArray<PatternPiece> CarrierPieces,
    ImmutableArray<PatternPiece> TopPieces,
    ImmutableArray<PatternPiece> NotionPieces)
{
    /// <summary>The top's surface, or what is missing to know it.</summary>
    public SurfaceFinding Surface { get; } = TopSurface.Of(Job.Top);

    /// <summary>The same with the cloth as slack as it may be, on which the panel and all that holds it lie together.</summary>
    public SurfaceFinding Slack { get; } = TopSurface.Hanging(Job.Top, Job.Limits.Shape.ClothSag);

    /// <summary>How each panel is bonded to the carrier, in the order of the panels.</summary>
    public ImmutableArray<BondPlan> Bonds { get; private init; } = BondPlan.All(Job, Mounted);

    /// <summary>How the panel is bonded; of several what bonds all of them together.</summary>
    public BondPlan Bond => BondPlan.Joined(Bonds);

    /// <summary>Where the cables go through the carrier.</summary>
    public ImmutableArray<CableHole> Holes => CableHole.All(Job, Mounted);

    /// <summary>One for each panel of the carrier as if it lay on it alone; the pieces are those of all.</summary>
    public ImmutableArray<PatternSet> EachPanel => Job.Row is null
        ? [this]
        : [.. Patterns.EachPanel.Of(Job, Mounted).Select((each, i) => this with { Job = each.Job, Mounted = each.Mounted, Bonds = [Bonds[i]] })];

    /// <summary>What is sewn to the top already and is not cut again; empty unless a new panel goes on an old top.</summary>
    public ImmutableArray<PatternPiece> Kept { get; private init; } = [];

    /// <summary>Every piece as one, whether or not the roll is wide enough, what is kept too: carrier, top, small pieces.</summary>
    public ImmutableArray<PatternPiece> Wholes { get; private init; } = [];

    /// <summary>The whole pieces of a kind, in their order.</summary>
    public ImmutableArray<PatternPiece> WholesOf(PieceKind kind) => [.. Wholes.Where(piece => piece.Key.Kind == kind)];

    /// <summary>The whole piece of a kind at an edge; null where there is none.</summary>
    public PatternPiece? Whole(PieceKind kind, Side side) => WholesOf(kind).SingleOrDefault(piece => piece.Key.Side == side);

    /// <summary>Whether only the carrier's side is made, for a top that has its half.</summary>
    public bool IsRefit => !Kept.IsEmpty;

    /// <summary>All pieces to cut, in the order in which they are numbered.</summary>
    public ImmutableArray<PatternPiece> Pieces => [.. CarrierPieces, .. TopPieces, .. NotionPieces];

    /// <summary>The pieces for a mounting.</summary>
    /// <param name="job">The job.</param>
    /// <param name="mounted">What is mounted.</param>
    /// <param name="carrierWidths">The carrier is cut in so many widths at least, even where the roll needs fewer.</param>
    public static PatternSet Of(CarrierJob job, MountedShape mounted, int carrierWidths = 1)
    {
        var carrier = Named(CarrierPiece.Of(job, mounted), job.Mounting);
        ImmutableArray<PatternPiece> top = [.. TopSide(job, mounted).Select(piece => Named(piece, job.Mounting))];
        ImmutableArray<PatternPiece> notions = [.. Notions(job, mounted).Select(piece => Named(piece, job.Mounting))];
        return new(
            job,
            mounted,
            carrier,
            RollSplit.Of(carrier, job, KeepClear(job, mounted), carrierWidths),
            [.. top.SelectMany(piece => RollSplit.Of(piece, job, FlapPieces.Openings(piece)))],
            [.. notions.SelectMany(piece => RollSplit.Of(piece, job, FlapPieces.Openings(piece)))])
        {
            Wholes = [carrier, .. top, .. notions],
        };
    }

    /// <summary>
    /// The pieces for a new panel on a top whose half is sewn: those of the top are kept, and caps are cut for the carrier's
    /// halves of the zippers alone.
    /// </summary>
    public static PatternSet Refitted(CarrierJob job, MountedShape mounted)
    {
        var whole = Of(job, mounted);
        return whole with
        {
            TopPieces = [],
            Kept = whole.TopPieces,
            NotionPieces = [.. whole.NotionPieces.Select(ForCarrier)],
            Wholes = [.. whole.Wholes.Select(ForCarrier)],
        };
    }

    private static PatternPiece ForCarrier(PatternPiece piece) =>
        piece.Title.Quantity > 1 ? piece with { Title = piece.Title with { Quantity = piece.Title.Quantity / 2 } } : piece;

    /// <summary>Whose it is.</summary>
    private static PatternPiece Named(PatternPiece piece, MountingName mounting) =>
        mounting.IsOnly ? piece : piece with { Key = piece.Key with { Mounting = mounting } };

    private static IEnumerable<PatternPiece> TopSide(CarrierJob job, MountedShape mounted) =>
    [
        .. mounted.Fastened.Pockets.Select(pocket => PocketPiece.Of(job, pocket)),
        .. mounted.Fastened.StripsOnTop.Select(strip => StripPiece.Of(job, strip)),
        .. mounted.Fastened.Flaps.SelectMany(flap => FlapPieces.OnTop(job, flap)),
        .. PatchPieces.Chafe(job, mounted),
    ];

    private static IEnumerable<PatternPiece> Notions(CarrierJob job, MountedShape mounted) =>
    [
        .. PatchPieces.EndCaps(job, mounted),
        .. PatchPieces.CableExit(job, mounted),
        .. mounted.Fastened.Flaps.Select(flap => FlapPieces.OnCarrier(job, flap)),
        .. mounted.Fastened.StripsOnCarrier.Select(strip => StripPiece.Of(job, strip)),
    ];

    /// <summary>What a seam in the carrier must keep clear of, in the carrier's own plane.</summary>
    private static ImmutableArray<Box> KeepClear(CarrierJob job, MountedShape mounted)
    {
        var centred = mounted.MovedBy(new Point(0, 0) - mounted.CarrierBox.Center);
        return
        [
            .. centred.Fastened.Edges.SelectMany(edge => EdgeBoxes(edge, job.Workshop.Cloth.Lay.Warp)),
            .. centred.Fastened.Pockets.Select(pocket => pocket.Outline.Bounds),
            .. Patterns.EachPanel.Of(job, centred).SelectMany(PanelBoxes),
        ];
    }

    private static IEnumerable<Box> PanelBoxes(EachPanel each)
    {
        if (each.Mounted.JunctionBox is { } box)
        {
            yield return box;
        }

        if (each.Mounted.CableExit is { } hole && each.Job.Panel.Fittings.CableExit is { } exit)
        {
            yield return Box.Around(hole, exit.Diameter.Millimeters, exit.Diameter.Millimeters);
        }
    }

    /// <summary>A seam across a fastening's run cannot be helped, but must not meet its ends; one along it must miss it all.</summary>
    private static IEnumerable<Box> EdgeBoxes(EdgePlace edge, WarpDirection warp)
    {
        var (band, runsAlong) = (edge.AsEnd.Band, edge.IsEnd == (warp == WarpDirection.Athwart));
        return runsAlong ? [edge.Band] : new[] { band with { Right = band.Left }, band with { Left = band.Right } }.Select(edge.Frame.Back);
    }
}
