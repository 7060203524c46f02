using CanvasCut.Geometry;
using CanvasCut.Nesting;

namespace CanvasCut.Tests.Nesting;

/// <summary>Makes tasks briefly.</summary>
internal static class Tasks
{
    public static NestingTask Of(double widthMm, double gapMm, params NestingItem[] items) => new([.. items], widthMm, gapMm);

    public static NestingItem Rectangle(double alongMm, double acrossMm, int demand = 1, AllowedTurns turns = AllowedTurns.None) =>
        new($"{alongMm} x {acrossMm}", Outline.Of(new(0, 0, alongMm, acrossMm)), demand, turns);
}
