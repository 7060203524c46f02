using System.Collections.Immutable;

namespace CanvasCut.Geometry;

/// <summary>Triangles that hide what lies behind them in the isometric view.</summary>
public sealed class HidingFacets
{
    /// <summary>
    /// A place is hidden only by what is nearer by more than this, so that what lies on a body is not hidden by it. It
    /// covers the distance between a curved body and its triangles; what is hidden by less shows.
    /// </summary>
    private const double TouchMm = 3;

    private const double CellMm = 40;
    private const int Halvings = 14;

    private readonly Dictionary<(int Column, int Row), List<DrawnFacet>> _cells = [];

    /// <summary>Sorts the triangles by where they are drawn.</summary>
    public HidingFacets(IEnumerable<Facet> facets)
    {
        foreach (var facet in facets.Select(facet => new DrawnFacet(facet)))
        {
            var box = Box.Holding([facet.First, facet.Second, facet.Third]);
            var (from, to) = (CellOf(box.LowerLeft), CellOf(new(box.Right, box.Top)));
            for (var column = from.Column; column <= to.Column; column++)
            {
                for (var row = from.Row; row <= to.Row; row++)
                {
                    In((column, row)).Add(facet);
                }
            }
        }
    }

    /// <summary>Whether a triangle lies between the viewer and a place.</summary>
    public bool Hides(SpacePoint place)
    {
        var (drawn, nearness) = (Isometric.Of(place), Isometric.NearnessMm(place) + TouchMm);
        return _cells.TryGetValue(CellOf(drawn), out var facets) && facets.Exists(facet => facet.NearnessAt(drawn) > nearness);
    }

    /// <summary>A line in pieces, each of which is either seen or hidden; each ends where the next begins.</summary>
    /// <param name="line">At least two places.</param>
    public ImmutableArray<SightRun> Runs(IReadOnlyList<SpacePoint> line)
    {
        ArgumentNullException.ThrowIfNull(line);
        var runs = ImmutableArray.CreateBuilder<SightRun>();
        var points = ImmutableArray.CreateBuilder<SpacePoint>();
        points.Add(line[0]);
        var isHidden = Hides(line[0]);
        foreach (var (from, to) in line.Zip(line.Skip(1)))
        {
            if (Hides(to) != isHidden)
            {
                points.Add(Change(from, to, isHidden));
                runs.Add(new(isHidden, points.ToImmutable()));
                points.Clear();
                points.Add(runs[^1].Points[^1]);
                isHidden = !isHidden;
            }

            points.Add(to);
        }

        runs.Add(new(isHidden, points.ToImmutable()));
        return runs.ToImmutable();
    }

    private SpacePoint Change(SpacePoint from, SpacePoint to, bool isFirstHidden)
    {
        for (var i = 0; i < Halvings; i++)
        {
            var middle = from.Toward(to, 0.5);
            (from, to) = Hides(middle) == isFirstHidden ? (middle, to) : (from, middle);
        }

        return from.Toward(to, 0.5);
    }

    private List<DrawnFacet> In((int Column, int Row) cell)
    {
        if (!_cells.TryGetValue(cell, out var facets))
        {
            _cells[cell] = facets = [];
        }

        return facets;
    }

    private static (int Column, int Row) CellOf(Point drawn) => ((int)Math.Floor(drawn.X / CellMm), (int)Math.Floor(drawn.Y / CellMm));

    /// <summary>A triangle as it is drawn, with how near its corners are.</summary>
    private sealed class DrawnFacet(Facet facet)
    {
        private readonly (double First, double Second, double Third) _near =
            (Isometric.NearnessMm(facet.First), Isometric.NearnessMm(facet.Second), Isometric.NearnessMm(facet.Third));

        public Point First { get; } = Isometric.Of(facet.First);

        public Point Second { get; } = Isometric.Of(facet.Second);

        public Point Third { get; } = Isometric.Of(facet.Third);

        /// <summary>How near the triangle is where a point of the drawing shows it; null where it does not, or edge on.</summary>
        public double? NearnessAt(Point at)
        {
            var whole = (Second - First).Cross(Third - First);
            if (Math.Abs(whole) < 1e-9)
            {
                return null;
            }

            var second = (at - First).Cross(Third - First) / whole;
            var third = (Second - First).Cross(at - First) / whole;
            var first = 1 - second - third;
            return Math.Min(first, Math.Min(second, third)) < -1e-9
                ? null
                : (first * _near.First) + (second * _near.Second) + (third * _near.Third);
        }
    }
}

/// <summary>A piece of a line.</summary>
/// <param name="IsHidden">Whether something lies before it.</param>
/// <param name="Points">At least two places.</param>
public readonly record struct SightRun(bool IsHidden, ImmutableArray<SpacePoint> Points);
