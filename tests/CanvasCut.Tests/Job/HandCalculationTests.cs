using CanvasCut.Checks;
using CanvasCut.Design;
using CanvasCut.Patterns;

namespace CanvasCut.Tests.Job;

/// <summary>The examples against the hand calculations in their READMEs; every figure here stands there.</summary>
public sealed class HandCalculationTests
{
    private const double ReadmeMm = 0.06;

    [Theory]
    [InlineData("two-bow-small-top", "carrier", 1135.8, 595.8, 1212, 672)]
    [InlineData("two-bow-small-top", "weather-strip-forward", 1186.6, 72.15, 1237.4, 110.25)]
    [InlineData("three-bow-middle-tube", "carrier", 709.35, 1389.29, 785.55, 1465.49)]
    [InlineData("three-bow-middle-tube", "chafe-patch-bow-2", 705.8, 101.2, 731.2, 126.6)]
    [InlineData("three-bow-middle-tube", "cable-exit-patch", 90.2, 34.6, 115.6, 60)]
    [InlineData("inch-wide-panel", "carrier-width-1", 68.25 / 2 * 25.4, 28.75 * 25.4, 36.125 * 25.4, 31.75 * 25.4)]
    [InlineData("inch-wide-panel", "carrier-width-2", 68.25 / 2 * 25.4, 28.75 * 25.4, 36.625 * 25.4, 31.75 * 25.4)]
    [InlineData("inch-wide-panel", "weather-strip-forward-width-2", 70.25 / 2 * 25.4, 72.15, 37.125 * 25.4, 110.25)]
    [InlineData("snaps-and-lacing", "mount-flap-forward", 1100, 38.1, 1125.4, 101.6)]
    [InlineData("snaps-and-lacing", "mount-strip-forward", 1100, 25.4, 1125.4, 50.8)]
    [InlineData("snaps-and-lacing", "mount-strip-aft", 1100, 25.4, 1125.4, 76.2)]
    [InlineData("rod-and-held-sides", "mount-flap-forward", 930.8, 40.36, 956.2, 106.12)]
    [InlineData("rod-and-held-sides", "mount-strip-forward", 755.21, 40.36, 780.61, 106.12)]
    [InlineData("rod-and-held-sides", "mount-flap-port", 38.1, 370.8, 101.6, 396.2)]
    [InlineData("rod-and-held-sides", "mount-strip-starboard", 25.4, 370.8, 50.8, 396.2)]
    [InlineData("rod-and-held-sides", "weather-strip-forward", 1201.6, 82.515, 1252.4, 120.615)]
    [InlineData("snaps-and-lacing", "weather-strip-forward", 1201.6, 68.975, 1252.4, 107.075)]
    public void A_piece_has_the_size_worked_out_by_hand(string example, string id, double athwart, double foreAft, double cutAthwart, double cutForeAft)
    {
        var piece = ExampleTests.OutcomeOf(example).Content.Patterns.Pieces.Single(piece => piece.Key.Id == id);

        Assert.Equal(athwart, piece.FinishedSize.Athwart.Millimeters, ReadmeMm);
        Assert.Equal(foreAft, piece.FinishedSize.ForeAft.Millimeters, ReadmeMm);
        Assert.Equal(cutAthwart, piece.CutSize.Athwart.Millimeters, ReadmeMm);
        Assert.Equal(cutForeAft, piece.CutSize.ForeAft.Millimeters, ReadmeMm);
    }

    [Theory]
    [InlineData("two-bow-small-top", 1031.825, 1219.2, 40, 93.275)]
    [InlineData("three-bow-middle-tube", 588.145, 609.6, 53.68, 110.5)]
    [InlineData("inch-wide-panel", 1629.575, 72 * 25.4, 40, 93.275)]
    [InlineData("does-not-fit", 914.4, 914.4, 165.3, 190)]
    public void Zippers_and_pockets_are_as_worked_out_by_hand(string example, double run, double buy, double covers, double leg)
    {
        var fastened = ExampleTests.OutcomeOf(example).Content.Patterns.Mounted.Fastened;

        Assert.All(fastened.Zippers, zipper => Assert.Equal((run, buy), (zipper.Choice.Run.Millimeters, zipper.Choice.Buy.Millimeters), new WithinMm(ReadmeMm)));
        Assert.All(fastened.Pockets, pocket => Assert.Equal((covers, leg), (pocket.Covers.Millimeters, pocket.Leg.Millimeters), new WithinMm(ReadmeMm)));
    }

