using System.Collections.Immutable;
using CanvasCut.Cli;

namespace CanvasCut.Tests.Cli;

/// <summary>The program compiled ahead of time does what the same code does here, character for character and byte for byte.</summary>
/// <remarks>The commands lead through every library that warns of such compiling: units, tables, TOML, CSV, calendar, linear algebra, PDF.</remarks>
public sealed class PublishedTests
{
    private static readonly string[] Jobs =
        [.. Directory.EnumerateDirectories(Repository.PathOf("patterns")).Where(folder => File.Exists(Path.Combine(folder, "job.toml"))).Select(folder => Path.GetFileName(folder)!).Order(StringComparer.Ordinal)];

    private static readonly string[] Wrong =
        [.. Directory.EnumerateFiles(Repository.PathOf("patterns/invalid"), "job.toml", SearchOption.AllDirectories).Order(StringComparer.Ordinal)];

    public static TheoryData<string, string> Examples { get; } = new(Jobs.SelectMany(job => new[] { "en", "de" }, (job, language) => (job, language)));

    [Theory]
    [MemberData(nameof(Examples))]
    public void It_makes_the_same_bytes(string example, string language)
    {
        BuiltProgram.NeedsPublished();
        using var folder = new TemporaryFolder();
        string[] Make(string name) => ["make", Repository.PathOf($"patterns/{example}/job.toml"), "--out", folder.PathOf(name), "--language", language];

        var (there, here) = (BuiltProgram.Run(Make("there")), Here(Make("here")));

        Assert.Equal((here.Code, here.Output.Replace(folder.PathOf("here"), folder.PathOf("there"), StringComparison.Ordinal), here.Errors), there);
        Assert.Equal(Bytes(folder.PathOf("here")), Bytes(folder.PathOf("there")));
        Assert.Equal(0, BuiltProgram.Run("compare", folder.PathOf("there")).Code);
    }

    [Fact]
    public void Every_command_prints_the_same()
    {
        BuiltProgram.NeedsPublished();
        var job = Repository.PathOf("patterns/priced-own-materials/job.toml");
        string[][] commands =
        [
            ["--version"], ["nothing-of-the-kind"],
            ["check", job, "--all"], ["check", job, "--json"], ["check", job, "--language", "de"],
            ["order", job], ["order", job, "--csv"], ["order", job, "--json"],
            ["cloth", job, "--json"], ["work", job], ["work", job, "--json"], ["compare-mounts", job, "--json"],
            ["bonding", "--forecast", Repository.PathOf("patterns/forecasts/five-spring-days.csv")],
            ["measure", Repository.PathOf("patterns/measured-top/measures.toml")], ["measure", Repository.PathOf("patterns/measured-top/measures.toml"), "--json"],
            .. Wrong.Select(file => new[] { "check", file }),
        ];

        Assert.All(commands, command => Assert.Equal(Here(command), BuiltProgram.Run(command)));
    }

    /// <summary>Help names the program as it was started, and the tests were started otherwise.</summary>
    [Fact]
    public void Its_help_names_the_command()
    {
        BuiltProgram.NeedsPublished();

        Assert.Contains("  canvascut make [<JOB>] [options]", BuiltProgram.Run("make", "--help").Output, StringComparison.Ordinal);
    }

    [Fact]
    public void It_begins_scales_measures_and_refits_alike()
    {
        BuiltProgram.NeedsPublished();
        using var folder = new TemporaryFolder();
        foreach (var run in new Func<string[], (int Code, string Output, string Errors)>[] { BuiltProgram.Run, Here })
        {
            var place = folder.PathOf(run == Here ? "here" : "there");
            Directory.CreateDirectory(place);
            string At(string name) => Path.Combine(place, name);
            string[][] commands =
            [
                ["new", At("new.toml")], ["scale", "--out", At("scale.pdf")], ["measure", "--print", "--out", At("measure.pdf")],
                ["make", Repository.PathOf("patterns/refit-larger-panel/old-job.toml"), "--out", At("first")],
                ["refit", At("first"), Repository.PathOf("patterns/refit-larger-panel/new-job.toml"), "--out", At("second")],
            ];
            Assert.All(commands, command => Assert.Equal(0, run(command).Code));
        }

        Assert.Equal(Bytes(folder.PathOf("here")), Bytes(folder.PathOf("there")));
    }

    private static (int Code, string Output, string Errors) Here(string[] arguments)
    {
        using var output = new StringWriter { NewLine = Environment.NewLine };
        using var errors = new StringWriter { NewLine = Environment.NewLine };
        var code = CanvasCutCommand.Run(arguments, new(output, errors, IsTerminal: false));
        return (code, output.ToString(), errors.ToString());
    }

    private static ImmutableSortedDictionary<string, string> Bytes(string folder) =>
        Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories)
            .ToImmutableSortedDictionary(file => Path.GetRelativePath(folder, file), file => Convert.ToHexString(System.Security.Cryptography.SHA256.HashData(File.ReadAllBytes(file))), StringComparer.Ordinal);
}
