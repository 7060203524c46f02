using System.Text.RegularExpressions;
using CanvasCut.Checks;
using CanvasCut.JobFiles;
using CanvasCut.Patterns;
using CanvasCut.Placing;

namespace CanvasCut.Tests.JobFiles;

public sealed partial class StarterTests
{
    [Fact]
    public void Every_blank_left_in_the_starter_asks_to_be_filled_in()
    {
        var problems = JobFile.Read(Starter.Text, "job.toml").Problems;

        Assert.Equal(["name", "top.length", "top.width", "panel.length", "panel.width"], problems.Select(problem => problem.Place.Field));
        Assert.All(problems, problem => Assert.Equal("is left blank; fill this in.", problem.Message));
        Assert.Equal(Blank().Count(Starter.Text), problems.Length);
    }

    [Fact]
    public void The_starter_with_only_its_blanks_filled_in_is_the_job_of_the_least_file()
    {
        var job = Sample.Job(Filled(Starter.Text));

        Assert.Equal(Sample.Job(Sample.Least).Defaults, job.Defaults);
        Assert.Equal((2000, 500), (job.Top.Length.Millimeters, job.Panel.Body.Width.Millimeters));
    }

    /// <summary>The comments tell the truth: with every # taken away, each shown value is the default it stands for.</summary>
    [Fact]
    public void What_the_starter_shows_in_comments_are_the_defaults()
    {
        var shown = Filled(CommentedField().Replace(Starter.Text, string.Empty));
        var job = Sample.Job(shown);
        var byDefault = Sample.Job(Sample.Least);

        Assert.Empty(job.Defaults);
        Assert.Equal(byDefault.Workshop.Buying.RollWidths, job.Workshop.Buying.RollWidths);
        Assert.Equal(
            byDefault.Workshop with { Plot = byDefault.Workshop.Plot with { RollWidth = job.Workshop.Plot.RollWidth }, Buying = byDefault.Workshop.Buying with { RollWidths = [] } },
            job.Workshop with { Buying = job.Workshop.Buying with { RollWidths = [] } });
        Assert.Equal(byDefault.Limits, job.Limits);
        Assert.Equal(byDefault.Conditions with { TopState = job.Conditions.TopState }, job.Conditions);
        Assert.Equal((byDefault.Work, byDefault.Care), (job.Work, job.Care));
        Assert.Equal(byDefault.Top.Edges, job.Top.Edges);
        Assert.Equal(byDefault.Panel.Fittings.DeadBorder, job.Panel.Fittings.DeadBorder);
        Assert.Equal(byDefault.Panel.Body with { Mass = job.Panel.Body.Mass }, job.Panel.Body);
        Assert.Equal(byDefault.Carrier with { Position = job.Carrier.Position }, job.Carrier);
        Assert.Equal(byDefault.Fastenings.Pocket with { Leg = job.Fastenings.Pocket.Leg }, job.Fastenings.Pocket);
        Assert.Equal(byDefault.Fastenings.Mount, job.Fastenings.Mount);
        Assert.Equal(byDefault.Fastenings.Chafe, job.Fastenings.Chafe);
        Assert.Equal(byDefault.Fastenings.Zipper.Stock, job.Fastenings.Zipper.Stock);
        Assert.Equal(byDefault.Fastenings.Zipper with { Stock = [] }, job.Fastenings.Zipper with { Stock = [] });
        Assert.Equal(byDefault.Fastenings.WeatherStrip.Edges, job.Fastenings.WeatherStrip.Edges);
        Assert.Equal(byDefault.Fastenings.WeatherStrip with { Edges = [] }, job.Fastenings.WeatherStrip with { Edges = [] });
    }

    [Fact]
    public void The_starter_shows_every_field() =>
        Assert.All(JobFields.All, field => Assert.Contains(field.Name.Split('.')[^1] + " = ", Starter.Text, StringComparison.Ordinal));

