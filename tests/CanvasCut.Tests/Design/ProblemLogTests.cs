using CanvasCut.Design;

namespace CanvasCut.Tests.Design;

public sealed class ProblemLogTests
{
    [Fact]
    public void Problems_come_in_the_order_of_the_file_each_once()
    {
        var log = new ProblemLog();
        log.Report("CC3", At(4, 2), "last");
        log.Report("CC2", At(2, 7), "second");
        log.Report("CC1", At(2, 1), "first");
        log.Report("CC3", At(4, 2), "last");

        var result = log.Finish(() => "never made");

        Assert.False(result.IsValid);
        Assert.Equal(["first", "second", "last"], result.Problems.Select(problem => problem.Message));
    }

    [Fact]
    public void Without_a_problem_there_is_a_value() =>
        Assert.Equal("made again", new ProblemLog().Finish(() => "made").Then(text => text + " again").Value);

    [Fact]
    public void Problems_are_carried_along()
    {
        var log = new ProblemLog();
        log.Report("CC1", At(1, 1), "wrong");

        var next = log.Finish(() => "never made").Then(text => text + " again");

        Assert.Null(next.Value);
        Assert.Equal("job.toml(1,1): CC1: top.length: wrong", Assert.Single(next.Problems).ToString());
    }

    [Fact]
    public void A_problem_of_the_whole_file_names_no_field() =>
        Assert.Equal("job.toml(1,1): CC1: wrong", new Problem("CC1", At(1, 1) with { Field = string.Empty }, "wrong").ToString());

    private static Place At(int line, int column) => new("job.toml", line, column, "top.length");
}
