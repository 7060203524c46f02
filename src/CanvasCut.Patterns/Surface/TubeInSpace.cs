using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Geometry;
using UnitsNet;

namespace CanvasCut.Patterns;

/// <summary>A tube under the cloth, bent as the cloth over it.</summary>
public sealed class TubeInSpace
{
    private const int Sides = 16;
    private const int EndSides = 32;

    private readonly double _radiusMm;
    private readonly ImmutableArray<TubeSection> _sections;

    internal TubeInSpace(TopSurface surface, Bow bow, ImmutableArray<double> offsets)
    {
        _radiusMm = bow.Diameter.Millimeters / 2;
        _sections = [.. offsets.Select(offset => Section(surface, new(bow.Station, Length.FromMillimeters(offset))))];
    }

    /// <summary>The two lines that bound the tube as the viewer sees it.</summary>
    public ImmutableArray<ImmutableArray<SpacePoint>> Edges => [Edge(1), Edge(-1)];

    /// <summary>The circles at the port and the starboard end, each closed by its first place.</summary>
    public ImmutableArray<ImmutableArray<SpacePoint>> Ends =>
        [[.. _sections[0].Ring(_radiusMm, EndSides)], [.. _sections[^1].Ring(_radiusMm, EndSides)]];

    /// <summary>The middle of the starboard end.</summary>
    public SpacePoint StarboardEnd => _sections[^1].Middle;

    internal IEnumerable<Facet> Facets()
    {
        var rings = _sections.Select(section => section.Ring(_radiusMm, Sides).ToList()).ToList();
        return rings.Zip(rings.Skip(1)).SelectMany(pair => Facet.Between(pair.First, pair.Second));
    }

    private ImmutableArray<SpacePoint> Edge(int hand) =>
        [.. _sections.Select(section => section.Middle + (section.Along.Cross(Isometric.TowardViewer).Unit() * (hand * _radiusMm)))];

    private TubeSection Section(TopSurface surface, TopPlace place)
    {
        var (sine, cosine) = Math.SinCos(surface.SlopeAt(place).Athwart.Radians);
        var up = new SpaceStep(sine, 0, cosine);
        return new(surface.PointAt(place) + (up * -_radiusMm), new(cosine, 0, -sine), up);
    }
}

/// <summary>A cut square through a tube.</summary>
/// <param name="Middle">On its axis.</param>
/// <param name="Along">To starboard along its axis, of length 1.</param>
/// <param name="Up">To the cloth, of length 1.</param>
internal readonly record struct TubeSection(SpacePoint Middle, SpaceStep Along, SpaceStep Up)
{
    /// <summary>Places round the tube, the first repeated at the end.</summary>
    public IEnumerable<SpacePoint> Ring(double radiusMm, int sides)
    {
        var (middle, up, aside) = (Middle, Up, Along.Cross(Up));
        return Enumerable.Range(0, sides + 1).Select(i =>
        {
            var (sine, cosine) = Math.SinCos(2 * Math.PI * (i % sides) / sides);
            return middle + (up * (radiusMm * cosine)) + (aside * (radiusMm * sine));
        });
    }
}
