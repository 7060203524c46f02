using System.Collections.Immutable;
using CanvasCut.Checks;
using CanvasCut.Design;
using CanvasCut.Electrics;
using CanvasCut.Language;
using UnitsNet;

namespace CanvasCut.Sheets;

/// <summary>A table in words: what stands over its columns, and its rows.</summary>
/// <param name="Heads">Over the columns.</param>
/// <param name="Rows">The rows.</param>
public sealed record WordTable(ImmutableArray<string> Heads, ImmutableArray<ImmutableArray<string>> Rows);

/// <summary>A wiring in tables, the same on paper and on screen.</summary>
public static class WiringText
{
    private const double StepMm = 50;

    private static string Unknown => Say.Of("not known");

    /// <summary>Voltages and currents of every string.</summary>
    public static WordTable Strings(WiringPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return new(
            [Say.Of("String"), Say.Of("Controller"), Say.Of("Open, label"), Say.Of("Open, coldest"), Say.Of("Most power, hot"), Say.Of("Short-circuit"), Say.Of("Label")],
            [.. plan.Controllers.SelectMany(controller => controller.Strings.Select(one => ImmutableArray.Create(
                ElectricWords.Of(one),
                controller.Spec.Name,
                Nearest(one.Open),
                Least(one.Cold),
                Most(one.HotPeak),
                Nearest(one.ShortCircuit),
                Nearest(one.Power))))]);
    }

    /// <summary>The wires on both sides of every controller.</summary>
    public static WordTable Wires(WiringPlan plan, PrintUnits units)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return new(
            [Say.Of("Wires"), Say.Of("One way"), Say.Of("Size"), Say.Of("Next thicker"), Say.Of("Carries"), Say.Of("Loses"), Say.Of("May lose")],
            [.. plan.Controllers.SelectMany(controller => new[]
            {
                Run(Say.Of($"panels to \"{controller.Spec.Name}\""), controller.PanelRun, units),
                Run(Say.Of($"\"{controller.Spec.Name}\" to the bank"), controller.BankRun, units),
            })]);
    }

    /// <summary>Fuses and breakers.</summary>
    public static WordTable Devices(WiringPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return new(
            [Say.Of("Place"), Say.Of("Carries at least"), Say.Of("Rating"), Say.Of("Breaks at least"), Say.Of("Besides")],
            [.. plan.Controllers.SelectMany(DevicesOf)]);
    }

    /// <summary>The rating of a device, and whether it is the job's or one to buy.</summary>
    public static string Rating(DeviceSpec? given, Known<ElectricCurrent> rating) => rating.Value is not { } amperes ? Unknown
        : given?.Rating is null ? Say.Of($"{QuantityWords.Of(amperes)}, to buy") : QuantityWords.Of(amperes);

    /// <summary>The size of a wire, or that it is not known.</summary>
    public static string Size(PlannedRun run)
    {
        ArgumentNullException.ThrowIfNull(run);
        return run.Wire is { } wire ? WireNames.Of(wire) : Unknown;
    }

    /// <summary>The way of a run, or that it is not known.</summary>
    public static string Way(PlannedRun run, PrintUnits units)
    {
        ArgumentNullException.ThrowIfNull(run);
        return run.Task.OneWay.Value is { } way ? LengthText.Of(WholeSteps(way), units) : Unknown;
    }

    /// <summary>Up to a whole step: a wire is cut longer, never shorter.</summary>
    private static Length WholeSteps(Length way) => Length.FromMillimeters(Math.Ceiling((way.Millimeters / StepMm) - 1e-6) * StepMm);

    private static ImmutableArray<string> Run(string name, PlannedRun run, PrintUnits units) =>
    [
        name, Way(run, units), Size(run), run.Wire?.NextThicker is { } next ? WireNames.Of(next) : string.Empty, Most(run.Ampacity), Least(run.Drop), Most(run.Task.Allowed),
    ];

    private static IEnumerable<ImmutableArray<string>> DevicesOf(WiredController controller)
    {
        var name = controller.Spec.Name;
        foreach (var one in controller.Strings.Where(one => NeedsFuse(controller, one)))
        {
            var next = one.ShortCircuit.Value is { } isc ? Protection.Next(ArrayCurrent.ForWires(isc), controller.Electric.Around.Fuses) : null;
            yield return
            [
                Say.Of($"fuse in {ElectricWords.Of(one)}"),
                Least(one.ShortCircuit.Value is { } amperes ? Known.Of(ArrayCurrent.ForWires(amperes)) : Known.Not<ElectricCurrent>(one.ShortCircuit.Because)),
                Rating(controller.Spec.Devices.StringFuse, controller.Spec.Devices.StringFuse?.Rating is { } given ? Known.Of(given) : next is { } size ? Known.Of(size) : Known.Not<ElectricCurrent>(Missing.DeviceOnSale)),
                Least(one.Cold),
                Say.Of($"at most {Most(one.SeriesFuse)}"),
            ];
        }

        yield return [Say.Of($"breaker and switch, panels to \"{name}\", beside it"), Least(controller.PanelNeed), Rating(controller.Spec.Devices.Breaker, controller.BreakerRating), Least(controller.Cold), Poles(controller)];
        yield return [Say.Of($"fuse, \"{name}\" to the bank, at the bank"), Least(controller.BankNeed), Rating(controller.Spec.Devices.BankFuse, controller.BankFuseRating), Least(controller.Absorption), Interrupts(controller)];
    }

    /// <summary>Whether a string asks for a fuse of its own: more comes back than its label allows.</summary>
    public static bool NeedsFuse(WiredController controller, WiredString one)
    {
        ArgumentNullException.ThrowIfNull(controller);
        ArgumentNullException.ThrowIfNull(one);
        return controller.ReverseInto(one).Value is { } back && one.SeriesFuse.Value is { } most && back > most;
    }

    private static string Poles(WiredController controller) => controller.Electric.Bank?.Earthed switch
    {
        Pole.None => Say.Of("not polarised, both poles"),
        null => Say.Of("not polarised; both poles unless one is earthed"),
        _ => Say.Of("not polarised, in the pole that is not earthed"),
    };

    private static string Interrupts(WiredController controller) => controller.Electric.Bank switch
    {
        { Fault.ShortCircuit: { } known } => Say.Of($"interrupts at least {LimitWords.Least(known)}; at most 178 mm from it"),
        { IsLead: true, Fault.Cranking: { } cranking } => Say.Of($"interrupts at least {LimitWords.Least(Protection.Interrupts(cranking).Main)}; at most 178 mm from it"),
        _ => Say.Of("what it must interrupt is not known; at most 178 mm from it"),
    };

    private static string Nearest<T>(Known<T> known)
        where T : struct, IQuantity => known.Value is { } value ? QuantityWords.Of(value) : Unknown;

    private static string Least<T>(Known<T> known)
        where T : struct, IQuantity => known.Value is { } value ? LimitWords.Least(value) : Unknown;

    private static string Most<T>(Known<T> known)
        where T : struct, IQuantity => known.Value is { } value ? LimitWords.Most(value) : Unknown;
}
