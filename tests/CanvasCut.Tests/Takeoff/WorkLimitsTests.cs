using System.Text.RegularExpressions;
using CanvasCut.Checks;
using CanvasCut.Design;
using CanvasCut.Takeoff;
using CanvasCut.Tests.Patterns;
using UnitsNet;

namespace CanvasCut.Tests.Takeoff;

/// <summary>The steps tell the job's own limits, and do what is ordered.</summary>
public sealed class WorkLimitsTests
{
    /// <summary>Each limit changed alone, in metric units: what it was stands nowhere in the steps, what it is stands there.</summary>
    [Theory]
    [InlineData("least", "15 °C", "13 °C")]
    [InlineData("most", "38 °C", "34 °C")]
    [InlineData("hard stop", "10 °C", "11 °C")]
    [InlineData("dew", "3 °C", "4 °C")]
    [InlineData("cure", "72 h", "50 h")]
    [InlineData("hours", "4 h", "5 h")]
    public void A_limit_of_the_job_is_told_once_and_as_it_is(string field, string before, string after)
    {
        var usual = Changed(string.Empty);
        var changed = Changed(field);

        Assert.True(Has(TextOf(usual), before), $"{before} is not told");
        Assert.False(Has(TextOf(usual), after), $"{after} is told before");
        Assert.True(Has(TextOf(changed), after), $"{after} is not told");
        Assert.False(Has(TextOf(changed), before), $"{before} is still told");
    }

    /// <summary>By hand: 15.04 °C is 59.072 °F; no colder is 16 °C and 60 °F. 37.96 °C is 100.328 °F; no hotter is 37 °C and 100 °F. 3.33 °C of margin are 5.994 °F: 4 °C and 6 °F.</summary>
    [Fact]
    public void Limits_are_rounded_to_the_safe_side()
    {
        Assert.Equal("16 °C (60 °F)", LimitWords.Least(SampleJobs.Celsius(15.04), PrintUnits.Both));
        Assert.Equal("37 °C (100 °F)", LimitWords.Most(SampleJobs.Celsius(37.96), PrintUnits.Both));
        Assert.Equal("4 °C (6 °F)", LimitWords.Least(TemperatureDelta.FromDegreesCelsius(3.33), PrintUnits.Both));
        Assert.Equal("15 °C (59 °F)", LimitWords.Least(SampleJobs.Celsius(15), PrintUnits.Both));
    }

    /// <summary>By hand: a box of 16 mm and 5 are 21 mm, 0.8268 in or 13.23 sixteenths; a support of 13/16 in would be too thin, so 7/8 in. 15.26 and 5 are 20.26: 20.3 mm.</summary>
    [Theory]
    [InlineData(16, PrintUnits.Imperial, "at least 7/8 in thick")]
    [InlineData(15.26, PrintUnits.Metric, "at least 20.3 mm thick")]
    public void The_support_of_a_panel_on_its_face_is_rounded_up(double box, PrintUnits units, string told)
    {
        var plain = SampleJobs.Plain;
        var fittings = plain.Panel.Fittings with { JunctionBox = new(SampleJobs.Mm(500), SampleJobs.Mm(225), SampleJobs.Mm(100), SampleJobs.Mm(100), SampleJobs.Mm(box)) };

        Assert.Contains(told, TextOf(plain with { Units = units, Panel = plain.Panel with { Fittings = fittings } }), StringComparison.Ordinal);
    }

    /// <summary>Check, forecast and step hold the cure against one temperature.</summary>
    [Fact]
    public void The_cure_has_one_temperature()
    {
        var limits = BondingLimits.Usual with { HardStop = SampleJobs.Celsius(12) };
        var hours = Enumerable.Range(0, 90).Select(hour => new ForecastHour(new DateTime(2026, 5, 14, 0, 0, 0, DateTimeKind.Unspecified).AddHours(hour), SampleJobs.Celsius(20), RelativeHumidity.FromPercent(50), SampleJobs.Celsius(hour == 40 ? 11.9 : hour > 2 ? 12 : 20), IsDry: true));
        var job = Job(limits);
        var cure = WorkOrder.Of(WorkOrderTests.Patterned(job)).Steps.Single(each => each.Step.Task.Id == "cure").Step;

        Assert.Equal(40 - 2, BondingStart.In([.. hours], limits)[0].Day.Clear!.Value.Hours, 1e-9);
        Assert.Contains("12 °C (54 °F) or warmer", Assert.Single(BondingWeather.Of(new(null, null, null, null), limits), check => check.Code == CheckCodes.BondingClear).Subject, StringComparison.Ordinal);
        Assert.Contains("12 °C or warmer", cure.Advice.Condition, StringComparison.Ordinal);
    }

