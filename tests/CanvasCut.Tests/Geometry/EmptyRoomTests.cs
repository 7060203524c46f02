using System.Collections.Immutable;
using CanvasCut.Geometry;
using NetTopologySuite.Geometries.Prepared;

namespace CanvasCut.Tests.Geometry;

/// <summary>Empty rectangles, against NetTopologySuite and against trying every rectangle of another grid.</summary>
public sealed class EmptyRoomTests
{
    private const double LeastMm = 60;
    private const double GridMm = 10;

    private static readonly Box Frame = new(0, 0, 400, 300);

    private static readonly Gen<Outline> Triangle =
        Gen.Select(Gen.Int[0, 300], Gen.Int[0, 200], Gen.Int[10, 100], Gen.Int[10, 100], (x, y, along, up) => new Outline([new(x, y), new(x + along, y + (up / 3)), new(x + (along / 2), y + up)]));

    /// <summary>Open to the right, so that something may lie inside.</summary>
    private static readonly Gen<Outline> Bracket =
        Gen.Select(Gen.Int[0, 200], Gen.Int[0, 100], Gen.Int[0, 120], (x, y, deep) => new Outline(
            [new(x, y), new(x + 150, y), new(x + 150, y + 20), new(x + 130 - deep, y + 20), new(x + 130 - deep, y + 120), new(x + 150, y + 120), new(x + 150, y + 140), new(x, y + 140)]));

    private static readonly Gen<Outline[]> Taken = Gen.Select(Triangle.Array[0, 4], Bracket.Array[0, 2], (triangles, brackets) => (Outline[])[.. triangles, .. brackets]);

    /// <summary>By hand: 400 by 300 with a box of 100 by 180 in the lower left corner; above it 400 by 120, to its right 300 by 300.</summary>
    [Fact]
    public void The_largest_comes_first_and_the_rest_of_the_other_follows()
    {
        var rooms = EmptyRoom.Of(Frame, [Outline.Of(new(0, 0, 100, 180))], LeastMm, GridMm).ToList();

        Assert.Equal([new(100, 0, 400, 300), new(0, 180, 100, 300)], rooms);
    }

    [Fact]
    public void A_side_that_lies_between_the_lines_of_the_grid_is_found()
    {
        var room = EmptyRoom.Of(Frame, [Outline.Of(new(0, 0, 103.7, 300)), Outline.Of(new(300, 0, 400, 21.3))], LeastMm, GridMm).First();

        Assert.Equal([103.7, 21.3, 400.0, 300.0], [room.Left, room.Bottom, room.Right, room.Top]);
    }

    [Fact]
    public void There_is_none_when_all_is_too_narrow() =>
        Assert.Empty(EmptyRoom.Of(Frame, [Outline.Of(new(59, 0, 400, 300))], LeastMm, GridMm));

    [Fact]
    public void None_lies_on_an_outline_or_on_another_or_is_too_small() =>
        Taken.Sample(
            taken =>
            {
                var rooms = EmptyRoom.Of(Frame, [.. taken], LeastMm, GridMm).ToList();
                Assert.All(rooms, room => Assert.True(Frame.Grown(1e-9).Holds(room) && Math.Min(room.WidthMm, room.HeightMm) >= LeastMm - 1e-5));
                Assert.All(rooms, room => Assert.All(taken, outline => Assert.True(Witness.OverlapMm2(Outline.Of(room), outline) < 1e-3)));
                Assert.All(rooms.Index(), room => Assert.All(rooms.Take(room.Index), other => Assert.True(Witness.OverlapMm2(Outline.Of(room.Item), Outline.Of(other)) < 1e-3)));
            },
            iter: 200);

    [Fact]
    public void No_rectangle_is_larger_by_more_than_the_grid() =>
        Taken.Sample(
            taken =>
            {
                var found = EmptyRoom.Of(Frame, [.. taken], LeastMm, GridMm).Select(room => room.WidthMm * room.HeightMm).FirstOrDefault();
                Assert.True(LargestByTryingAll(taken) <= found + 1e-6);
            },
            iter: 60);

    /// <summary>The area, less two grid steps each way, of the largest empty rectangle whose sides lie on a grid of 7 mm.</summary>
    private static double LargestByTryingAll(Outline[] taken)
    {
        const int CellMm = 7;
        var counts = TakenCells(taken, CellMm);
        var best = 0.0;
        for (var left = 0; left < counts.Length; left++)
        {
            for (var right = left + ((int)(LeastMm + (2 * GridMm)) / CellMm) + 1; right < counts.Length; right++)
            {
                for (var bottom = 0; bottom < counts[0].Length; bottom++)
                {
                    for (var top = bottom + ((int)(LeastMm + (2 * GridMm)) / CellMm) + 1; top < counts[0].Length; top++)
                    {
                        var isEmpty = counts[right][top] - counts[left][top] - counts[right][bottom] + counts[left][bottom] == 0;
                        best = isEmpty ? Math.Max(best, (((right - left) * CellMm) - (2 * GridMm)) * (((top - bottom) * CellMm) - (2 * GridMm))) : best;
                    }
                }
            }
        }

        return best;
    }

    /// <summary>How many cells below and left of a grid point have something of an outline in them.</summary>
    private static int[][] TakenCells(Outline[] taken, int cellMm)
    {
        ImmutableArray<IPreparedGeometry> outlines = [.. taken.Select(outline => PreparedGeometryFactory.Prepare(Witness.ToPolygon(outline)))];
        int[][] counts = [.. Enumerable.Range(0, (int)(Frame.WidthMm / cellMm) + 1).Select(_ => new int[(int)(Frame.HeightMm / cellMm) + 1])];
        for (var column = 1; column < counts.Length; column++)
        {
            for (var row = 1; row < counts[0].Length; row++)
            {
                var cell = Witness.ToPolygon(Outline.Of(new Box((column - 1) * cellMm, (row - 1) * cellMm, column * cellMm, row * cellMm).Grown(-1e-6)));
                var isTaken = outlines.Any(outline => outline.Intersects(cell));
                counts[column][row] = counts[column - 1][row] + counts[column][row - 1] - counts[column - 1][row - 1] + (isTaken ? 1 : 0);
            }
        }

        return counts;
    }
}
