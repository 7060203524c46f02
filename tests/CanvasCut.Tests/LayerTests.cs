using System.Reflection;
using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace CanvasCut.Tests;

/// <summary>The map of the projects, as docs/architecture.md draws it, and the rules that hold on it.</summary>
public sealed partial class LayerTests
{
    /// <summary>What each project uses, lowest layer first; a line may name only lines above it.</summary>
    private static readonly (string Project, string[] Uses)[] Map =
    [
        ("Language", []),
        ("Geometry", []),
        ("Nesting", ["Geometry"]),
        ("Drawing", ["Geometry", "Language"]),
        ("Export", ["Drawing", "Geometry"]),
        ("Readback", ["Geometry", "Language"]),
        ("Design", ["Geometry", "Language"]),
        ("Electrics", ["Design", "Geometry", "Language"]),
        ("Measuring", ["Design", "Language"]),
        ("JobFiles", ["Design", "Electrics", "Geometry", "Language"]),
        ("Patterns", ["Design", "Geometry", "Language"]),
        ("Placing", ["Design", "Geometry", "Language", "Patterns"]),
        ("Checks", ["Design", "Electrics", "Geometry", "Language", "Patterns", "Placing"]),
        ("Takeoff", ["Design", "Electrics", "Geometry", "Language", "Nesting", "Patterns"]),
        ("Sheets", ["Checks", "Design", "Drawing", "Electrics", "Geometry", "Language", "Nesting", "Patterns", "Placing", "Takeoff"]),
        ("Job", ["Checks", "Design", "Drawing", "Electrics", "Export", "Geometry", "JobFiles", "Language", "Nesting", "Patterns", "Placing", "Readback", "Sheets", "Takeoff"]),
        ("Cli", ["Checks", "Design", "Electrics", "Job", "JobFiles", "Language", "Measuring", "Sheets", "Takeoff"]),
    ];

    /// <summary>The packages each project may use, and no other.</summary>
    private static readonly Dictionary<string, string[]> Packages = new()
    {
        ["Language"] = [],
        ["Geometry"] = ["NetTopologySuite"],
        ["Electrics"] = ["UnitsNet"],
        ["Nesting"] = [],
        ["Drawing"] = [],
        ["Export"] =
        [
            "PDFsharp", "SkiaSharp", "SkiaSharp.NativeAssets.Linux.NoDependencies", "SkiaSharp.NativeAssets.Win32",
            "SkiaSharp.NativeAssets.macOS",
        ],
        ["Readback"] = ["PDFsharp"],
        ["Design"] = ["UnitsNet"],
        ["Measuring"] = ["MathNet.Numerics", "UnitsNet"],
        ["JobFiles"] = ["CsvHelper", "Tomlyn", "UnitsNet"],
        ["Patterns"] = ["UnitsNet"],
        ["Placing"] = ["UnitsNet"],
        ["Checks"] = ["UnitsNet"],
        ["Takeoff"] = ["UnitsNet"],
        ["Sheets"] = ["UnitsNet"],
        ["Job"] = ["UnitsNet"],
        ["Cli"] = ["Spectre.Console", "System.CommandLine"],
    };

    public static TheoryData<string> Projects { get; } = [.. Directory.EnumerateDirectories(Repository.PathOf("src"), "CanvasCut.*")
        .Select(folder => Path.GetFileName(folder)["CanvasCut.".Length..])];

    [Fact]
    public void Every_project_is_on_the_map() =>
        Assert.Equal(Map.Select(line => line.Project).Order(), Projects.Select(row => row.Data).Order());

