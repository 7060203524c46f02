using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Electrics;
using CanvasCut.Language;
using UnitsNet;

namespace CanvasCut.Takeoff;

/// <summary>What to buy for a wiring: wire by colour, fuses and breakers by rating. Panels, controllers and the bank are not bought here.</summary>
public static class WiringOrder
{
    private const string Grade = "wiring";

    /// <summary>For bends and ends, as a part; common practice, no source.</summary>
    private const double Spare = 1.1;

    /// <summary>The lines; none without a wiring.</summary>
    /// <param name="plan">The wiring.</param>
    /// <param name="sets">How many sets are made.</param>
    /// <param name="units">In which units lengths are bought.</param>
    public static ImmutableArray<OrderLine> Of(WiringPlan? plan, int sets, PrintUnits units) => plan is null
        ? []
        : [.. plan.Controllers.SelectMany(controller => Wires(controller, sets, units).Concat(Devices(controller, sets)))];

    private static IEnumerable<OrderLine> Wires(WiredController controller, int sets, PrintUnits units)
    {
        foreach (var (run, use) in new[]
        {
            (controller.PanelRun, Say.Of($"panels to controller \"{controller.Spec.Name}\"")),
            (controller.BankRun, Say.Of($"controller \"{controller.Spec.Name}\" to the bank")),
        })
        {
            if (run.Wire is not { } wire || run.Task.OneWay.Value is not { } way)
            {
                continue;
            }

            foreach (var colour in new[] { Say.Of("red"), Say.Of("black or yellow") })
            {
                yield return new(
                    new(Grade, Say.Of($"wire {WireNames.Of(wire)}, {colour}")),
                    Bought.Whole(way * (Spare * sets), units),
                    Say.Of("one way and 10 % for ends and bends"),
                    Say.Of("up to a whole metre or yard"),
                    new(use, []));
            }
        }
    }

    private static IEnumerable<OrderLine> Devices(WiredController controller, int sets)
    {
        var devices = controller.Spec.Devices;
        if (devices.Breaker is null && controller.BreakerRating.Value is { } breaker)
        {
            yield return Device(Say.Of($"breaker {QuantityWords.Of(breaker)}, direct current of at least {Volts(controller.Cold)}, not polarised"), sets, Say.Of($"panels to controller \"{controller.Spec.Name}\""));
        }

        if (devices.BankFuse is null && controller.BankFuseRating.Value is { } fuse)
        {
            yield return Device(Say.Of($"fuse {QuantityWords.Of(fuse)} with holder, direct current of at least {Volts(controller.Absorption)}{Interrupts(controller.Electric.Bank)}"), sets, Say.Of($"controller \"{controller.Spec.Name}\" to the bank"));
        }

        var asking = controller.Strings.Count(one => devices.StringFuse is null && controller.ReverseInto(one).Value is { } back && one.SeriesFuse.Value is { } most && back > most);
        if (asking > 0 && controller.Strings[0].ShortCircuit.Value is { } isc && Protection.Next(ArrayCurrent.ForWires(isc), controller.Electric.Around.Fuses) is { } size)
        {
            yield return Device(Say.Of($"fuse {QuantityWords.Of(size)} with holder, direct current of at least {Volts(controller.Cold)}"), asking * sets, Say.Of($"each string of controller \"{controller.Spec.Name}\""));
        }
    }

    private static OrderLine Device(string name, int count, string use) => new(new(Grade, name), Bought.InPacks(count, 1), string.Empty, string.Empty, new(use, []));

    private static string Volts(Known<ElectricPotential> volts) => volts.Value is { } known ? LimitWords.Least(known) : Say.Of("the highest voltage it meets, which is not known");

    private static string Interrupts(BankSpec? bank) => bank switch
    {
        { Fault.ShortCircuit: { } known } => Say.Of($", interrupts at least {LimitWords.Least(known)}"),
        { IsLead: true, Fault.Cranking: { } cranking } => Say.Of($", interrupts at least {LimitWords.Least(Protection.Interrupts(cranking).Main)}"),
        _ => string.Empty,
    };
}
