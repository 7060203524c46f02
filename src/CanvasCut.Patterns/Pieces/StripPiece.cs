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
        var (seam, hem, ends) = (EdgeTurn.Once(spec.SeamAllowance), EdgeTurn.Of(spec.Hem), EndsOf(spec, place));
        var turns = Sides.Of(side => side == place.SeamSide ? seam : side == place.FreeSide ? hem : ends);
        var finished = Box.Around(new(0, 0), place.Finished.WidthMm, place.Finished.HeightMm);
        var hemmed = new HemmedBox(finished, turns, job.Carrier.Corner);
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
            [.. hemmed.Folds(), .. hemmed.Rows(job.Workshop.Sewing.Rows), MiddleOf(place)],
            [
                AllowanceText.Of(new(turns.Forward.Allowance, turns.Aft.Allowance, turns.Port.Allowance, turns.Starboard.Allowance), job.Units),
                .. place.IsOnCarrier
                    ? new[] { Say.Of($"The {Words.Of(place.SeamSide)} edge is sewn to the carrier; the others are hemmed."), Say.Of("Fold the ends once only, their raw edges sealed with a hot knife: more plies would lie on the carrier's hem.") }
                    : [Say.Of($"The {Words.Of(place.SeamSide)} edge is sewn to the top; the others are hemmed.")],
            ]).FoldedAlong(hemmed.FoldOrder).LyingAt(PlaneMap.To(place.Finished.Center));
    }

    /// <summary>On the carrier the ends come to lie on its hem and what holds its edge: folded once, they leave the needle fewer plies.</summary>
    private static EdgeTurn EndsOf(WeatherStripSpec spec, StripPlace place) => place.IsOnCarrier ? new(Length.Zero, spec.Hem.Width) : EdgeTurn.Of(spec.Hem);

    /// <summary>From the middle of the seam a part of the way in; that of a side's is not the boat's.</summary>
    private static PieceLine MiddleOf(StripPlace place)
    {
        var (from, to) = place.Seam;
        var middle = new Point(0, 0) + (from.Toward(to, 0.5) - place.Finished.Center);
        var isEnd = place.Side is Side.Forward or Side.Aft;
        return PieceLine.Straight(PieceLineKind.Mark, middle, middle.Toward(new(0, 0), 0.5), isEnd ? LineShows.Centreline : LineShows.Middle);
    }
}
