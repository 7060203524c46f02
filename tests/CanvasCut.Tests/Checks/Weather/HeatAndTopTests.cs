using System.Collections.Immutable;
using CanvasCut.Checks;
using CanvasCut.Design;
using CanvasCut.Patterns;
using CanvasCut.Tests.Patterns;
using UnitsNet;

namespace CanvasCut.Tests.Checks.Weather;

public sealed class HeatAndTopTests
{
    /// <summary>
    /// From the formula and coefficients of the pvlib documentation (sapm_cell, open_rack_glass_polymer and
    /// insulated_back_glass_polymer) by hand: e^-3.635 = 0.02638, e^-2.8555 = 0.05753.
    /// </summary>
    [Theory]
    [InlineData(PanelBack.Free, 30, 1, 59.4)]
    [InlineData(PanelBack.Blocked, 30, 1, 87.5)]
    [InlineData(PanelBack.Free, 35, 5, 57.5)]
    [InlineData(PanelBack.Blocked, 30, 5, 78.0)]
    public void Cells_are_as_warm_as_the_published_model_makes_them(PanelBack back, double air, double wind, double cells) =>
        Assert.Equal(cells, CellHeat.Of(back, SampleJobs.Celsius(air), Speed.FromMetersPerSecond(wind)).DegreesCelsius, 0.05);

    [Theory]
    [InlineData(20, Verdict.Pass, Verdict.Pass)]
    [InlineData(30, Verdict.Pass, Verdict.Caution)]
    [InlineData(60, Verdict.Fail, Verdict.Caution)]
    public void Heat_is_held_against_the_limit(double air, Verdict free, Verdict blocked)
    {
        var results = Results(With(SampleJobs.Conditions with { Heat = SampleJobs.Conditions.Heat with { Air = SampleJobs.Celsius(air) } }));

        Assert.Equal(free, Assert.Single(results, check => check.Code == CheckCodes.HeatFree).Verdict);
        Assert.Equal(blocked, Assert.Single(results, check => check.Code == CheckCodes.HeatBlocked).Verdict);
    }

    [Fact]
    public void At_most_eight_questions_are_asked() => Assert.InRange(TopQuestion.All.Length, 1, 8);

    [Fact]
    public void All_good_answers_are_worth_sewing() => Assert.Equal((Verdict.Pass, "Worth sewing."), VerdictOf(Answers()));

    [Fact]
    public void A_stop_is_a_stop_even_with_questions_open()
    {
        var (verdict, advice) = VerdictOf(TopState.Unknown.Answers.SetItem(0, true));

        Assert.Equal(Verdict.Fail, verdict);
        Assert.StartsWith("Do not sew to this top: the cloth no longer holds a stitch", advice, StringComparison.Ordinal);
    }

    [Fact]
    public void What_can_be_mended_is_a_caution_with_its_reasons()
    {
        var (verdict, advice) = VerdictOf(Answers("leaks", "slack"));

        Assert.Equal(Verdict.Caution, verdict);
        Assert.Contains("proof it first; a panel on slack cloth", advice, StringComparison.Ordinal);
    }

    [Fact]
    public void Unanswered_questions_are_named()
    {
        var (verdict, advice) = VerdictOf(Answers().SetItem(7, null));

        Assert.Equal((Verdict.NotChecked, "Not answered: top_condition.frame_moves."), (verdict, advice));
    }

    private static ImmutableArray<bool?> Answers(params string[] yes) => [.. TopQuestion.All.Select(question => (bool?)yes.Contains(question.Field))];

    private static (Verdict Verdict, string Advice) VerdictOf(ImmutableArray<bool?> answers)
    {
        var check = Assert.Single(Results(With(SampleJobs.Conditions with { TopState = new(answers) })), check => check.Code == CheckCodes.TopCondition);
        return (check.Verdict, check.Advice);
    }

    private static CarrierJob With(Conditions conditions) => SampleJobs.Plain with { Conditions = conditions };

    private static ImmutableArray<CheckResult> Results(CarrierJob job) =>
        JobChecks.Of(PatternSet.Of(job, MountedShape.Of(job, LongSide.Athwart).At(new(SampleJobs.Mm(800), SampleJobs.Mm(0)))));
}
