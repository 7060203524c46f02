using CanvasCut.Design;
using CanvasCut.JobFiles;

namespace CanvasCut.Tests.JobFiles;

/// <summary>Job files made up for the tests.</summary>
internal static class Sample
{
    /// <summary>The least that is a job.</summary>
    public const string Least = """
        format = 1
        name = "Least"
        [top]
        length = "2000 mm"
        width = "1800 mm"
        [panel]
        length = "1000 mm"
        width = "500 mm"

        """;

    /// <summary>A job in which nothing is left to a default.</summary>
    public static string Everything { get; } = Repository.Read("tests/CanvasCut.Tests/JobFiles/everything.toml");

    /// <summary>A job of a text that must be right.</summary>
    public static CarrierJob Job(string text)
    {
        var job = JobFile.Read(text, "job.toml");
        Assert.True(job.IsValid, string.Join('\n', job.Problems));
        return job.Value.First;
    }

    /// <summary>A reader for the files beside a job; messages call them by their own names.</summary>
    public static SideFiles Beside(string folder) => new(
        name => File.Exists(Path.Combine(Repository.PathOf(folder), name)) ? new(name, Repository.Read($"{folder}/{name}")) : null,
        null,
        null);

    /// <summary>The problems of a text and of the files beside it, a line each.</summary>
    public static string Problems(string text, SideFiles side) =>
        string.Concat(JobFile.Read(text, "job.toml", side).Problems.Select(problem => $"{problem}\n"));

    /// <summary>The problems of a text, a line each.</summary>
    public static string Problems(string text) =>
        string.Concat(JobFile.Read(text, "job.toml").Problems.Select(problem => $"{problem}\n"));
}
