using System.Globalization;
using CanvasCut.Design;
using CanvasCut.Language;
using UnitsNet;

namespace CanvasCut.Cli;

/// <summary>The weather as typed on the command line.</summary>
internal sealed record TypedDay(string? Air, string? Humidity, string? Surface, string? Hours)
{
    private const int MostHours = 1000;

    /// <summary>Whether anything was typed.</summary>
    public bool IsAny => (Air ?? Humidity ?? Surface ?? Hours) is not null;

    /// <summary>What is wrong, a line each.</summary>
    public IEnumerable<string> Complaints()
    {
        string?[] all = [OfTemperature("--air", Air), OfHumidity(), OfTemperature("--surface", Surface), OfHours()];
        return all.OfType<string>();
    }

    /// <summary>What was typed, and the rest of a day given otherwise; nothing may be wrong.</summary>
    public BondingDay Over(BondingDay day) => new(
        Air is null ? day.Air : QuantityKinds.Temperature.Read(Air),
        Humidity is null ? day.Humidity : RelativeHumidity.FromPercent(Number(Humidity)!.Value),
        Surface is null ? day.Surface : QuantityKinds.Temperature.Read(Surface),
        Hours is null ? day.Clear : Duration.FromHours(Number(Hours)!.Value));

    private static string? OfTemperature(string name, string? text) =>
        text is null ? null
        : QuantityKinds.Temperature.Read(text) is not { } temperature ? Say.Of($"{name} \"{text}\" is not a temperature; write it with C or F, as in 20C or 68F.")
        : QuantityKinds.Temperature.Limit!.IsBeyond(temperature.DegreesCelsius) ? Say.Of($"{name} \"{text}\" is colder or hotter than any air or cloth.")
        : null;

    private string? OfHumidity() =>
        Humidity is null ? null
        : Number(Humidity) is not { } percent ? Say.Of($"--humidity \"{Humidity}\" is not a number of per cent, as in 65.")
        : percent > 100 ? Say.Of($"--humidity \"{Humidity}\" is more than 100 %; air holds no more water than that.")
        : percent <= 0 ? Say.Of($"--humidity \"{Humidity}\" must be above 0 %.")
        : null;

    private string? OfHours() => Hours is null || Number(Hours) is >= 0 and <= MostHours ? null : Say.Of($"--hours \"{Hours}\" is not a number of hours, as in 72.");

    private static double? Number(string text) =>
        double.TryParse(text.TrimEnd('%', ' '), NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number) && double.IsFinite(number) ? number : null;
}
