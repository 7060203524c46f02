using System.Collections.Immutable;
using CanvasCut.Drawing;
using CanvasCut.Export.Common;
using CanvasCut.Geometry;

namespace CanvasCut.Export.Exchange;

/// <summary>Writes one piece as a block.</summary>
internal sealed class BlockWriter(DxfPairs pairs, PatternBlock block)
{
    private const int ReferencedBlock = 64;

    /// <summary>Points nearer than this may be written alike.</summary>
    private const double FinestMm = 0.01;

    private readonly ImmutableArray<(int Layer, BulgedLine Line)> _lines =
    [
        (ExchangeLayers.Boundary, LineOf(Stroke.Closed(LineRole.Cut, block.Boundary))),
        .. block.Lines.Select(line => (line.Role == LineRole.Stitch ? ExchangeLayers.StitchLines : ExchangeLayers.InternalLines, LineOf(line))),
    ];

    public void Write(string name, string size)
    {
        pairs.Text(0, "BLOCK").Text(8, "0").Text(2, $"{name}_{size}").Whole(70, ReferencedBlock).FlatPlace(10, new(0, 0));
        WriteTexts(name, size);
        foreach (var (layer, line) in _lines)
        {
            WriteLine(layer, line);
        }

        WritePoints(ExchangeLayers.TurnPoints, point => point.IsTurn);
        WritePoints(ExchangeLayers.CurvePoints, point => !point.IsTurn);
        WriteMarks();
        pairs.Text(0, "LINE").Whole(8, ExchangeLayers.Grain).FlatPlace(10, block.Grain.From).FlatPlace(11, block.Grain.To);

        // Curves are held as points so close that the twins need no more of them.
        foreach (var (layer, line) in _lines)
        {
            WriteLine(ExchangeLayers.TwinOf(layer), line);
        }

        pairs.Text(0, "ENDBLK").Text(8, "0");
    }

    private static BulgedLine LineOf(Stroke stroke)
    {
        var points = stroke.Points;
        return BulgedLine.Of([.. points.Where((point, i) => i == 0 || point.DistanceMm(points[i - 1]) >= FinestMm)], stroke.IsClosed);
    }

    private void WriteTexts(string name, string size)
    {
        string[] lines =
        [
            $"Piece Name: {name}",
            $"Size: {size}",
            FormattableString.Invariant($"Quantity: {block.Title.Quantity}"),
            $"Material: {block.Title.Material}",
            .. block.Title.Annotations.Select(text => $"Annotation: {text}"),
        ];
        new ExchangeText(pairs, ExchangeLayers.Boundary).Column(block.Boundary.Bounds.Center, lines);
    }

    private void WriteLine(int layer, BulgedLine line)
    {
        if (line.Points.Length == 2)
        {
            pairs.Text(0, "LINE").Whole(8, layer).FlatPlace(10, line.Points[0]).FlatPlace(11, line.Points[1]);
            return;
        }

        pairs.Text(0, "POLYLINE").Whole(8, layer).Whole(66, 1).Whole(70, line.IsClosed ? 1 : 0);
        foreach (var point in line.Points)
        {
            pairs.Text(0, "VERTEX").Whole(8, layer).FlatPlace(10, point);
        }

        pairs.Text(0, "SEQEND").Whole(8, layer);
    }

    private void WritePoints(int layer, Func<(Point At, bool IsTurn), bool> isOnIt)
    {
        foreach (var (at, _) in _lines.SelectMany(line => PointsOf(line.Line)).Where(isOnIt).Distinct())
        {
            pairs.Text(0, "POINT").Whole(8, layer).FlatPlace(10, at);
        }
    }

    /// <summary>The points of a line; those within an arc are points of a curve, all others turn.</summary>
    private static IEnumerable<(Point At, bool IsTurn)> PointsOf(BulgedLine line)
    {
        foreach (var run in line.Runs)
        {
            yield return (line.Points[run.Start], true);
            for (var i = 1; i < run.Edges; i++)
            {
                yield return (line.Points[run.Start + i], false);
            }
        }

        if (!line.IsClosed)
        {
            yield return (line.Points[^1], true);
        }
    }

    private void WriteMarks()
    {
        foreach (var notch in block.Marks.Notches)
        {
            // A width of zero makes it a slit; the depth stands where another point has its height.
            pairs.Text(0, "POINT").Whole(8, ExchangeLayers.Notches).FlatPlace(10, notch.At);
            pairs.Length(30, notch.DepthMm).Length(39, 0).Number(50, notch.AngleDegrees);
        }

        foreach (var hole in block.Marks.DrillHoles)
        {
            pairs.Text(0, "POINT").Whole(8, ExchangeLayers.DrillHoles).FlatPlace(10, hole);
        }

        var text = new ExchangeText(pairs, ExchangeLayers.Annotation);
        foreach (var words in block.Marks.Words)
        {
            text.Line(words.Text, Figures.StartOf(words), words.HeightMm, words.TurnDegrees);
        }
    }
}
