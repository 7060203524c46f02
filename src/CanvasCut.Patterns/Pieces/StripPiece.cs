using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Language;

namespace CanvasCut.Patterns;

/// <summary>A weather strip: sewn to the top along one long edge, hemmed on the other three.</summary>
internal static class StripPiece
{
    public static PatternPiece Of(CarrierJob job, StripPlace place)
    {
        var spec = job.Fastenings.WeatherStrip;
        var (seam, hem) = (EdgeTurn.Once(spec.SeamAllowance), EdgeTurn.Of(spec.Hem));
        var turns = place.Side == Side.Forward
            ? new Sides<EdgeTurn>(Forward: seam, Aft: hem, Port: hem, Starboard: hem)
            : new Sides<EdgeTurn>(Forward: hem, Aft: seam, Port: hem, Starboard: hem);
        var finished = Box.Around(new(0, 0), place.Finished.WidthMm, place.Finished.HeightMm);
        var hemmed = new HemmedBox(finished, turns, job.Carrier.Corner);
        var middle = place.Side == Side.Forward ? hemmed.Finished.Bounds.Top : hemmed.Finished.Bounds.Bottom;
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
            [
                .. hemmed.Folds(),
                .. hemmed.Rows(job.Workshop.Sewing.Rows),
                PieceLine.Straight(PieceLineKind.Mark, new(0, middle), new(0, middle / 2), LineShows.Centreline),
            ],
            [
                AllowanceText.Of(new(turns.Forward.Allowance, turns.Aft.Allowance, turns.Port.Allowance, turns.Starboard.Allowance), job.Units),
                Say.Of($"The {Words.Of(place.Side)} edge is sewn to the top; the others are hemmed."),
            ]).FoldedAlong(hemmed.FoldOrder).LyingAt(PlaneMap.To(place.Finished.Center));
    }
}
