namespace CanvasCut.Tests.JobFiles;

public sealed class InvalidJobTests
{
    public static TheoryData<string> Folders { get; } = new(
        Directory.EnumerateDirectories(Repository.PathOf("patterns/invalid")).Select(folder => Path.GetFileName(folder)).Order(StringComparer.Ordinal));

    [Theory]
    [MemberData(nameof(Folders))]
    public void A_wrong_job_file_tells_all_that_is_wrong(string folder)
    {
        var problems = Sample.Problems(Repository.Read($"patterns/invalid/{folder}/job.toml"), Sample.Beside($"patterns/invalid/{folder}"));

        Assert.NotEmpty(problems);
        Golden.Matches($"patterns/invalid/{folder}/expected.txt", problems);
    }
}
