using System.Collections.Immutable;
using CanvasCut.Geometry;
using CanvasCut.Language;
using CanvasCut.Patterns;

namespace CanvasCut.Takeoff;

/// <summary>Which of two things that lie on each other is nearer the top's cloth.</summary>
internal enum TopLayer
{
    /// <summary>Under the cloth, against the tube.</summary>
    Chafe,

    /// <summary>The top's zipper halves, or what stands for them.</summary>
    Zipper,

    /// <summary>The corner pockets, which may go over a zipper's end.</summary>
    Pocket,

    /// <summary>The weather strip, over all of it.</summary>
    Strip,
}

/// <summary>Something that is sewn to the top.</summary>
/// <param name="Name">As in "forward zipper".</param>
/// <param name="Layer">What it lies on and under.</param>
/// <param name="Outline">Where it lies, in the plan of the top; convex.</param>
/// <param name="Piece">The piece it is made of; null for a zipper or a tape.</param>
/// <param name="Edge">The fastening it is a part of; null for others.</param>
internal sealed record TopPart(string Name, TopLayer Layer, Outline Outline, WholePiece? Piece, EdgePlace? Edge = null)
{
    /// <summary>The area two parts must share to be in each other's way; less is round-off.</summary>
    private const double LeastOverlapMm2 = 1;

    /// <summary>What it is, whatever it is called.</summary>
    public WorkThing Thing => new(Piece?.Key, Piece is null ? Edge!.Side : null);

    /// <summary>As in "weather-strip-forward", the same in every language.</summary>
    public string Id => Piece?.Id ?? $"{Words.Id(Edge!.Side)}-{(Edge is ZipperPlace ? "zipper" : "loop-tape")}";

    /// <summary>Whether the other part, once sewn, keeps the needle from this one.</summary>
    public bool IsUnder(TopPart other) => other.Layer > Layer && Outline.Shared(other.Outline)?.AreaMm2 > LeastOverlapMm2;

    /// <summary>All parts of a job, the lowest layer first.</summary>
    public static ImmutableArray<TopPart> All(WorkSubject subject)
    {
        var mounted = subject.Patterns.Mounted.Fastened;
        return
        [
            .. subject.Chafe.Select(piece => new TopPart(InSentence(piece), TopLayer.Chafe, OnTop(piece), piece)),
            .. mounted.Zippers.Select(zipper => new TopPart(Say.Of($"{Words.Of(zipper.Side)} zipper"), TopLayer.Zipper, Outline.Of(zipper.Band), null, zipper)),
            .. mounted.Flaps.Select(flap => OfFlap(subject, flap)),
            .. mounted.Pockets.Zip(subject.Pockets, (pocket, piece) => new TopPart(InSentence(piece), TopLayer.Pocket, pocket.Outline, piece)),
            .. mounted.StripsOnTop.Zip(subject.Strips, (strip, piece) => new TopPart(InSentence(piece), TopLayer.Strip, Outline.Of(strip.Finished), piece)),
        ];
    }

    private static TopPart OfFlap(WorkSubject subject, FlapPlace flap)
    {
        var piece = subject.MountStrips.FirstOrDefault(strip => strip.Key.Side == flap.Side);
        return new(piece is null ? Say.Of($"{Words.Of(flap.Side)} loop tape") : InSentence(piece), TopLayer.Zipper, Outline.Of(flap.OnTop), piece, flap);
    }

    private static string InSentence(WholePiece piece) => Say.Within(piece.Name);

    /// <summary>Where the finished piece lies, all its widths together.</summary>
    private static Outline OnTop(WholePiece piece) => Outline.Of(piece.Widths
        .Select(width => width.At!.Value.Of(width.Shape.Finished).Bounds)
        .Aggregate((all, next) => all.Joined(next)));
}
