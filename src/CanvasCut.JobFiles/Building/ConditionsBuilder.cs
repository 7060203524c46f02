using CanvasCut.Design;
using UnitsNet;

namespace CanvasCut.JobFiles;

/// <summary>Makes wind, bonding, heat, and the state of the top.</summary>
internal static class ConditionsBuilder
{
    public static Conditions Build(GivenValues given) => new(
        new(given.Quantity<Speed>("wind.off_at"), new(Factor(given, "coefficient"), Factor(given, "edge_factor"), Factor(given, "gust_factor"), Factor(given, "safety_factor"))),
        Strength(given),
        Bonding(given),
        new(given.Quantity<Temperature>("heat.air"), given.Quantity<Speed>("heat.wind"), given.Values.Quantity<Temperature>("heat.limit")),
        given.Quantity<Angle>("water.least_slope"),
        new([.. TopQuestion.All.Select(question => Answer(given.Values.Text($"top_condition.{question.Field}")))]));

    private static StrengthSpec Strength(GivenValues given) => new(
        given.Quantity<Force>("wind.thread_strength"),
        given.Quantity<Force>("wind.cloth_strength"),
        new(given.Word<ZipperClass>("wind.zipper_class"), given.Values.Quantity<Force>("wind.zipper_strength"), given.Values.Quantity<Force>("wind.zipper_end_strength")));

    private static BondingSpec Bonding(GivenValues given) => new(
        given.Word<BondSurface>("bonding.onto"),
        given.Values.Length("bonding.tape_width"),
        given.Values.Length("bonding.tape_length"),
        new(
            given.Values.Quantity<Temperature>("bonding.air"),
            given.Values.Quantity<RelativeHumidity>("bonding.humidity"),
            given.Values.Quantity<Temperature>("bonding.surface"),
            given.Values.Quantity<int>("bonding.clear_hours") is { } hours ? Duration.FromHours(hours) : null),
        Limits(given));

    private static BondingLimits Limits(GivenValues given) => new(
        given.Quantity<Temperature>("bonding.least_surface"),
        given.Quantity<Temperature>("bonding.most_surface"),
        given.Quantity<Temperature>("bonding.hard_stop"),
        given.Quantity<TemperatureDelta>("bonding.dew_margin"),
        given.Quantity<Duration>("work.cure"));

    private static Ratio Factor(GivenValues given, string name) => Ratio.FromDecimalFractions(given.Quantity<double>($"wind.{name}"));

    private static bool? Answer(string? word) => word is null ? null : word == "yes";
}
