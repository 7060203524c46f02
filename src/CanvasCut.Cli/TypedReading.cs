using System.Globalization;
using CanvasCut.Design;
using CanvasCut.Electrics;
using CanvasCut.Language;
using UnitsNet;

namespace CanvasCut.Cli;

/// <summary>What was measured on a string, as typed on the command line.</summary>
internal sealed record TypedReading(string? Open, string? Short, string? Back, string? Sun, int String)
{
    /// <summary>Whether anything was typed.</summary>
    public bool IsAny => (Open ?? Short ?? Back ?? Sun) is not null;

    /// <summary>What was measured; nothing may be wrong.</summary>
    public StringMeasured Reading => new(
        Open is null ? null : QuantityKinds.Voltage.Read(Open),
        Short is null ? null : QuantityKinds.Current.Read(Short),
        QuantityKinds.Temperature.Read(Back!)!.Value,
        Number is { } sun ? Irradiance.FromWattsPerSquareMeter(sun) : null);

    private double? Number => double.TryParse(Sun, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var sun) ? sun : null;

    /// <summary>What is wrong or missing, a line each.</summary>
    public IEnumerable<string> Complaints()
    {
        const int MostSun = 1600;
        if (Open is not null && QuantityKinds.Voltage.Read(Open) is null)
        {
            yield return Say.Of($"--open \"{Open}\" is not a voltage; write it with its unit, as in 21.3V.");
        }

        if (Short is not null && QuantityKinds.Current.Read(Short) is null)
        {
            yield return Say.Of($"--short \"{Short}\" is not a current; write it with its unit, as in 4.2A.");
        }

        if (Back is not null && QuantityKinds.Temperature.Read(Back) is null)
        {
            yield return Say.Of($"--back \"{Back}\" is not a temperature; write it with C or F, as in 52C.");
        }

        if (Sun is not null && Number is not (> 0 and <= MostSun))
        {
            yield return Say.Of($"--sun \"{Sun}\" is no strength of the sun in W/m2 from above 0 to {MostSun}, as in 740.");
        }

        if (IsAny && Back is null)
        {
            yield return Say.Of("--back is missing: voltage and current mean nothing without the warmth of the cells.");
        }

        if (IsAny && Short is null && Sun is null)
        {
            yield return Say.Of("--short or --sun is missing: without one of them the strength of the sun is not known.");
        }
    }
}
