using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Language;
using UnitsNet;

namespace CanvasCut.Patterns;

/// <summary>A weather strip: sewn to the top or to the carrier along one long edge, hemmed on the other three.</summary>
internal static class StripPiece
{
    public static PatternPiece Of(CarrierJob job, StripPlace place)
    {
        var spec = job.Fastenings.WeatherStrip;
        var free = StripHolding.FreeHem(spec, StripHolding.SizeOf(job.Fastenings));
        var (seam, hem, ends) = (EdgeTurn.Once(spec.SeamAllowance), EdgeTurn.Of(free), EndsOf(spec, place, free));
        var turns = Sides.Of(side => side == place.SeamSide ? seam : side == place.FreeSide ? hem : ends);
        var finished = Box.Around(new(0, 0), place.Finished.WidthMm, place.Finished.HeightMm);
        var hemmed = new HemmedBox(finished, turns, IsRodded(place) ? CornerKind.Square : job.Carrier.Corner, IsRodded(place) ? place.FreeSide : null);
        var holding = place.Holding is { } held ? StripHoldMarks.Of(held, place.Finished.Center, hemmed.FoldOrder.Length) : [];
        return new PatternPiece(
            new(PieceKind.WeatherStrip, Side: place.Side),
            new(
                Say.Of($"Weather strip, {Words.Of(place.Side)}"),
                1,
                Hand.Neither,
                PieceTitle.OuterFaceUp)
            {
                KindName = Say.Of("Weather strip"),
            },
            new(hemmed.Finished, hemmed.Cut),
            job.Workshop.Cloth.Lay.Warp,
            [.. hemmed.Folds(), .. hemmed.Rows(job.Workshop.Sewing.Rows), MiddleOf(place), .. holding],
            [
                AllowanceText.Of(new(turns.Forward.Allowance, turns.Aft.Allowance, turns.Port.Allowance, turns.Starboard.Allowance), job.Units),
                place.IsOnCarrier
                    ? Say.Of($"The {Words.Of(place.SeamSide)} edge is sewn to the carrier; the others are hemmed.")
                    : Say.Of($"The {Words.Of(place.SeamSide)} edge is sewn to the top; the others are hemmed."),
                .. place.IsOnCarrier || IsRodded(place) ? new[] { Say.Of("Fold the ends once only, their raw edges sealed with a hot knife: more plies would be too many for the needle.") } : [],
                .. HeldBy(place.Holding, job.Units),
            ]).FoldedAlong(hemmed.FoldOrder).LyingAt(PlaneMap.To(place.Finished.Center));
    }

    /// <summary>
    /// On the carrier the ends come to lie on its hem and what holds its edge, and a rod's hem is folded over them: folded once, they leave the needle
    /// fewer plies. Hems of one strip are alike else, so that their corners can be mitred.
    /// </summary>
    private static EdgeTurn EndsOf(WeatherStripSpec spec, StripPlace place, Hem free) =>
        place.IsOnCarrier || IsRodded(place) ? new(Length.Zero, spec.Hem.Width) : EdgeTurn.Of(free);

    /// <summary>A rod goes in at the end of its hem, which no mitre may close.</summary>
    private static bool IsRodded(StripPlace place) => place.Holding is { Kind: StripHold.Rod };

    private static IEnumerable<string> HeldBy(StripHolding? holding, PrintUnits units) => holding switch
    {
        null => [],
        { Kind: StripHold.Rod } => [Say.Of($"The free edge's hem takes a rod of {LengthText.Of(holding.Size, units)}: fold the ends first, so that it stays open there.")],
        { Kind: StripHold.Snaps } => [Say.Of($"{holding.Centres.Length} snaps in the free edge's hem.")],
        _ => [Say.Of($"{holding.Centres.Length} squares of hook-and-loop, {LengthText.Of(holding.Size, units)}, under the free edge's hem.")],
    };

    /// <summary>From the middle of the seam a part of the way in; that of a side's is not the boat's.</summary>
    private static PieceLine MiddleOf(StripPlace place)
    {
        var (from, to) = place.Seam;
        var middle = new Point(0, 0) + (from.Toward(to, 0.5) - place.Finished.Center);
        var isEnd = place.Side is Side.Forward or Side.Aft;
        return PieceLine.Straight(PieceLineKind.Mark, middle, middle.Toward(new(0, 0), 0.5), isEnd ? LineShows.Centreline : LineShows.Middle);
    }
}
