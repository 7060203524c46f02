using System.Reflection;
using System.Text.RegularExpressions;
using CanvasCut.JobFiles;

namespace CanvasCut.Tests.JobFiles;

public sealed class ForecastFileTests
{
    private const string Folder = "patterns/forecasts/invalid";

    public static TheoryData<string> Invalid { get; } = new(
        Directory.EnumerateFiles(Repository.PathOf(Folder), "*.csv").Select(path => Path.GetFileNameWithoutExtension(path)).Order(StringComparer.Ordinal));

    public static TheoryData<string> Codes { get; } = new(
        typeof(ForecastCode).GetFields(BindingFlags.Public | BindingFlags.Static).Select(code => (string)code.GetRawConstantValue()!));

    [Theory]
    [MemberData(nameof(Invalid))]
    public void A_wrong_forecast_tells_all_that_is_wrong(string name)
    {
        var forecast = ForecastFile.Read(Repository.Read($"{Folder}/{name}.csv"), "forecast.csv");

        Assert.False(forecast.IsValid);
        Golden.Matches($"{Folder}/{name}.txt", string.Concat(forecast.Problems.Select(problem => $"{problem}\n")));
    }

    [Theory]
    [MemberData(nameof(Codes))]
    public void A_code_is_documented_with_an_example_from_an_approved_file(string code)
    {
        var line = Assert.Single(Repository.Read("docs/weather.md").Split('\n'), line => line.StartsWith($"| {code} |", StringComparison.Ordinal));
        var example = Regex.Match(line, "`([^`]+)`").Groups[1].Value;

        Assert.Contains(code, example, StringComparison.Ordinal);
        Assert.Contains(Directory.EnumerateFiles(Repository.PathOf(Folder), "*.txt"), path => File.ReadAllText(path).Contains(example + "\n", StringComparison.Ordinal));
    }

    /// <summary>Quoted fields, columns in another order, one that is not known, a byte order mark, line ends of RFC 4180.</summary>
    [Fact]
    public void A_forecast_is_read_whatever_the_order_of_its_columns()
    {
        var text = "\uFEFFrain_mm,place,time,\"air_c\",humidity_percent\r\n0,\"Cove, north\",2026-05-14T09:00,20.5,60\r\n0.2,\"a \"\"b\"\"\",2026-05-14T10:00,-1,61\r\n";

        var hours = ForecastFile.Read(text, "forecast.csv").Value!.Hours;

        Assert.Equal([20.5, -1], hours.Select(hour => hour.Air.DegreesCelsius));
        Assert.Equal([20.5, -1], hours.Select(hour => hour.Surface.DegreesCelsius));
        Assert.Equal([true, false], hours.Select(hour => hour.IsDry));
        Assert.Equal(new DateTime(2026, 5, 14, 10, 0, 0, DateTimeKind.Unspecified), hours[1].Time);
    }

    [Fact]
    public void Any_text_gives_hours_or_problems() =>
        Gen.String[Gen.Char["time,air_chumidity_percentrain_mm \n\r\",0129-:.\u00b0"], 0, 120].Sample(text =>
        {
            var forecast = ForecastFile.Read(text, "forecast.csv");
            return forecast.IsValid ? forecast.Value.Hours.Length > 0 : forecast.Problems.Length > 0;
        });

    [Fact]
    public void The_same_in_a_culture_with_decimal_commas() => ForeignCulture.In(() =>
    {
        var forecast = ForecastFile.Read("time,air_c,humidity_percent,rain_mm\n2026-05-14 09:00,-20.5,60,0\n", "forecast.csv");

        Assert.Equal(-20.5, Assert.Single(forecast.Value!.Hours).Air.DegreesCelsius);
    });
}