    /// <summary>The bond and the cable's hole of the built-in example.</summary>
    [Fact]
    public void The_strips_and_the_cables_hole_of_three_bows_are_as_worked_out_by_hand()
    {
        var (patterns, checks) = (ExampleTests.OutcomeOf("three-bow-middle-tube").Content.Patterns, ExampleTests.OutcomeOf("three-bow-middle-tube").Content.Checks);

        Assert.Equal(5531.0, patterns.Bond.TapeLength.Millimeters, ReadmeMm);
        Assert.Equal(7, Assert.Single(checks, check => check.Code == CheckCodes.CableClear).Measured.Value!.Value.Millimeters, ReadmeMm);
        Assert.DoesNotContain(checks, check => check.Code is CheckCodes.CableClear or CheckCodes.CableReach or CheckCodes.BondRows or CheckCodes.BondStep && check.Verdict != Verdict.Pass);
    }

    [Fact]
    public void Snaps_and_lacing_are_as_worked_out_by_hand()
    {
        var fastened = ExampleTests.OutcomeOf("snaps-and-lacing").Content.Patterns.Mounted.Fastened;
        var (snaps, lacing) = (fastened.Flaps[0].Fasteners!, fastened.Flaps[1].Fasteners!);

        Assert.Equal((10, 8), (snaps.Count, lacing.Count));
        Assert.Equal((99.64, 113.6), (snaps.Pitch.Millimeters, lacing.Pitch.Millimeters), new WithinMm(ReadmeMm));
        Assert.Equal((90.1, 140.9), (fastened.Pockets[0].Leg.Millimeters, fastened.Pockets[2].Leg.Millimeters), new WithinMm(ReadmeMm));
        Assert.Equal(1877.5, CanvasCut.Takeoff.MountOrder.LineOf(fastened.Flaps[1]).Millimeters, ReadmeMm);
        Assert.Equal(25, RemovalActions.Of(fastened));
    }

    [Fact]
    public void What_snaps_and_lacing_bear_is_as_worked_out_by_hand()
    {
        var patterns = ExampleTests.OutcomeOf("snaps-and-lacing").Content.Patterns;
        var hold = HoldDown.Of(patterns.Job, patterns.Mounted);
        WindHold Of(string subject) => hold.Holds.Single(part => part.Subject == subject);

        Assert.Equal(46.13, QuantityWords.Plain(Of("forward snaps").Load.Reading!.Value).Number, 0.01);
        Assert.Equal(57.66, QuantityWords.Plain(Of("aft lacing").Load.Reading!.Value).Number, 0.01);
        Assert.Equal((23.82, 27.1), (Math.Round(hold.OffAt.Knots, 2), Math.Round(Of("aft lacing").HoldsTo.Knots, 1)));
    }

    /// <summary>By hand: the load grows with the square of the wind, so the pocket holds to 31.28 kn times √(143.33 / 257.11).</summary>
    [Fact]
    public void A_pocket_that_gives_first_tells_the_wind_that_was_worked_out_by_hand()
    {
        var patterns = ExampleTests.OutcomeOf("does-not-fit").Content.Patterns;
        var hold = HoldDown.Of(patterns.Job, patterns.Mounted);

        double Load(string subject) => QuantityWords.Plain(hold.Holds.Single(part => part.Subject == subject).Load.Reading!.Value).Number;

        Assert.Equal(34.95, Load("forward zipper's end"), 0.01);
        Assert.Equal("each pocket beside a zipper that came open", hold.Weakest.Subject);
        Assert.Equal(257.1, Load(hold.Weakest.Subject), 0.1);
        Assert.Equal(23.35, hold.OffAt.Knots, 0.01);
    }

    [Fact]
    public void A_rod_and_held_sides_are_as_worked_out_by_hand()
    {
        var (patterns, checks) = (ExampleTests.OutcomeOf("rod-and-held-sides").Content.Patterns, ExampleTests.OutcomeOf("rod-and-held-sides").Content.Checks);
        var (fastened, hold) = (patterns.Mounted.Fastened, HoldDown.Of(patterns.Job, patterns.Mounted));
        double Load(string subject) => QuantityWords.Plain(hold.Holds.Single(part => part.Subject == subject).Load.Reading!.Value).Number;

        Assert.Equal((6, 5), (fastened.Flaps[0].Lugs!.OnCarrier, fastened.Flaps[0].Lugs!.OnTop));
        Assert.Equal((84.62, 78.27), (fastened.Flaps[0].Lugs!.Pitch.Millimeters, fastened.Flaps[0].Lugs!.Lug.Millimeters), new WithinMm(ReadmeMm));
        Assert.Equal((968.9, 51.29), (fastened.Flaps[0].Rod!.Value.WidthMm, fastened.Flaps[0].Band.Top - patterns.Mounted.CarrierBox.Top), new WithinMm(ReadmeMm));
        Assert.Equal((3, 83.8), (fastened.Flaps[1].Fasteners!.Count, fastened.Flaps[1].Fasteners!.Pitch.Millimeters), new WithinMm(ReadmeMm));
        Assert.Equal(15, RemovalActions.Of(fastened));
        Assert.Equal(57.53, Load("port snaps"), 0.01);
        Assert.Equal(921.6, Load("seam at the lugs of the forward rod sleeve"), 0.1);
        Assert.Equal(371.5, Load("aft zipper's chain"), 0.1);
        Assert.Equal(21.94, Load("aft zipper's end"), 0.01);
        Assert.Equal(116.01, Load("each pocket beside an edge that came open"), 0.01);
        Assert.Equal(31.62, hold.OffAt.Knots, 0.01);
        Assert.Equal(4345.6, checks.Single(check => check.Code == CheckCodes.MountRod).Measured.Value!.Value.Millimeters, ReadmeMm);
    }

