using CanvasCut.Cli;

namespace CanvasCut.Tests.Cli;

public sealed class BondingCommandTests
{
    [Theory]
    [InlineData(0, "22C", "55", "21C", "72", "Bond now.")]
    [InlineData(1, "12C", "90", "12C", "72", "Do not bond now.")]
    [InlineData(0, "72F", "55 %", "70 F", "80", "Bond now.")]
    public void Typed_weather_is_judged(int code, string air, string humidity, string surface, string hours, string says)
    {
        var (ended, output, errors) = Run("bonding", "--air", air, "--humidity", humidity, "--surface", surface, "--hours", hours);

        Assert.Equal((code, string.Empty), (ended, errors));
        Assert.Contains(says, output, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_not_given_is_not_decided()
    {
        var (code, output, _) = Run("bonding", "--air", "20C");

        Assert.Equal(1, code);
        Assert.Contains("Not decided", output, StringComparison.Ordinal);
        Assert.Contains("bonding.humidity, bonding.surface", output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--humidity", "104", "more than 100 %")]
    [InlineData("--humidity", "damp", "not a number of per cent")]
    [InlineData("--humidity", "0", "above 0 %")]
    [InlineData("--air", "20", "with C or F")]
    [InlineData("--air", "-300C", "colder or hotter")]
    [InlineData("--surface", "NaN C", "with C or F")]
    [InlineData("--hours", "many", "not a number of hours")]
    public void What_cannot_be_is_wrong_input(string option, string value, string says)
    {
        var (code, output, errors) = Run("bonding", $"{option}={value}");

        Assert.Equal((2, string.Empty), (code, output));
        Assert.Contains(says, Assert.Single(errors.Split('\n', StringSplitOptions.RemoveEmptyEntries)), StringComparison.Ordinal);
    }

    /// <summary>Invented days; that the hour is the best is worked out here by other means than the program's.</summary>
    [Fact]
    public void The_best_hour_of_a_forecast_is_named()
    {
        const string Path = "patterns/forecasts/five-spring-days.csv";
        var rows = Repository.Read(Path).Split("\r\n", StringSplitOptions.RemoveEmptyEntries).Skip(1).Select(line => line.Split(',')).ToList();
        double At(int row, int column) => double.Parse(rows[row][column], System.Globalization.CultureInfo.InvariantCulture);
        double Margin(int row) => At(row, 4) - DewPoint(At(row, 1), At(row, 2));
        bool IsRight(int row) => At(row, 4) is >= 15 and <= 38 && Margin(row) >= 3;
        var good = Enumerable.Range(0, rows.Count - 73)
            .Where(from => IsRight(from) && IsRight(from + 1) && Enumerable.Range(from, 74).All(row => At(row, 3) == 0 && At(row, 4) >= 10))
            .ToList();

        var (code, output, _) = Run("bonding", "--forecast", Repository.PathOf(Path));

        Assert.Equal(0, code);
        Assert.Contains($": {rows[good.MaxBy(from => Math.Min(Margin(from), Margin(from + 1)))][0]}, the driest of {good.Count} good hours", output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_jobs_limits_count()
    {
        using var folder = new TemporaryFolder();
        var job = folder.PathOf("job.toml");
        File.WriteAllText(job, JobFiles.Sample.Least + "[bonding]\nsurface = \"14 C\"\nair = \"14 C\"\nhumidity = \"50 %\"\nclear_hours = 30\nleast_surface = \"12 C\"\n[work]\ncure = \"24 h\"\n");

        Assert.Equal(0, Run("bonding", job).Code);
        Assert.Equal(1, Run("bonding", job, "--hours", "20").Code);
    }

    [Fact]
    public void A_wrong_forecast_is_wrong_input()
    {
        var (code, output, errors) = Run("bonding", "--forecast", Repository.PathOf("patterns/forecasts/invalid/rows.csv"));

        Assert.Equal((2, string.Empty), (code, output));
        Assert.Contains("rows.csv(2,1): CC171: ", errors, StringComparison.Ordinal);
    }

    [Fact]
    public void A_forecast_that_is_not_there_cannot_be_read() => Assert.Equal(3, Run("bonding", "--forecast", "no-such.csv").Code);

    [Fact]
    public void A_forecast_and_typed_weather_do_not_go_together() => Assert.Equal(2, Run("bonding", "--forecast", "a.csv", "--air", "20C").Code);

    /// <summary>The Magnus formula with the figures of Alduchov and Eskridge, 1996, which are not the program's.</summary>
    private static double DewPoint(double air, double humidity)
    {
        var gamma = Math.Log(humidity / 100) + (17.625 * air / (243.04 + air));
        return 243.04 * gamma / (17.625 - gamma);
    }

    private static (int Code, string Output, string Errors) Run(params string[] arguments)
    {
        using var output = new StringWriter { NewLine = "\n" };
        using var errors = new StringWriter { NewLine = "\n" };
        var code = CanvasCutCommand.Run(arguments, new(output, errors, IsTerminal: false));
        return (code, output.ToString(), errors.ToString());
    }
}
