namespace CanvasCut.Nesting.Separation;

/// <summary>Pushes pieces that do not overlap to the left and down until they touch.</summary>
internal static class Slide
{
    private const int MostRounds = 20;

    /// <summary>Pushes every piece, those on the left first, as long as that moves anything.</summary>
    public static void Apply(ShapeTable table, Arrangement at)
    {
        var order = Enumerable.Range(0, at.Count).OrderBy(piece => at.Left[piece]).ToList();
        for (var (round, isMoving) = (0, true); round < MostRounds && isMoving; round++)
        {
            isMoving = false;
            foreach (var piece in order)
            {
                isMoving |= Push(table, at, piece);
            }

            order.Sort((one, other) => (at.Left[one], one).CompareTo((at.Left[other], other)));
        }
    }

    /// <summary>Pushes one piece to the left, then down.</summary>
    /// <returns>Whether that moved it.</returns>
    public static bool Push(ShapeTable table, Arrangement at, int piece)
    {
        var (x, y) = (at.X[piece], at.Y[piece]);
        Push(table, at, piece, isDown: false);
        Push(table, at, piece, isDown: true);
        return x - at.X[piece] > FreePlace.SameMm || y - at.Y[piece] > FreePlace.SameMm;
    }

    private static void Push(ShapeTable table, Arrangement at, int piece, bool isDown)
    {
        if (!isDown && table.Task.RepeatMm > 0)
        {
            return;
        }

        var (shape, x, y) = (at.Shape[piece], at.X[piece], at.Y[piece]);
        var bounds = table.Shapes[shape].Bounds;
        var stop = isDown ? -bounds.Bottom : -bounds.Left;
        for (var other = 0; other < at.All; other++)
        {
            if (other != piece && IsOnTheWay(table.Task.GapMm, at, piece, other, isDown))
            {
                var origin = isDown ? at.Y[other] : at.X[other];
                stop = Math.Max(stop, origin + table.Forbidden(at.Shape[other], shape).StopBefore(new(x - at.X[other], y - at.Y[other]), isDown));
            }
        }

        at.Put(piece, shape, isDown ? x : Math.Min(x, stop), isDown ? Math.Min(y, stop) : y);
    }

    private static bool IsOnTheWay(double gapMm, Arrangement at, int piece, int other, bool isDown) => isDown
        ? at.Bottom[other] < at.Top[piece] && at.Left[other] < at.Right[piece] + gapMm && at.Right[other] > at.Left[piece] - gapMm
        : at.Left[other] < at.Right[piece] && at.Bottom[other] < at.Top[piece] + gapMm && at.Top[other] > at.Bottom[piece] - gapMm;
}
