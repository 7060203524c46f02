using CanvasCut.JobFiles;

namespace CanvasCut.Tests.JobFiles;

public sealed class InvalidJobTests
{
    public static TheoryData<string> Folders { get; } = new(FoldersWith("job.toml"));

    public static TheoryData<string> MeasuresFolders { get; } = new(FoldersWith("measures.toml"));

    [Theory]
    [MemberData(nameof(Folders))]
    public void A_wrong_job_file_tells_all_that_is_wrong(string folder)
    {
        var problems = Sample.Problems(Repository.Read($"patterns/invalid/{folder}/job.toml"), Sample.Beside($"patterns/invalid/{folder}"));

        Assert.NotEmpty(problems);
        Golden.Matches($"patterns/invalid/{folder}/expected.txt", problems);
    }

    [Theory]
    [MemberData(nameof(MeasuresFolders))]
    public void A_wrong_measures_file_tells_all_that_is_wrong(string folder)
    {
        var problems = MeasuresFile.Read(Repository.Read($"patterns/invalid/{folder}/measures.toml"), "measures.toml").Problems;

        Assert.NotEmpty(problems);
        Golden.Matches($"patterns/invalid/{folder}/expected.txt", string.Concat(problems.Select(problem => $"{problem}\n")));
    }

    private static IEnumerable<string> FoldersWith(string file) => Directory.EnumerateDirectories(Repository.PathOf("patterns/invalid"))
        .Where(folder => File.Exists(Path.Combine(folder, file)))
        .Select(folder => Path.GetFileName(folder))
        .Order(StringComparer.Ordinal);
}
