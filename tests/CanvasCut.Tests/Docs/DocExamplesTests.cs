using System.Globalization;
using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Patterns;
using CanvasCut.Placing;
using CanvasCut.Tests.Patterns;
using UnitsNet;

namespace CanvasCut.Tests.Docs;

/// <summary>The worked examples of docs/how-patterns-are-made.md, written by hand there, against the program.</summary>
public sealed class DocExamplesTests
{
    private static readonly string Text = Repository.Read("docs/how-patterns-are-made.md");
    private static readonly CarrierJob Job = SampleJobs.Plain;
    private static readonly FitChoice Fit = FitChoice.For(Job);
    private static readonly PatternSet Patterns = PatternSet.Of(Job, Fit.Mounted);

    [Fact]
    public void The_carriers_example_is_right() =>
        AssertTold("| cut | {0} ", Patterns.WholeCarrier.CutSize.Athwart, "| {0} (25 5/8 in) |", Patterns.WholeCarrier.CutSize.ForeAft);

    [Fact]
    public void The_zippers_example_is_right()
    {
        var choice = Fit.Mounted.Fastened.Zippers[0].Choice;

        AssertTold("1100 − 50.8 = {0} (", choice.Run, "Trim {0}", choice.Trim);
        Assert.Equal([-400, -200, 0, 200, 400], choice.Ticks.Select(tick => tick.Millimeters));
        var stock = SampleJobs.Zipper with { Stock = [Length.FromInches(36)] };
        AssertTold("(1100 − 914.4)/2 = {0} (", ZipperChoice.For(SampleJobs.Mm(1100), stock).Setback, "= {0} (1 1/8 in)", stock.OuterTapeEdge);
    }

    [Fact]
    public void The_pockets_example_is_right()
    {
        var pocket = Fit.Mounted.Fastened.Pockets[0];
        var piece = Patterns.TopPieces.Single(each => each.Key.Id == "pocket-forward-port");

        AssertTold("+ 53.25 = {0} (", pocket.Leg, "It covers {0} (", pocket.Covers);
        AssertTold("+ 12.7 = {0} (4 11/16 in)", piece.CutSize.Athwart, "at most {0} (1 5/16 in)", pocket.Leg / (2 * Math.Sqrt(2)));
    }

    [Fact]
    public void The_weather_strips_example_is_right()
    {
        var strip = Patterns.TopPieces.Single(piece => piece.Key.Id == "weather-strip-forward");

        AssertTold("+ 15.9 = {0} (", strip.FinishedSize.ForeAft, "+ 50.8 = {0} (", strip.FinishedSize.Athwart);
        AssertTold("Cut {0} ×", strip.CutSize.ForeAft, "× {0} (4 5/16", strip.CutSize.Athwart);
    }

    [Fact]
    public void The_arcs_example_is_right()
    {
        var arc = CircularArc.FromChordAndRise(1750, 90);

        AssertTold("+ 45 = {0}.", SampleJobs.Mm(arc.RadiusMm), "g = {0},", SampleJobs.Mm(arc.GirthMm));
    }

    [Fact]
    public void The_best_places_example_is_right()
    {
        var best = Fit.Options[0];

        AssertTold("wins: station {0},", best.Place.Station, "offset {0}.", best.Place.Offset);
        AssertTold("So {0} is the smallest spare", best.Spare, "spare {0}.", best.Spare);
    }

    [Fact]
    public void The_marks_example_is_right()
    {
        var corner = TopMarks.Of(Fit.Mounted)[0].Place;

        AssertTold("− 287.7 = {0} (", corner.Station, "offset {0} (21 5/8 in) port", -corner.Offset);
        AssertTold("= {0} (48 7/8 in)", TopMarks.Diagonals(Fit.Mounted)[0].Distance, "offset {0} (", -corner.Offset);
    }

    private static void AssertTold(string first, Length firstLength, string second, Length secondLength)
    {
        Assert.Contains(Told(first, firstLength), Text, StringComparison.Ordinal);
        Assert.Contains(Told(second, secondLength), Text, StringComparison.Ordinal);
    }

    /// <summary>To a hundredth where the length has one, otherwise to a tenth, as the document writes it.</summary>
    private static string Told(string text, Length length)
    {
        var hundredths = Math.Round(length.Millimeters, 2);
        var isExact = Math.Abs(length.Millimeters - hundredths) < 1e-6;
        var number = isExact ? hundredths : Math.Round(length.Millimeters, 1);
        var written = number.ToString("0.##", CultureInfo.InvariantCulture);
        return string.Format(CultureInfo.InvariantCulture, text, written);
    }
}
