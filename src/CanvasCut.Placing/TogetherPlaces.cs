using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Patterns;
using UnitsNet;

namespace CanvasCut.Placing;

/// <summary>Places several mountings at once, so that the smallest of all their spare distances is as large as can be.</summary>
/// <remarks>
/// Every distance is linear in the places, or the best of a few that are; <see cref="MaxMinSearch"/> finds the best places and proves them. Twins
/// have one place between them and lie symmetrically by their nature. Places that the file gives are kept. Each mounting then takes, on the
/// usual grid, the best place that the others leave it, where that costs the smallest spare no more than half a step of the grid.
/// </remarks>
internal static class TogetherPlaces
{
    /// <summary>What half a step of the grid can cost.</summary>
    private const double HalfStepMm = FitChoice.GridMm / 2;

    /// <summary>Each places itself anew among the others so often.</summary>
    private const int Rounds = 3;

    public static ImmutableArray<PlacedMounting> Of(TopJob top, CancellationToken cancel)
    {
        var trials = WaysOf(top).Select(ways => new Trial(top, ways)).ToList();
        var mostBend = trials.Max(trial => trial.MayBend);
        var best = trials.Where(trial => trial.MayBend == mostBend)
            .Select(trial => (Trial: trial, Found: trial.Search(cancel)))
            .Aggregate((one, next) => next.Found.Spare > one.Found.Spare + 1e-6 ? next : one);
        return best.Trial.Placed(best.Trial.Settled(best.Found));
    }

    /// <summary>Every way in which the panels may lie, those athwart first.</summary>
    private static IEnumerable<ImmutableArray<LongSide>> WaysOf(TopJob top)
    {
        IEnumerable<ImmutableArray<LongSide>> ways = [[]];
        foreach (var job in top.Mountings)
        {
            LongSide[] own = job.Panel.LongSide is { } given ? [given] : [LongSide.Athwart, LongSide.ForeAft];
            ways = [.. ways.SelectMany(_ => own, (before, way) => before.Add(way))];
        }

        return ways;
    }

    /// <summary>One mounting, or the mirror image of one, with its middle at the origin.</summary>
    private sealed record Member(CarrierJob Job, MountedShape Shape, PlaceUnknowns At, int Unit)
    {
        public ImmutableArray<DistanceRule> Rules { get; } = Clearances.RulesOf(Job, Shape);

        public Step StepTo(ReadOnlySpan<double> place) => new(At.IsMirrored ? -place[At.X] : place[At.X], place[At.Y]);
    }

    /// <summary>All mountings, each lying one way.</summary>
    private sealed class Trial
    {
        private readonly TopJob _top;
        private readonly ImmutableArray<Member> _members;
        private readonly double _betweenMm;
        private readonly Box _whole;

        public Trial(TopJob top, ImmutableArray<LongSide> ways)
        {
            (_top, _whole, _betweenMm) = (top, Plan.Of(top.First.Top), top.First.Limits.BetweenCarriers.Millimeters);
            _members = [.. top.Mountings.Index().SelectMany(each => MembersOf(each.Item, each.Index, ways[each.Index]))];
            MayBend = top.Mountings.Index().Count(each => PanelBends.MayAcross(each.Item, ways[each.Index]));
        }

        /// <summary>How many panels may be curved the way the top is.</summary>
        public int MayBend { get; }

        public MaxMinPlace Search(CancellationToken cancel)
        {
            var bounds = _top.Mountings.SelectMany(BoundsOf).ToArray();
            var choices = _members.SelectMany(member => member.Rules.SelectMany(rule => rule.Choices(member.At)))
                .Concat(Pairs().Select(pair => BetweenCarriers.Choice((pair.One.Shape.Extent, pair.One.At), (pair.Other.Shape.Extent, pair.Other.At), _betweenMm)))
                .ToList();
            return MaxMinSearch.Best(bounds, choices, cancel: cancel);
        }

        /// <summary>The places rounded to the grid, each mounting at the best that the others leave it.</summary>
        public double[] Settled(MaxMinPlace found)
        {
            double[] place = [.. found.Place];
            for (var round = 0; round < Rounds; round++)
            {
                foreach (var unit in Enumerable.Range(0, _top.Mountings.Length).Where(unit => _top.Mountings[unit].Carrier.Position is null))
                {
                    double[] tried = [.. place];
                    (tried[2 * unit], tried[(2 * unit) + 1]) = BestFor(unit, place);
                    var spare = SpareAt(tried);
                    place = spare >= found.Spare - HalfStepMm && (spare >= 0 || found.Spare < 0) ? tried : place;
                }
            }

            return place;
        }

