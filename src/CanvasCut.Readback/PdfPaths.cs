using System.Collections.Immutable;
using CanvasCut.Geometry;
using PdfSharp.Pdf.Content.Objects;

namespace CanvasCut.Readback;

/// <summary>Follows the path operators of a page (ISO 32000-1, 8.5) and keeps the closed lines of the cut line's width.</summary>
/// <param name="lineWidthOf">The line width that a named graphics state sets; null when it sets none.</param>
internal sealed class PdfPaths(Func<string, double?> lineWidthOf)
{
    private const double CutWidthMm = 0.5;
    private const double WidthToleranceMm = 0.01;
    private const double MmInPoint = 25.4 / 72;
    private const int PartsOfCurve = 16;

    private readonly ImmutableArray<ImmutableArray<Point>>.Builder _found = ImmutableArray.CreateBuilder<ImmutableArray<Point>>();
    private readonly Stack<State> _saved = new();
    private readonly List<List<Point>> _path = [];
    private State _state = new(Affine.None, 1, IsDashed: false);

    /// <summary>What was found.</summary>
    public ImmutableArray<ImmutableArray<Point>> CutLines => _found.ToImmutable();

    /// <summary>Follows all operators of a page.</summary>
    public void Run(CSequence content)
    {
        foreach (var operation in content.OfType<COperator>())
        {
            var numbers = operation.Operands.Select(Number).ToArray();
            if (!Follow(operation, numbers))
            {
                Draw(operation.Name, numbers);
            }
        }
    }

    /// <summary>The operators of the graphics state.</summary>
    private bool Follow(COperator operation, double[] numbers)
    {
        switch (operation.Name)
        {
            case "q":
                _saved.Push(_state);
                return true;
            case "Q":
                _state = _saved.Pop();
                return true;
            case "cm":
                _state = _state with { Matrix = Affine.Of(numbers).Then(_state.Matrix) };
                return true;
            case "w":
                _state = _state with { Width = numbers[0] };
                return true;
            case "gs":
                _state = _state with { Width = lineWidthOf(((CName)operation.Operands[0]).Name) ?? _state.Width };
                return true;
            case "d":
                _state = _state with { IsDashed = operation.Operands[0] is CArray { Count: > 0 } };
                return true;
            default:
                return false;
        }
    }

    private void Draw(string name, double[] numbers)
    {
        switch (name)
        {
            case "m":
                _path.Add([At(numbers, 0)]);
                break;
            case "l":
                _path[^1].Add(At(numbers, 0));
                break;
            case "c":
                AddCurve(_path[^1][^1], At(numbers, 0), At(numbers, 2), At(numbers, 4));
                break;
            case "re":
                AddBox(numbers);
                break;
            case "h":
                _path[^1].Add(_path[^1][0]);
                break;
            case "s":
                _path[^1].Add(_path[^1][0]);
                Stroke();
                break;
            case "S" or "B" or "b":
                Stroke();
                break;
            case "n" or "f" or "F" or "f*":
                _path.Clear();
                break;
        }
    }

    private void Stroke()
    {
        var widthMm = _state.Width * _state.Matrix.Scale * MmInPoint;
        if (!_state.IsDashed && Math.Abs(widthMm - CutWidthMm) < WidthToleranceMm)
        {
            _found.AddRange(_path.Where(line => line.Count > 3 && line[0] == line[^1]).Select(line => line.ToImmutableArray()));
        }

        _path.Clear();
    }

    private void AddBox(double[] numbers)
    {
        var (x, y, width, height) = (numbers[0], numbers[1], numbers[2], numbers[3]);
        _path.Add([Of(x, y), Of(x + width, y), Of(x + width, y + height), Of(x, y + height), Of(x, y)]);
    }

    private void AddCurve(Point from, Point first, Point second, Point to)
    {
        for (var i = 1; i <= PartsOfCurve; i++)
        {
            var part = (double)i / PartsOfCurve;
            var (one, middle, other) = (from.Toward(first, part), first.Toward(second, part), second.Toward(to, part));
            _path[^1].Add(one.Toward(middle, part).Toward(middle.Toward(other, part), part));
        }
    }

    private Point At(double[] numbers, int index) => Of(numbers[index], numbers[index + 1]);

    private Point Of(double x, double y) => _state.Matrix.Of(new(x * MmInPoint, y * MmInPoint));

    private static double Number(CObject operand) => operand switch
    {
        CInteger whole => whole.Value,
        CReal real => real.Value,
        _ => 0,
    };

    private sealed record State(Affine Matrix, double Width, bool IsDashed);

    /// <summary>A matrix as "cm" takes it; its last two numbers already in millimetres.</summary>
    private sealed record Affine(double A, double B, double C, double D, double EMm, double FMm)
    {
        public static Affine None { get; } = new(1, 0, 0, 1, 0, 0);

        /// <summary>By how much it enlarges a line's width, for matrices that enlarge evenly.</summary>
        public double Scale => Math.Sqrt(Math.Abs((A * D) - (B * C)));

        public static Affine Of(double[] numbers) =>
            new(numbers[0], numbers[1], numbers[2], numbers[3], numbers[4] * MmInPoint, numbers[5] * MmInPoint);

        public Point Of(Point point) => new((A * point.X) + (C * point.Y) + EMm, (B * point.X) + (D * point.Y) + FMm);

        public Affine Then(Affine outer)
        {
            var origin = outer.Of(new Point(EMm, FMm));
            return new(
                (A * outer.A) + (B * outer.C), (A * outer.B) + (B * outer.D), (C * outer.A) + (D * outer.C), (C * outer.B) + (D * outer.D), origin.X, origin.Y);
        }
    }
}
