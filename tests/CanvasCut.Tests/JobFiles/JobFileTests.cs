namespace CanvasCut.Tests.JobFiles;

public sealed class JobFileTests
{
    [Fact]
    public void The_least_file_is_a_job_with_every_default_told()
    {
        var job = Sample.Job(Sample.Least);

        Golden.Matches(
            "tests/CanvasCut.Tests/JobFiles/least-defaults.txt",
            string.Concat(job.Defaults.Select(used => $"{used.Field} = {used.Value} ({used.Source})\n")));
    }
}