        public ImmutableArray<PlacedMounting> Placed(double[] place) => [.. _members.Select(member => Placed(member, place))];

        private static PlacedMounting Placed(Member member, double[] place)
        {
            var mounted = member.Shape.MovedBy(member.StepTo(place));
            var way = mounted.Panel.LongSide;
            var spare = member.Rules.Min(rule => rule.SpareMm(member.StepTo(place)));
            var option = new FitOption(way, Plan.PlaceOf(mounted.CarrierBox.Center), Length.FromMillimeters(spare), PanelBends.MayAcross(member.Job, way));
            return new(member.Job, new(mounted, [option], member.Job.Carrier.Position is null));
        }

        private IEnumerable<Member> MembersOf(CarrierJob job, int unit, LongSide way)
        {
            yield return new(job, MountedShape.Of(job, way), new(2 * unit, (2 * unit) + 1, IsMirrored: false), unit);
            foreach (var twin in _top.Twins.Where(twin => twin.Of == job.Mounting))
            {
                var mirrored = job.Mirrored(way, twin.Name);
                yield return new(mirrored, MountedShape.Of(mirrored, way), new(2 * unit, (2 * unit) + 1, IsMirrored: true), unit);
            }
        }

        private IEnumerable<(double Low, double High)> BoundsOf(CarrierJob job)
        {
            if (job.Carrier.Position is { } given)
            {
                var at = Plan.Of(given);
                return [(at.X, at.X), (at.Y, at.Y)];
            }

            return [Across(job), (_whole.Bottom, _whole.Top)];
        }

        /// <summary>What has a twin lies to port, and the twin to starboard, unless its own name says the other side.</summary>
        private (double Low, double High) Across(CarrierJob job) =>
            !_top.Twins.Any(twin => twin.Of == job.Mounting) ? (_whole.Left, _whole.Right)
            : job.Mounting == new MountingName(Words.Id(Side.Starboard)) ? (0, _whole.Right)
            : (_whole.Left, 0);

        private IEnumerable<(Member One, Member Other)> Pairs() =>
            from one in _members.Index()
            from other in _members.Skip(one.Index + 1)
            select (one.Item, other);

        private double SpareAt(double[] place) => Math.Min(
            _members.Min(member => member.Rules.Min(rule => rule.SpareMm(member.StepTo(place)))),
            Pairs().Select(pair => BetweenMm(pair.One, pair.Other, place)).DefaultIfEmpty(double.PositiveInfinity).Min() - _betweenMm);

        private static double BetweenMm(Member one, Member other, double[] place) =>
            one.Shape.Extent.MovedBy(one.StepTo(place)).DistanceMm(other.Shape.Extent.MovedBy(other.StepTo(place)));

        private (double X, double Y) BestFor(int unit, double[] place)
        {
            var own = _members.First(member => member.Unit == unit);
            var others = _members.Where(member => member.Unit != unit).Select(member => Between(own, new BlockObstacle(member.Shape.Extent.MovedBy(member.StepTo(place)))));
            var at = Plan.Of(BestPlace.Of(_whole, [.. own.Rules, .. others, .. FromTwin(own, place)]));
            return (at.X, at.Y);
        }

        /// <summary>A twin lies as far to the other side of the centreline, of which half the strip must then be clear.</summary>
        private IEnumerable<DistanceRule> FromTwin(Member own, double[] place)
        {
            if (_members.Count(member => member.Unit == own.Unit) < 2)
            {
                return [];
            }

            var side = place[own.At.X] < 0 ? new HalfPlane(new(0, 0), new(0, 1)) : new HalfPlane(new(0, 0), new(0, -1));
            return [Between(own, new RimObstacle(side)) with { NeededMm = _betweenMm / 2 }];
        }

        private DistanceRule Between(Member own, Obstacle from) =>
            new(ClearanceKind.Between, string.Empty, [own.Shape.Extent], from, _betweenMm) { To = new(PartKind.Panel) };
    }
}