    [Theory]
    [MemberData(nameof(Projects))]
    public void A_project_uses_what_the_map_says(string project)
    {
        var (_, uses) = Assert.Single(Map, line => line.Project == project);

        Assert.Equal(uses, Included(project, "ProjectReference").Select(path => Path.GetFileNameWithoutExtension(path)["CanvasCut.".Length..]).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void The_map_points_only_upward() => Assert.All(
        Map.Index(),
        line => Assert.Subset(Map.Take(line.Index).Select(above => above.Project).ToHashSet(), line.Item.Uses.ToHashSet()));

    [Theory]
    [MemberData(nameof(Projects))]
    public void A_project_uses_only_its_packages(string project) =>
        Assert.Equal(Packages[project].Order(StringComparer.Ordinal), Included(project, "PackageReference").Order(StringComparer.Ordinal));

    [Fact]
    public void The_map_is_drawn_in_the_docs()
    {
        var text = Repository.Read("docs/architecture.md");

        Assert.All(Map, line => Assert.Contains($"| {line.Project} | {(line.Uses.Length == 0 ? "nothing" : string.Join(", ", line.Uses))} |", text, StringComparison.Ordinal));
    }

    /// <summary>The steps from job to results, as docs/architecture.md lists them: each in a room of its own, which has the types it names.</summary>
    [Fact]
    public void The_way_from_a_length_to_a_drawing_enters_no_room_twice()
    {
        var steps = WayStep().Matches(Repository.Read("docs/architecture.md")).Select(step => (Room: step.Groups["room"].Value, Text: step.Value)).ToList();

        Assert.True(steps.Count >= 8, "The list of steps is not found.");
        Assert.Distinct(steps.Select(step => step.Room));
        Assert.All(steps, step =>
        {
            var types = Assembly.Load($"CanvasCut.{step.Room}").GetExportedTypes().Select(type => type.Name).ToHashSet(StringComparer.Ordinal);
            var named = NamedType().Matches(step.Text).Select(name => name.Groups["type"].Value).ToList();
            Assert.NotEmpty(named);
            Assert.DoesNotContain(named, name => !types.Contains(name) && name != nameof(CanvasCut.Design.CarrierJob));
        });
    }

    [GeneratedRegex(@"^\d\. (?<room>[A-Z][A-Za-z]+): .*(\n   .*)*", RegexOptions.Multiline)]
    private static partial Regex WayStep();

    [GeneratedRegex("`(?<type>[A-Z][A-Za-z]+)(\\.[A-Za-z]+)?`")]
    private static partial Regex NamedType();

    /// <summary>The folders of Export do not know each other; they share the Skia painter, the pairs of DXF and the vocabulary.</summary>
    [Theory]
    [InlineData("Dxf")]
    [InlineData("Svg")]
    [InlineData("Pdf")]
    [InlineData("Png")]
    [InlineData("Exchange")]
    [InlineData("Hpgl")]
    public void A_format_knows_no_other_format(string format)
    {
        string[] others = [.. new[] { "Dxf", "Svg", "Pdf", "Png", "Exchange", "Hpgl" }.Where(other => other != format).Select(other => $"CanvasCut.Export.{other}")];

        Assert.All(
            Directory.EnumerateFiles(Repository.PathOf($"src/CanvasCut.Export/{format}"), "*.cs"),
            file => Assert.DoesNotContain(others, other => File.ReadAllText(file).Contains(other, StringComparison.Ordinal)));
    }

    /// <summary>A length never travels as a bare number above the plane: no public member takes or gives a double but for ratios.</summary>
    [Theory]
    [InlineData(typeof(CanvasCut.Design.CarrierJob))]
    [InlineData(typeof(CanvasCut.Patterns.PatternSet))]
    [InlineData(typeof(CanvasCut.Placing.FitChoice))]
    [InlineData(typeof(CanvasCut.Checks.JobChecks))]
    [InlineData(typeof(CanvasCut.Takeoff.CutPlan))]
    [InlineData(typeof(CanvasCut.Electrics.WiringPlan))]
    public void Quantities_have_types(Type anyTypeOfTheProject)
    {
        // Ratios, and places in the plane of the top.
        string[] bare =
        [
            "BendFactor", "Warp", "Fill", "ShrinkForeAft", "ShrinkAthwart", "Use", "ClothSag", "Shrink", "Creep", "EdgeStrain",
            "ChainY", "LineY",
        ];

        var properties = anyTypeOfTheProject.Assembly.GetExportedTypes()
            .SelectMany(type => type.GetProperties())
            .Where(property => property.PropertyType == typeof(double) && !bare.Contains(property.Name));

        Assert.Empty(properties.Select(property => $"{property.DeclaringType!.Name}.{property.Name}"));
    }

    [Theory]
    [InlineData("CanvasCut.Nesting", "cloth|canvas|carrier|panel|zipper|pocket|fabric|sew")]
    [InlineData("CanvasCut.Geometry", "cloth|canvas|carrier|panel|zipper|pocket|fabric|sew")]
    [InlineData("CanvasCut.Export", "cloth|carrier|panel|zipper|pocket|fabric|sew")]
    public void A_general_layer_knows_no_word_of_the_trade(string project, string words)
    {
        var pattern = $@"\b({words})s?\b";

        Assert.All(
            Directory.EnumerateFiles(Repository.PathOf($"src/{project}"), "*.cs", SearchOption.AllDirectories).Where(IsSource),
            file => Assert.DoesNotMatch(pattern, File.ReadAllText(file).Replace("CanvasCut", string.Empty, StringComparison.Ordinal)));
    }

    [Fact]
    public void The_top_of_the_repository_holds_what_it_should()
    {
        string[] allowed = ["CanvasCut.sln", "DEVELOPERS.md", "LICENSE", "README.md", "docs", "patterns", "src", "tests"];
        var ignored = Repository.Read(".gitignore").Split('\n').Select(line => line.Trim('/', '\r')).ToHashSet(StringComparer.Ordinal);
        var there = Directory.EnumerateFileSystemEntries(Repository.PathOf(".")).Select(path => Path.GetFileName(path)!)
            .Where(name => !name.StartsWith('.') && !ignored.Contains(name));

        Assert.Equal(allowed.Order(StringComparer.Ordinal), there.Order(StringComparer.Ordinal));
    }

    private static bool IsSource(string path) => !path.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}", StringComparison.Ordinal);

    private static IEnumerable<string> Included(string project, string item) =>
        XDocument.Load(Repository.PathOf($"src/CanvasCut.{project}/CanvasCut.{project}.csproj")).Descendants(item).Select(element => element.Attribute("Include")!.Value.Replace('\\', '/'));
}
