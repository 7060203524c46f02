using System.Collections.Immutable;
using CanvasCut.Design;
using UnitsNet;

namespace CanvasCut.Electrics;

/// <summary>One size of wire.</summary>
/// <param name="Family">Whose size it is.</param>
/// <param name="Name">As it is printed on the wire: 12, 1/0, 2.5.</param>
/// <param name="Area">The copper in it.</param>
/// <param name="ResistancePerKilometre">Its resistance at 20 C.</param>
public sealed record WireSize(WireFamily Family, string Name, Area Area, ElectricResistance ResistancePerKilometre)
{
    private const double SquareMillimetresPerCircularMil = Math.PI / 4 * 0.0254 * 0.0254;

    /// <summary>ohm times circular mils a foot, as ABYC E-11 has it, reprinted by the trade; annealed copper at 20 C has 10.371 (IEC 60028).</summary>
    private const double Trade = 10.75;
    private const double FeetInKilometre = 1000 / 0.3048;

    private static readonly string[] Gauges = ["18", "16", "14", "12", "10", "8", "6", "4", "2", "1", "1/0", "2/0", "3/0", "4/0"];

    /// <summary>Circular mils of SAE sizes, as the trade reprints them.</summary>
    private static readonly double[] SaeMils = [1537, 2336, 3702, 5833, 9343, 14810, 24538, 37360, 62450, 77790, 98980, 125100, 158600, 205500];

    /// <summary>Square millimetres, and ohms a kilometre at most at 20 C, tinned and plain: IEC 60228, class 5.</summary>
    private static readonly (string Name, double Area, double Tinned, double Plain)[] Metric =
    [
        ("0.75", 0.75, 26.7, 26.0), ("1", 1, 20.0, 19.5), ("1.5", 1.5, 13.7, 13.3), ("2.5", 2.5, 8.21, 7.98), ("4", 4, 5.09, 4.95), ("6", 6, 3.39, 3.30),
        ("10", 10, 1.95, 1.91), ("16", 16, 1.24, 1.21), ("25", 25, 0.795, 0.780), ("35", 35, 0.565, 0.554), ("50", 50, 0.393, 0.386),
    ];

    private static readonly ImmutableDictionary<WireFamily, ImmutableArray<WireSize>> Sizes = ImmutableDictionary.CreateRange(new Dictionary<WireFamily, ImmutableArray<WireSize>>
    {
        [WireFamily.Awg] = [.. Gauges.Select(name => OfMils(WireFamily.Awg, name, AwgMils(GaugeOf(name))))],
        [WireFamily.Sae] = [.. Gauges.Zip(SaeMils, (name, mils) => OfMils(WireFamily.Sae, name, mils))],
        [WireFamily.MetricTinned] = [.. Metric.Select(size => OfMetric(WireFamily.MetricTinned, size.Name, size.Area, size.Tinned))],
        [WireFamily.MetricPlain] = [.. Metric.Select(size => OfMetric(WireFamily.MetricPlain, size.Name, size.Area, size.Plain))],
    });

    /// <summary>The copper in circular mils.</summary>
    internal double CircularMils => Area.SquareMillimeters / SquareMillimetresPerCircularMil;

    /// <summary>The sizes of a family, thinnest first.</summary>
    public static ImmutableArray<WireSize> Of(WireFamily family) => Sizes[family];

    /// <summary>The size of a family with that name.</summary>
    /// <exception cref="InvalidOperationException">There is none.</exception>
    public static WireSize Of(WireFamily family, string name) => Sizes[family].Single(size => size.Name == name);

    /// <summary>The next thicker size of the family; null behind the thickest.</summary>
    public WireSize? NextThicker => Of(Family).FirstOrDefault(size => size.Area > Area);

    private static WireSize OfMils(WireFamily family, string name, double mils) => new(
        family, name, Area.FromSquareMillimeters(mils * SquareMillimetresPerCircularMil), ElectricResistance.FromOhms(Trade / mils * FeetInKilometre));

    private static WireSize OfMetric(WireFamily family, string name, double area, double ohms) =>
        new(family, name, Area.FromSquareMillimeters(area), ElectricResistance.FromOhms(ohms));

    /// <summary>1/0 is gauge 0, 2/0 is -1.</summary>
    private static int GaugeOf(string name) => name.EndsWith("/0", StringComparison.Ordinal) ? '1' - name[0] : int.Parse(name, System.Globalization.CultureInfo.InvariantCulture);

    /// <summary>ASTM B258: each 39 gauges the diameter changes 92 times, and gauge 36 is 5 mils.</summary>
    private static double AwgMils(int gauge) => Math.Pow(5 * Math.Pow(92, (36 - gauge) / 39.0), 2);
}