    /// <summary>Webbing is told to be sewn only where it is ordered: under foam tape on woven cloth.</summary>
    [Theory]
    [InlineData(false, false, true)]
    [InlineData(false, true, false)]
    [InlineData(true, false, false)]
    [InlineData(true, true, false)]
    public void What_is_not_ordered_is_not_told_to_be_sewn(bool hasAdhesive, bool isSmooth, bool isSewn)
    {
        var plain = Job(BondingLimits.Usual);
        var patterns = WorkOrderTests.Patterned(plain with
        {
            Panel = plain.Panel with { Limits = plain.Panel.Limits with { HasAdhesive = hasAdhesive } },
            Workshop = plain.Workshop with { Supplies = plain.Workshop.Supplies with { Cloth = plain.Workshop.Supplies.Cloth with { IsSmooth = isSmooth } } },
        });
        var text = TextOf(patterns.Job);

        Assert.Equal(isSewn, PanelBondIsOnGround(patterns));
        Assert.Equal(isSewn, text.Contains("webbing", StringComparison.Ordinal));
        Assert.Equal(!hasAdhesive, text.Contains("foam tape", StringComparison.Ordinal));
        Assert.Equal(hasAdhesive && !isSmooth, text.Contains("peels from raw woven cloth", StringComparison.Ordinal));
        Assert.Empty(new WorkAudit(patterns, WorkOrder.Of(patterns)).Faults());
    }

    private static bool PanelBondIsOnGround(CanvasCut.Patterns.PatternSet patterns) => patterns.Bond.Ground != CanvasCut.Patterns.BondGround.Cloth;

    private static CarrierJob Job(BondingLimits limits)
    {
        var plain = SampleJobs.Plain;
        return plain with { Units = PrintUnits.Metric, Conditions = plain.Conditions with { Bonding = plain.Conditions.Bonding with { Limits = limits } } };
    }

    private static CarrierJob Changed(string field)
    {
        var usual = BondingLimits.Usual;
        var job = Job(field switch
        {
            "least" => usual with { LeastSurface = SampleJobs.Celsius(13) },
            "most" => usual with { MostSurface = SampleJobs.Celsius(34.5) },
            "hard stop" => usual with { HardStop = SampleJobs.Celsius(11) },
            "dew" => usual with { DewMargin = TemperatureDelta.FromDegreesCelsius(4) },
            _ => usual,
        });
        return field switch
        {
            "cure" => job with { Work = job.Work with { Cure = Duration.FromHours(50) } },
            "hours" => job with { Work = job.Work with { HoursPerDay = Duration.FromHours(5) } },
            _ => job,
        };
    }

    /// <summary>All that the order of work says, its total with it.</summary>
    private static string TextOf(CarrierJob job)
    {
        var order = WorkOrder.Of(WorkOrderTests.Patterned(job));
        return string.Join('\n', order.Steps.SelectMany(each => new[]
        {
            each.Step.Task.Name, each.Step.Task.Do, each.Step.Advice.Tool, each.Step.Advice.Condition, each.Step.Advice.Check, each.Step.Advice.Caution, WorkText.Time(each.Step.Time),
        }.Concat(each.Step.Parts.Select(part => part.ToString())))) + '\n' + Regex.Replace(WorkText.Total(order), "^.* of work; ", string.Empty);
    }

    private static bool Has(string text, string quantity) => Regex.IsMatch(text, $@"(?<![\d.]){Regex.Escape(quantity)}\b");
}
