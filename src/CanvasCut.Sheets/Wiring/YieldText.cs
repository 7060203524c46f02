using System.Collections.Immutable;
using System.Globalization;
using CanvasCut.Design;
using CanvasCut.Electrics;
using CanvasCut.Language;
using UnitsNet;

namespace CanvasCut.Sheets;

/// <summary>What the panels give through a year, in words, the same on paper and on screen.</summary>
public static class YieldText
{
    private const double LeastPerWatt = 2;
    private const double MostPerWatt = 7.5;

    /// <summary>A row for each month.</summary>
    public static WordTable Months(YieldYear year)
    {
        ArgumentNullException.ThrowIfNull(year);
        return new(
            [Say.Of("Month"), Say.Of("Clear, kWh/m2"), Say.Of("Sun, kWh/m2"), Say.Of("Low"), Say.Of("Likely"), Say.Of("High"), Say.Of("Used"), Say.Of("Likely over used")],
            [.. year.Months.Select(month => ImmutableArray.Create(
                NameOf(month.Month),
                Of(month.Clear),
                month.Sun is { } sun ? Of(sun) : Say.Of("not known"),
                Of(month.Low),
                Of(month.Likely),
                Of(month.High),
                Of(year.Load),
                year.Load is { } load && month.Likely is { } likely ? (likely.WattHours - load.WattHours).ToString("+0;-0;0", CultureInfo.InvariantCulture) + " Wh" : string.Empty))]);
    }

    /// <summary>What was assumed, and what follows.</summary>
    public static ImmutableArray<string> Notes(YieldYear year, WiringPlan plan)
    {
        ArgumentNullException.ThrowIfNull(year);
        ArgumentNullException.ThrowIfNull(plan);
        return [.. Findings(year), .. Taken(year), .. Assumptions(plan)];
    }

    /// <summary>The name of a month.</summary>
    public static string NameOf(int month) => month switch
    {
        1 => Say.Of("January"),
        2 => Say.Of("February"),
        3 => Say.Of("March"),
        4 => Say.Of("April"),
        5 => Say.Of("May"),
        6 => Say.Of("June"),
        7 => Say.Of("July"),
        8 => Say.Of("August"),
        9 => Say.Of("September"),
        10 => Say.Of("October"),
        11 => Say.Of("November"),
        _ => Say.Of("December"),
    };

    private static IEnumerable<string> Findings(YieldYear year)
    {
        if (year.Weakest is { } weakest)
        {
            yield return year.Load is { } load
                ? weakest.Likely >= load
                    ? Say.Of($"Even the weakest month that is known, {NameOf(weakest.Month)}, likely covers what is used: {Of(weakest.Likely)} of {Of(load)} a day.")
                    : Say.Of($"The weakest month that is known, {NameOf(weakest.Month)}, likely gives {Of(weakest.Likely)} of the {Of(load)} that are used: the rest comes from elsewhere, or the bank goes flat.")
                : Say.Of($"The weakest month that is known is {NameOf(weakest.Month)}: likely {Of(weakest.Likely)} a day. What is used is not known: give [[electric.load]].");
            var perWatt = weakest.Likely!.Value.WattHours / (double)year.Watts.Watts;
            if (perWatt is < LeastPerWatt or > MostPerWatt)
            {
                yield return Say.Of($"That is {perWatt:0.0} Wh a day for each watt; four public rules of thumb say 3 to 7: look at the hours of sun again.");
            }
        }
        else
        {
            yield return Say.Of("Without [[electric.sun.month]] only the clear sky is known: no day gives more than what stands under High, most give far less.");
        }

        yield return year.Autonomy is { } days
            ? Say.Of($"The bank alone bridges {days.Days:0.0} days of what is used.")
            : Say.Of("How many days the bank bridges is not known: give capacity and usable of electric.bank, and [[electric.load]].");
    }

    private static IEnumerable<string> Taken(YieldYear year)
    {
        if (year.Taken.Level)
        {
            yield return Say.Of("THE SHAPE OF THE TOP IS NOT KNOWN: the panels are reckoned as level. Give arcs and heights of two bows.");
        }

        if (year.Taken.Gamma)
        {
            yield return Say.Of("A LABEL DOES NOT TELL how power falls with heat: -0.49 %/K was taken, the median of 381 modules.");
        }
    }

    private static IEnumerable<string> Assumptions(WiringPlan plan)
    {
        var (sun, losses) = (plan.Spec.Sun!, plan.Spec.Sun!.Losses);
        yield return Say.Of("Low is half of likely. Likely: the hours of sun of the job file, cells between a free and a blocked back. High: the larger of two clear-sky days, no shade, a free back; no day gives more.");
        yield return sun.Heading is { } heading
            ? Say.Of($"The bow points to {heading.Degrees:0} degrees from north over east, whatever the wind.")
            : Say.Of("The boat swings: the mean over all headings.");
        yield return Say.Of($"Lost: soiling {Of(losses.Soiling)}, mismatch {Of(losses.Mismatch)}, connections {Of(losses.Connections)}, light-induced {Of(losses.LightInduced)}, nameplate {Of(losses.Nameplate)}; shade {Of(losses.Shade)} of likely.");
        foreach (var controller in plan.Controllers.Where(controller => !controller.Strings.IsEmpty))
        {
            yield return Say.Of($"Controller \"{controller.Spec.Name}\": wires {Of(YieldYear.WiresOf(controller))} at full current, efficiency {Of(controller.Spec.Output.Efficiency)}, all but shade and efficiency {Of(YieldYear.LostOf(controller, losses))} lost.");
        }

        yield return Say.Of("A full bank refuses energy: that is no fault. These are estimates.");
    }

    private static string Of(Irradiation light) => FormattableString.Invariant($"{light.WattHoursPerSquareMeter / 1000:0.00}");

    private static string Of(Energy? energy) => energy is { } known ? QuantityWords.Of(known) : Say.Of("not known");

    private static string Of(Ratio part) => FormattableString.Invariant($"{part.Percent:0.0} %");
}
