using System.Collections.Immutable;
using CanvasCut.Design;
using UnitsNet;

namespace CanvasCut.Patterns;

/// <summary>The zipper for one edge.</summary>
/// <param name="Kind">Separating or continuous.</param>
/// <param name="Run">From end to end as sewn.</param>
/// <param name="Setback">From the carrier's finished corner to the zipper's end; where it starts, <see cref="StartSetback"/>.</param>
/// <param name="Buy">The length on sale, or the length to cut from the roll.</param>
/// <param name="WantedSetback">The setback the job asks for; smaller than <paramref name="Setback"/> when no length on sale is long enough.</param>
/// <remarks>
/// Separating: the shortest length on sale that is at least the run, trimmed at the stop end; when there is none, the
/// longest that is shorter, with the setback it forces. Continuous: the run and a tail at each end.
/// </remarks>
public sealed record ZipperChoice(ZipperKind Kind, Length Run, Length Setback, Length Buy, Length WantedSetback)
{
    /// <summary>What is left at each end of a continuous zipper to fold under; common practice, no source.</summary>
    public static readonly Length Tail = Length.FromMillimeters(25);

    /// <summary>Between the ticks that show both halves where they belong; common practice, no source.</summary>
    public static readonly Length TickSpacing = Length.FromMillimeters(200);

    /// <summary>From the carrier's finished corner to where the zipper starts: pin and box, or where the slider takes both halves up.</summary>
    public Length StartSetback { get; init; } = Setback;

    /// <summary>What is cut off at the stop end.</summary>
    public Length Trim => Kind == ZipperKind.Separating ? Buy - Run : Length.Zero;

    /// <summary>Whether no length on sale reaches as far as the job asks.</summary>
    public bool IsShort => (Setback - WantedSetback).Millimeters > 1e-6;

    /// <summary>Ticks from the middle of the run, port negative, the same on both halves.</summary>
    public ImmutableArray<Length> Ticks
    {
        get
        {
            var each = (int)Math.Floor((Run.Millimeters / 2 / TickSpacing.Millimeters) - 1e-9);
            return [.. Enumerable.Range(-each, (2 * each) + 1).Select(i => TickSpacing * i)];
        }
    }

    /// <summary>The zipper for an edge of the carrier.</summary>
    /// <param name="edge">The finished edge.</param>
    /// <param name="spec">The zippers wanted.</param>
    /// <param name="start">From the corner to where it starts; as at the other end when left out.</param>
    /// <exception cref="ArgumentException">The edge is too short for its setbacks, or nothing is on sale.</exception>
    public static ZipperChoice For(Length edge, ZipperSpec spec, Length? start = null)
    {
        var begin = start ?? spec.Setback;
        var run = edge - spec.Setback - begin;
        if (run.Millimeters <= 0)
        {
            throw new ArgumentException("The edge is too short for its setbacks.", nameof(edge));
        }

        return spec.Kind == ZipperKind.Continuous
            ? new(spec.Kind, run, spec.Setback, run + (Tail * 2), spec.Setback) { StartSetback = begin }
            : FromStock(run, spec, begin);
    }

    private static ZipperChoice FromStock(Length run, ZipperSpec spec, Length begin)
    {
        var longEnough = spec.Stock.Where(length => length.Millimeters >= run.Millimeters - 1e-9).ToList();
        if (longEnough.Count > 0)
        {
            return new(spec.Kind, run, spec.Setback, longEnough.MinBy(length => length.Millimeters), spec.Setback) { StartSetback = begin };
        }

        var longest = spec.Stock.Length > 0
            ? spec.Stock.MaxBy(length => length.Millimeters)
            : throw new ArgumentException("Nothing is on sale.", nameof(spec));
        var missing = (run - longest) / 2;
        return new(spec.Kind, longest, spec.Setback + missing, longest, spec.Setback) { StartSetback = begin + missing };
    }
}