    [Theory]
    [InlineData("two-bow-small-top", CheckCodes.TubePocket, "aft port pocket and bow 2", 130.1, 10)]
    [InlineData("two-bow-small-top", CheckCodes.BendAthwart, "arc across at bow 1", 3128.5, 1050)]
    [InlineData("two-bow-small-top", CheckCodes.BendAthwart, "arc across at bow 2", 3307.4, 1050)]
    [InlineData("three-bow-middle-tube", CheckCodes.Margin, "port edge of the top", 106.7, 30)]
    [InlineData("three-bow-middle-tube", CheckCodes.KeepOut, "backstay slot", 128, 50.8)]
    [InlineData("three-bow-middle-tube", CheckCodes.BendAthwart, "arc across at bow 2", 4362, 900)]
    [InlineData("inch-wide-panel", CheckCodes.ClothWidth, "carrier on the roll", 71.25 * 25.4, 59 * 25.4)]
    [InlineData("does-not-fit", CheckCodes.Margin, "starboard edge of the top", 19.6, 25)]
    [InlineData("does-not-fit", CheckCodes.BentSide, "panel and the starboard bend of the frame", 45, 90)]
    [InlineData("does-not-fit", CheckCodes.KeepOut, "mainsheet window", -107.7, 50)]
    [InlineData("does-not-fit", CheckCodes.TubeZipper, "forward zipper and bow 1", 6.2, 10)]
    [InlineData("does-not-fit", CheckCodes.TubeStrip, "forward weather strip's seam and bow 1", -9.1, 10)]
    [InlineData("does-not-fit", CheckCodes.TubeCells, "cells and bow 2", -296.5, 10)]
    [InlineData("does-not-fit", CheckCodes.BendAthwart, "arc across at bow 1", 1549.1, 1800)]
    [InlineData("does-not-fit", CheckCodes.BendAthwart, "arc across at bow 2", 1432.7, 1800)]
    [InlineData("does-not-fit", CheckCodes.PocketShade, "aft starboard pocket and cells", 165.3, 31.7)]
    [InlineData("does-not-fit", CheckCodes.PocketZipper, "aft starboard pocket and zipper's end", 56.7, 183.65)]
    [InlineData("does-not-fit", CheckCodes.StripShade, "forward weather strip and cells", 45, 20.7)]
    [InlineData("does-not-fit", CheckCodes.ZipperStock, "aft zipper's setback", 56.7, 25.4)]
    public void A_check_finds_what_was_worked_out_by_hand(string example, string code, string subject, double value, double limit)
    {
        var check = Assert.Single(ExampleTests.OutcomeOf(example).Content.Checks, check => check.Code == code && check.Subject == subject);

        Assert.Equal(value, check.Measured.Value!.Value.Millimeters, ReadmeMm);
        Assert.Equal(limit, check.Measured.Limit!.Value.Millimeters, ReadmeMm);
    }

    [Fact]
    public void The_carrier_lies_where_the_hand_calculation_shows()
    {
        Assert.Equal((560, 0), PlaceOf("two-bow-small-top"));
        Assert.Equal((975, -535), PlaceOf("three-bow-middle-tube"));
    }

    private static (double Station, double Offset) PlaceOf(string example)
    {
        var place = Plan.PlaceOf(ExampleTests.OutcomeOf(example).Content.Patterns.Mounted.CarrierBox.Center);
        return (Math.Round(place.Station.Millimeters, 6), Math.Round(place.Offset.Millimeters, 6));
    }

    private sealed class WithinMm(double tolerance) : IEqualityComparer<(double First, double Second)>
    {
        public bool Equals((double First, double Second) x, (double First, double Second) y) =>
            Math.Abs(x.First - y.First) <= tolerance && Math.Abs(x.Second - y.Second) <= tolerance;

        public int GetHashCode((double First, double Second) obj) => 0;
    }
}
