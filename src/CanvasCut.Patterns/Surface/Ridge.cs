using System.Collections.Immutable;
using UnitsNet;

namespace CanvasCut.Patterns;

/// <summary>A bow as the ridge that it makes in the cloth, on the centreline.</summary>
/// <param name="Bow">Which bow, counted from 0, forward to aft.</param>
/// <param name="Height">Of the cloth, over the level that the heights of the bows are measured from.</param>
/// <param name="Turn">How much steeper the cloth falls aft of the bow than forward of it; below zero in a valley.</param>
/// <param name="Spans">The straight line to its neighbours and its height over it; null at the first and the last bow.</param>
public sealed record Ridge(int Bow, Length Height, Angle Turn, RidgeSpans? Spans);

/// <summary>A ridge between its neighbours, on the level and upright.</summary>
/// <param name="Forward">On the level from the bow before.</param>
/// <param name="Aft">On the level to the bow after.</param>
/// <param name="Rise">Over the straight line between the cloth on both; below zero in a valley.</param>
public sealed record RidgeSpans(Length Forward, Length Aft, Length Rise);

/// <summary>Works out ridges.</summary>
internal static class RidgeLine
{
    public static Ridge Of(int index, BowLine bow, ImmutableArray<BayCurve> bays)
    {
        var (before, after) = (index > 0 ? bays[index - 1] : null, index < bays.Length ? bays[index] : null);
        var height = Length.FromMillimeters(bow.HeightMm);
        if (before is null || after is null)
        {
            return new(index, height, Angle.Zero, Spans: null);
        }

        var turn = after.FallRadians(0) - before.FallRadians(double.PositiveInfinity);
        var rise = ((before.RiseMm * after.LevelMm) - (after.RiseMm * before.LevelMm)) / (before.LevelMm + after.LevelMm);
        return new(
            index,
            height,
            Angle.FromRadians(turn),
            new(Length.FromMillimeters(before.LevelMm), Length.FromMillimeters(after.LevelMm), Length.FromMillimeters(rise)));
    }
}
