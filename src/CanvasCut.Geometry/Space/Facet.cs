namespace CanvasCut.Geometry;

/// <summary>A flat triangle in space; which way round does not matter.</summary>
/// <param name="First">A corner.</param>
/// <param name="Second">Another.</param>
/// <param name="Third">The last.</param>
public readonly record struct Facet(SpacePoint First, SpacePoint Second, SpacePoint Third)
{
    /// <summary>The triangles between two rows of as many places, each next to its neighbours.</summary>
    public static IEnumerable<Facet> Between(IReadOnlyList<SpacePoint> row, IReadOnlyList<SpacePoint> next) =>
        Enumerable.Range(0, row.Count - 1).SelectMany(i => new Facet[]
        {
            new(row[i], row[i + 1], next[i]),
            new(next[i], row[i + 1], next[i + 1]),
        });
}
