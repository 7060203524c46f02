using CanvasCut.Geometry;

namespace CanvasCut.Nesting.Separation;

/// <summary>Where every piece lies, overlapping or not, and the box around each, the barred zones after the pieces.</summary>
internal sealed class Arrangement
{
    /// <summary>Boxes are compared so many at a time; the arrays are filled up to that with boxes nothing meets.</summary>
    public const int Lanes = 8;

    private readonly ShapeTable _table;

    public Arrangement(ShapeTable table)
    {
        _table = table;
        Count = table.Pieces.Length;
        All = Count + table.ZoneCount;
        var room = (All + Lanes - 1) / Lanes * Lanes;
        (X, Y, Shape) = (new double[All], new double[All], new int[All]);
        (Left, Bottom, Right, Top) = (Far(room), Far(room), Far(room), Far(room));
        for (var zone = 0; zone < table.ZoneCount; zone++)
        {
            Put(Count + zone, table.FirstZone + zone, 0, 0);
        }
    }

    /// <summary>How many pieces there are.</summary>
    public int Count { get; }

    /// <summary>How many pieces and zones.</summary>
    public int All { get; }

    /// <summary>How long the strip is.</summary>
    public double LengthMm { get; set; }

    /// <summary>Where each piece's origin lies along the strip.</summary>
    public double[] X { get; }

    /// <summary>Where each piece's origin lies across it.</summary>
    public double[] Y { get; }

    /// <summary>The shape of each piece: in which pose it is held.</summary>
    public int[] Shape { get; }

    /// <summary>The sides of the boxes.</summary>
    public double[] Left { get; }

    /// <inheritdoc cref="Left"/>
    public double[] Bottom { get; }

    /// <inheritdoc cref="Left"/>
    public double[] Right { get; }

    /// <inheritdoc cref="Left"/>
    public double[] Top { get; }

    /// <summary>How far the pieces reach.</summary>
    public double ReachMm => Right.AsSpan(0, Count).ToArray().Max();

    /// <summary>Lays a piece somewhere.</summary>
    public void Put(int piece, int shape, double x, double y)
    {
        var bounds = _table.Shapes[shape].Bounds;
        (Shape[piece], X[piece], Y[piece]) = (shape, x, y);
        (Left[piece], Right[piece]) = (bounds.Left + x, bounds.Right + x);
        (Bottom[piece], Top[piece]) = (bounds.Bottom + y, bounds.Top + y);
    }

    /// <summary>Takes a piece off the strip; it must be put somewhere before the arrangement is used as a whole.</summary>
    public void Lift(int piece) => Left[piece] = Right[piece] = Bottom[piece] = Top[piece] = double.NaN;

    /// <summary>The layout of the pieces.</summary>
    public NestingLayout ToLayout()
    {
        var copies = new int[_table.Task.Items.Length];
        return new(_table.Task, [.. Enumerable.Range(0, Count).Select(PlacementOf)]);

        NestingPlacement PlacementOf(int piece)
        {
            var shape = _table.Shapes[Shape[piece]];
            return new(shape.Item, copies[shape.Item]++, shape.Pose, new(X[piece], Y[piece]));
        }
    }

    /// <summary>Takes over another arrangement of the same pieces.</summary>
    public void CopyFrom(Arrangement other)
    {
        LengthMm = other.LengthMm;
        for (var piece = 0; piece < Count; piece++)
        {
            Put(piece, other.Shape[piece], other.X[piece], other.Y[piece]);
        }
    }

    /// <summary>The same arrangement, to be changed on its own.</summary>
    public Arrangement Copy()
    {
        var copy = new Arrangement(_table);
        copy.CopyFrom(this);
        return copy;
    }

    /// <summary>The place nearest to another with which a shape lies inside the strip, and on the repeat if there is one.</summary>
    public Point Kept(int shape, double x, double y)
    {
        var (bounds, task) = (_table.Shapes[shape].Bounds, _table.Task);
        var top = Math.Max(-bounds.Bottom, task.StripWidthMm - bounds.Top);
        var most = Math.Max(-bounds.Left, LengthMm - bounds.Right);
        var along = Math.Clamp(x, -bounds.Left, most);
        if (task.RepeatMm > 0)
        {
            var starts = Math.Min(Math.Round((along + bounds.Left) / task.RepeatMm), Math.Floor((most + bounds.Left + FreePlace.SameMm) / task.RepeatMm));
            along = (starts * task.RepeatMm) - bounds.Left;
        }

        return new(along, Math.Clamp(y, -bounds.Bottom, top));
    }

    /// <summary>Whether the strip is long enough for a shape.</summary>
    public bool Fits(int shape) => _table.Shapes[shape].Bounds.WidthMm <= LengthMm + FreePlace.SameMm;

    /// <summary>Makes the strip shorter and moves what lies beyond a line across it to the left by as much.</summary>
    public void Shorten(double byMm, double beyondMm)
    {
        LengthMm -= byMm;
        for (var piece = 0; piece < Count; piece++)
        {
            var shape = Fits(Shape[piece]) ? Shape[piece] : _table.Choices[_table.Pieces[piece]].MinBy(choice => _table.Shapes[choice].Bounds.WidthMm);
            var moved = Left[piece] + Right[piece] > 2 * beyondMm ? byMm : 0;
            var place = Kept(shape, X[piece] - moved, Y[piece]);
            Put(piece, shape, place.X, place.Y);
        }
    }

    private static double[] Far(int count)
    {
        var sides = new double[count];
        Array.Fill(sides, double.NaN);
        return sides;
    }
}
