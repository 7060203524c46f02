using System.Collections.Immutable;
using System.Globalization;
using CanvasCut.Geometry;

namespace CanvasCut.Tests.Export;

/// <summary>A line that a pen drew.</summary>
internal sealed record PenLine(int Pen, ImmutableArray<Point> Points);

/// <summary>A text that a pen wrote: its start, the size of a letter and its direction.</summary>
internal sealed record PenText(int Pen, string Text, Point At, (double WidthMm, double HeightMm) Letter, double TurnDegrees);

/// <summary>A plotter that understands IN, DT, SP, PU, PD, SI, DI and LB, as Hewlett-Packard's manuals describe them, and nothing else.</summary>
internal sealed class HpglReader
{
    private const double UnitMm = 0.025;

    private readonly List<PenLine> _lines = [];
    private readonly List<PenText> _texts = [];
    private int _pen;
    private Point _at;
    private bool _isDown;
    private (double WidthMm, double HeightMm) _letter;
    private double _turnDegrees;

    public HpglReader(string file)
    {
        var textEnd = '\u0003';
        for (var rest = file; rest.Length > 0;)
        {
            var order = rest[..2];
            var end = order == "LB" ? rest.IndexOf(textEnd, StringComparison.Ordinal) : rest.IndexOf(';', StringComparison.Ordinal);
            var given = rest[2..end];
            textEnd = order == "DT" ? given.Single() : textEnd;
            Obey(order, given);
            rest = rest[(end + 1)..].TrimStart(';', '\n');
        }
    }

    public IReadOnlyList<PenLine> Lines => _lines;

    public IReadOnlyList<PenText> Texts => _texts;

    public List<int> Pens { get; } = [];

    private void Obey(string order, string given)
    {
        switch (order)
        {
            case "IN" or "DT":
                break;
            case "SP":
                _pen = (int)Numbers(given).Single();
                Pens.Add(_pen);
                break;
            case "PU" or "PD":
                _isDown = order == "PD";
                Move([.. Numbers(given).Chunk(2).Select(pair => new Point(pair[0] * UnitMm, pair[1] * UnitMm))]);
                break;
            case "SI":
                _letter = (Numbers(given)[0] * 10, Numbers(given)[1] * 10);
                break;
            case "DI":
                _turnDegrees = Math.Atan2(Numbers(given)[1], Numbers(given)[0]) * 180 / Math.PI;
                break;
            case "LB":
                _texts.Add(new(_pen, given, _at, _letter, _turnDegrees));
                break;
            default:
                Assert.Fail($"The plotter does not know {order}.");
                break;
        }
    }

    private void Move(ImmutableArray<Point> points)
    {
        if (_isDown)
        {
            _lines.Add(new(_pen, [_at, .. points]));
        }

        _at = points.Length > 0 ? points[^1] : _at;
    }

    private static List<double> Numbers(string given) =>
        [.. given.Split(',', StringSplitOptions.RemoveEmptyEntries).Select(number => double.Parse(number, NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture))];
}
