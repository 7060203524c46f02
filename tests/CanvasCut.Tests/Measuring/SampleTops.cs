using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Geometry;
using UnitsNet;

namespace CanvasCut.Tests.Measuring;

/// <summary>Tops of known shape, and what a perfect tape would read on them, written apart from the program's own model.</summary>
internal static class SampleTops
{
    public static readonly (double ChordMm, double CrownMm, double StationMm, double HeightMm, double AskewMm)[] ThreeBows =
        [(1800, 80, 0, 0, 0), (1840, 95, 900, 120, 6), (1790, 85, 1850, 20, -4)];

    public static readonly (double ChordMm, double CrownMm, double StationMm, double HeightMm, double AskewMm)[] TwoBows =
        [(1500, 60, 0, 0, 0), (1520, 70, 1100, 0, 5)];

    public static readonly (double ChordMm, double CrownMm, double StationMm, double HeightMm, double AskewMm)[] FourBows =
        [(1900, 90, 0, 0, 0), (2000, 110, 800, 150, 3), (2000, 115, 1700, 160, -5), (1880, 95, 2600, 10, 4)];

    /// <summary>The top with the readings that a disturbance makes of the true measures.</summary>
    /// <param name="bows">Its shape; a bow askew has its starboard end that much further aft and its middle as much to starboard.</param>
    /// <param name="tapeMm">The tape's standard deviation that the program is told.</param>
    /// <param name="disturb">Gets the number of the reading and the true value in millimetres.</param>
    public static MeasuredTop Of((double ChordMm, double CrownMm, double StationMm, double HeightMm, double AskewMm)[] bows, double tapeMm, Func<int, double, double> disturb)
    {
        var count = 0;
        var measures = True(bows).Select(each => new TopMeasure(
            each.Kind,
            each.Bow,
            [.. Enumerable.Range(0, each.Kind == MeasureKind.Crown ? 3 : 2).Select(_ => Length.FromMillimeters(disturb(count++, each.Mm)))]));
        return new("sample", Length.FromMillimeters(tapeMm), [.. bows.Select((bow, i) => new MeasuredBow($"bow {i + 1}", Length.FromMillimeters(bow.HeightMm)))], [.. measures]);
    }

    /// <summary>Every measure of the sheet, true.</summary>
    public static ImmutableArray<(MeasureKind Kind, int Bow, double Mm)> True((double ChordMm, double CrownMm, double StationMm, double HeightMm, double AskewMm)[] bows)
    {
        var ends = bows.Select(bow => (Port: End(bow, -1), Starboard: End(bow, 1))).ToList();
        var (port, starboard, last) = (0.0, 0.0, bows.Length - 1);
        var all = ImmutableArray.CreateBuilder<(MeasureKind, int, double)>();
        for (var i = 0; i < bows.Length; i++)
        {
            all.Add((MeasureKind.Chord, i, Apart(ends[i].Port, ends[i].Starboard)));
            all.Add((MeasureKind.Girth, i, CircularArc.FromChordAndRise(Apart(ends[i].Port, ends[i].Starboard), bows[i].CrownMm).GirthMm));
            all.Add((MeasureKind.Crown, i, bows[i].CrownMm));
            if (i > 0)
            {
                all.Add((MeasureKind.Port, i, port += Apart(ends[i].Port, ends[i - 1].Port)));
                all.Add((MeasureKind.Starboard, i, starboard += Apart(ends[i].Starboard, ends[i - 1].Starboard)));
                all.Add((MeasureKind.DiagonalFromPort, i, Apart(ends[i - 1].Port, ends[i].Starboard)));
                all.Add((MeasureKind.DiagonalFromStarboard, i, Apart(ends[i - 1].Starboard, ends[i].Port)));
            }
        }

        all.Add((MeasureKind.OverallFromPort, last, Apart(ends[0].Port, ends[last].Starboard)));
        all.Add((MeasureKind.OverallFromStarboard, last, Apart(ends[0].Starboard, ends[last].Port)));
        return bows.Length > 2 ? all.ToImmutable() : [.. all.Take(all.Count - 2)];
    }

    private static (double X, double Y, double Z) End((double ChordMm, double CrownMm, double StationMm, double HeightMm, double AskewMm) bow, int side) =>
        (bow.AskewMm + (side * bow.ChordMm / 2), bow.StationMm + (side > 0 ? bow.AskewMm : 0), bow.HeightMm);

    private static double Apart((double X, double Y, double Z) one, (double X, double Y, double Z) other) =>
        Math.Sqrt(Math.Pow(one.X - other.X, 2) + Math.Pow(one.Y - other.Y, 2) + Math.Pow(one.Z - other.Z, 2));
}
