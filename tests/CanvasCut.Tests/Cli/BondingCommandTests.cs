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
        double Mean(int from) => Enumerable.Range(from, 72).Average(row => At(row, 4));
        var good = Enumerable.Range(0, rows.Count - 71)
            .Where(from => At(from, 4) is >= 15 and <= 38 && Enumerable.Range(from, 72).All(row => At(row, 3) == 0 && At(row, 4) >= 10))
            .Where(from => DampBelow(At(from, 1), At(from, 2), At(from, 4) - 3))
            .ToList();

        var (code, output, _) = Run("bonding", "--forecast", Repository.PathOf(Path));

        Assert.Equal(0, code);
        Assert.Contains($": {rows[good.MaxBy(Mean)][0]}, the warmest of {good.Count} good hours", output, StringComparison.Ordinal);
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

    /// <summary>Whether dew would fall only below a temperature, by the vapour pressures of the Magnus formula with Alduchov and Eskridge's figures.</summary>
    private static bool DampBelow(double air, double humidity, double temperature)
    {
        static double Pressure(double celsius) => 6.1094 * Math.Exp(17.625 * celsius / (243.04 + celsius));
        return Pressure(air) * humidity / 100 <= Pressure(temperature);
    }

    private static (int Code, string Output, string Errors) Run(params string[] arguments)
    {
        using var output = new StringWriter { NewLine = "\n" };
        using var errors = new StringWriter { NewLine = "\n" };
        var code = CanvasCutCommand.Run(arguments, new(output, errors, IsTerminal: false));
        return (code, output.ToString(), errors.ToString());
    }
}