    /// <summary>The starter as anyone fills it in: two bows, a panel and what its sheet says. What is left out is the program's own construction.</summary>
    [Fact]
    public void The_starter_with_plain_numbers_gives_no_caution_that_its_user_did_not_cause()
    {
        string[] told = ["mass", "min_bend_radius", "dead_border", "junction_box"];
        var text = told.Aggregate(Filled(Starter.Text), (all, field) => all.Replace($"# {field} = ", $"{field} = ", StringComparison.Ordinal).Replace($"#{field} = ", $"{field} = ", StringComparison.Ordinal));
        const string Bows = """
            [[top.bow]]
            station = "150 mm"
            diameter = "1 in"
            chord = "1750 mm"
            crown = "110 mm"
            height = "0 mm"
            [[top.bow]]
            station = "1750 mm"
            diameter = "1 in"
            chord = "1750 mm"
            crown = "110 mm"
            height = "0 mm"
            [panel]
            """;
        var job = Sample.Job(text.Replace("\n[panel]\n", $"\n{Bows}\n", StringComparison.Ordinal));
        var results = JobChecks.Of(PatternSet.Of(job, FitChoice.For(job).Mounted));

        Assert.True(results.Count(result => result.Verdict == Verdict.Pass) > 90);
        Assert.Empty(results.Where(result => result.Verdict is Verdict.Caution or Verdict.Fail).Select(result => $"{result.Code}: {result.Subject}"));
    }

    /// <summary>An example has a space behind its #; whatever has none must be what the table of fields takes.</summary>
    [Fact]
    public void Nothing_without_a_default_is_shown_as_if_it_were_taken()
    {
        List<string> shown = [.. ShownFields()];

        Assert.Contains("top.edge_margin", shown);
        Assert.All(
            JobFields.All.Where(field => shown.Exists(name => field.Name == name || field.Name.StartsWith($"{name}.", StringComparison.Ordinal))).Where(field => field.Name != "accept_unusual"),
            field => Assert.True(field.Default is not null || field.Name.EndsWith(".strength", StringComparison.Ordinal) || field.Name == "mount.sleeve.bend_radius", field.Name));
    }

    /// <summary>The plain values word for word against the table of defaults; a grade may set others in its place.</summary>
    [Fact]
    public void A_value_that_is_shown_stands_in_the_table_of_defaults()
    {
        var table = string.Empty;
        var compared = 0;
        foreach (var line in Starter.Text.Split('\n'))
        {
            table = TableHead().Match(line) is { Success: true } head ? head.Groups[1].Value + "." : table;
            if (ShownValue().Match(line) is { Success: true } value && JobFields.All.SingleOrDefault(field => field.Name == table + value.Groups[1].Value) is { Default: { } text })
            {
                Assert.Equal(text.Text, value.Groups[2].Value.Trim('[', ']').Replace("\"", string.Empty, StringComparison.Ordinal));
                compared++;
            }
        }

        Assert.InRange(compared, 50, 500);
    }

    private static IEnumerable<string> ShownFields()
    {
        var table = string.Empty;
        foreach (var line in Starter.Text.Split('\n'))
        {
            table = TableHead().Match(line) is { Success: true } head ? head.Groups[1].Value + "." : table;
            if (ShownValue().Match(line) is { Success: true } value)
            {
                yield return table + value.Groups[1].Value;
            }
        }
    }

    [GeneratedRegex(@"^\[([a-z_.]+)\]")]
    private static partial Regex TableHead();

    [GeneratedRegex(@"^#([a-z_]+) = (.*)$")]
    private static partial Regex ShownValue();

    private static string Filled(string starter)
    {
        var answers = new Queue<string>(["Least", "2000 mm", "1800 mm", "1000 mm", "500 mm"]);
        return Blank().Replace(starter, _ => $"= \"{answers.Dequeue()}\"");
    }

    [GeneratedRegex("= \"\"$", RegexOptions.Multiline)]
    private static partial Regex Blank();

    [GeneratedRegex(@"^#(?=[a-z\[])", RegexOptions.Multiline)]
    private static partial Regex CommentedField();
}
