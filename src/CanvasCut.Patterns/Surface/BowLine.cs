using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Geometry;

namespace CanvasCut.Patterns;

/// <summary>A bow of the surface, in millimetres.</summary>
/// <param name="StationMm">Its station.</param>
/// <param name="HeightMm">The cloth's height on the centreline.</param>
/// <param name="SagMm">The sag of the bay aft of it.</param>
/// <param name="Curve">The cloth over it.</param>
/// <param name="Y">Where it stands in space.</param>
/// <param name="IsContinued">Whether it is the only bow over again, further aft.</param>
internal sealed record BowLine(double StationMm, double HeightMm, double SagMm, BowCurve Curve, double Y, bool IsContinued)
{
    /// <summary>A single bow is continued level, so that there is a bay.</summary>
    private const double ContinuedMm = 1000;

    /// <summary>A place of its curve in space.</summary>
    public SpacePoint Point(Point place) => new(place.X, Y, HeightMm + place.Y);

    /// <summary>The bows of a top whose measures are complete.</summary>
    public static ImmutableArray<BowLine> Of(TopCloth top, Func<Bow, BowCurve> curve)
    {
        ImmutableArray<BowLine> bows =
        [
            .. top.Bows.Select(bow => new BowLine(
                bow.Station.Millimeters,
                (bow.Height?.Millimeters ?? 0) + (bow.Diameter.Millimeters / 2),
                bow.SagAft.Millimeters,
                curve(bow),
                -bow.Station.Millimeters,
                IsContinued: false)),
        ];
        return bows.Length > 1 ? bows : [bows[0] with { SagMm = 0 }, bows[0] with { StationMm = bows[0].StationMm + ContinuedMm, IsContinued = true }];
    }

    /// <summary>The bows as far apart on the level as the bays say.</summary>
    public static ImmutableArray<BowLine> Placed(ImmutableArray<BowLine> bows, ImmutableArray<BayCurve> bays)
    {
        var placed = bows.ToBuilder();
        for (var i = 1; i < placed.Count; i++)
        {
            placed[i] = placed[i] with { Y = placed[i - 1].Y - bays[i - 1].LevelMm };
        }

        return placed.ToImmutable();
    }
}
