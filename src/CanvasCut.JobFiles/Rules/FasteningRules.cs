using CanvasCut.Language;
using UnitsNet;
using static CanvasCut.JobFiles.RuleLog;

namespace CanvasCut.JobFiles;

/// <summary>The zippers and the weather strip.</summary>
internal static class FasteningRules
{
    /// <summary>Tape that must lie under the hem to be sewn with two rows.</summary>
    private static readonly Length LeastTape = Length.FromMillimeters(6);

    public static void Check(JobValues values, RuleLog rules)
    {
        CheckReveal(values, rules);
        CheckSetback(values, rules);
        CheckStart(values, rules);
        CheckStock(values, rules);
        var edges = values.Words("weather_strip.edges") ?? [];
        rules.When(edges.Distinct().Count() < edges.Length, ProblemCode.Repeated, "weather_strip.edges", Say.Of("names an edge twice; name each once."));
        foreach (var side in edges.Distinct().Where(side => values.Text($"mount.{side}") == "none"))
        {
            rules.When(true, ProblemCode.StripEdge, "weather_strip.edges", Say.Of($"names \"{side}\", an edge that nothing holds, and a strip covers what holds an edge: give mount.{side}, or leave it out."));
        }
    }

    private static void CheckReveal(JobValues values, RuleLog rules)
    {
        var (chain, overall) = (values.Length("zipper.chain"), values.Length("zipper.overall_width"));
        var (reveal, most) = (values.Length("zipper.reveal"), (overall / 2) - LeastTape);
        rules.When(chain >= overall, ProblemCode.Reveal, "zipper.chain", Say.Of($"is as wide as both tapes together, {In(overall)}, or wider."));
        rules.When(reveal <= chain / 2, ProblemCode.Reveal, "zipper.reveal", Say.Of($"must be more than half the chain, {In(chain / 2)}, or the hem lies on the teeth."));
        rules.When(reveal > most, ProblemCode.Reveal, "zipper.reveal", Say.Of($"must be at most {In(most)}, so that {In(LeastTape)} of tape lies under the hem."));
    }

    private static void CheckSetback(JobValues values, RuleLog rules)
    {
        var (athwart, foreAft) = MountedSize.SmallestCarrier(values);
        rules.When(
            values.Length("zipper.setback") * 2 >= athwart,
            ProblemCode.Setback,
            "zipper.setback",
            Say.Of($"leaves no zipper: it counts at both ends, and the carrier can be as narrow as {In(athwart)} athwart."));
        rules.When(
            MountFields.IsUsedAtSides("zipper", values) && values.Length("zipper.setback") * 2 >= foreAft,
            ProblemCode.Setback,
            "zipper.setback",
            Say.Of($"leaves no zipper at a side: it counts at both ends, and the carrier can be as short as {In(foreAft)} fore and aft."));
    }

    private static void CheckStart(JobValues values, RuleLog rules)
    {
        var (athwart, foreAft) = MountedSize.SmallestCarrier(values);
        var edge = MountFields.IsUsedAtSides("zipper", values) && foreAft < athwart ? foreAft : athwart;
        rules.When(
            values.Length("zipper.start_setback") + values.Length("zipper.setback") >= edge,
            ProblemCode.Setback,
            "zipper.start_setback",
            Say.Of($"leaves no zipper: with zipper.setback at the other end it takes up an edge that can be as short as {In(edge)}."));
    }

    private static void CheckStock(JobValues values, RuleLog rules)
    {
        if (values.Lengths("zipper.stock") is not { } stock)
        {
            return;
        }

        rules.When(stock.IsEmpty && values.Text("zipper.kind") == "separating", ProblemCode.Stock, "zipper.stock", Say.Of("is empty; list the lengths the shop sells."));
        var isSorted = stock.Zip(stock.Skip(1)).All(pair => pair.First < pair.Second);
        rules.Unless(isSorted, ProblemCode.Stock, "zipper.stock", Say.Of("must grow from one length to the next; sort it, each length once."));
    }
}
