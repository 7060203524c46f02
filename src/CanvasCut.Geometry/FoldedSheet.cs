using System.Collections.Immutable;

namespace CanvasCut.Geometry;

/// <summary>A flat sheet after some folds: the plies that lie on each other, each a convex outline.</summary>
public sealed class FoldedSheet
{
    private FoldedSheet(ImmutableArray<Outline> plies) => Plies = plies;

    /// <summary>The plies, in no order.</summary>
    public ImmutableArray<Outline> Plies { get; }

    /// <summary>Sheets that lie on each other, not folded yet.</summary>
    /// <param name="plies">Convex outlines.</param>
    public static FoldedSheet Of(IEnumerable<Outline> plies) => new([.. plies]);

    /// <summary>The sheet with all that lies outside a line folded over it, through every ply.</summary>
    public FoldedSheet Folded(HalfPlane kept)
    {
        var flap = new HalfPlane(kept.On, -kept.Along);
        return new([.. Plies.SelectMany(ply => Present(kept.Cut(ply), flap.Cut(ply)?.Mapped(point => Mirrored(kept, point))))]);
    }

    /// <summary>The sheet after several folds, one after the other.</summary>
    public FoldedSheet Folded(IEnumerable<HalfPlane> folds) => folds.Aggregate(this, (sheet, fold) => sheet.Folded(fold));

    /// <summary>The same sheet elsewhere.</summary>
    public FoldedSheet MovedBy(Step step) => new([.. Plies.Select(ply => ply.MovedBy(step))]);

    /// <summary>How many plies lie at a point; on a ply's very edge it does not count.</summary>
    public int CountAt(Point point) => Plies.Count(ply => ply.InnerSides.All(side => side.InsideMm(point) > 0));

    private static IEnumerable<Outline> Present(Outline? one, Outline? other) => new[] { one, other }.OfType<Outline>();

    private static Point Mirrored(HalfPlane line, Point point) => point - (line.Along.Unit().Left * (2 * line.InsideMm(point)));
}
