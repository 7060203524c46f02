using System.Collections.Immutable;
using CanvasCut.Design;
using UnitsNet;

namespace CanvasCut.JobFiles;

/// <summary>Makes the wiring.</summary>
internal static class ElectricBuilder
{
    private const string Wires = "electric.wires";
    private const string BankTable = "electric.bank";

    /// <summary>The words of families that are not their names in the model.</summary>
    public static WireFamily FamilyOf(string word) => word switch
    {
        "awg" => WireFamily.Awg,
        "sae" => WireFamily.Sae,
        "mm2-tinned" => WireFamily.MetricTinned,
        _ => WireFamily.MetricPlain,
    };

    /// <summary>The wiring; null when the job has no such table.</summary>
    /// <param name="given">The values.</param>
    /// <param name="panels">The panels of the file; one without a name where there is one.</param>
    public static ElectricSpec? Build(GivenValues given, ImmutableArray<MountingName> panels)
    {
        var values = given.Values;
        if (!values.IsWritten(ElectricFields.Table))
        {
            return null;
        }

        ImmutableArray<ControllerSpec> controllers = [.. values.Tables("electric.controller").Select(path => Controller(given, path))];
        ImmutableArray<StringSpec> strings = [.. values.Tables("electric.string").Select(path => String(values, path, controllers))];
        return new(
            values.Quantity<Temperature>("electric.coldest_air"),
            values.IsWritten(BankTable) ? Bank(given) : null,
            controllers,
            strings.IsEmpty && controllers.Length == 1 && panels.Length == 1 ? [new(controllers[0].Name, panels)] : strings,
            WiresOf(given),
            Around(given))
        {
            Sun = SunBuilder.Build(given),
            Loads = [.. values.Tables("electric.load").Select(path => SunBuilder.Load(given, path))],
        };
    }

    private static BankSpec Bank(GivenValues given)
    {
        var values = given.Values;
        return new(
            (ElectricPotential)QuantityKinds.Voltage.Parse(given.Text($"{BankTable}.nominal"))!,
            given.Word<BankKind>($"{BankTable}.kind"),
            new(Volts(values, $"{BankTable}.absorption"), Volts(values, $"{BankTable}.float"), Volts(values, $"{BankTable}.lowest")),
            new(values.Quantity<ElectricCharge>($"{BankTable}.capacity"), Part(values, $"{BankTable}.usable")),
            new(Amperes(values, $"{BankTable}.cranking"), Amperes(values, $"{BankTable}.short_current")),
            PoleOf(values, $"{BankTable}.earthed"));
    }

    private static ControllerSpec Controller(GivenValues given, string path)
    {
        var values = given.Values;
        return new(
            given.Text($"{path}.name"),
            given.Word<ControllerKind>($"{path}.kind"),
            new(Volts(values, $"{path}.largest_voltage"), Amperes(values, $"{path}.largest_current")),
            new(Amperes(values, $"{path}.rated_output"), Part(values, $"{path}.efficiency")!.Value, given.Quantity<bool>($"{path}.sense_wires")),
            PoleOf(values, $"{path}.joins"),
            new(values.Length($"{path}.panel_run"), values.Length($"{path}.bank_run"), values.Text($"{path}.panel_wire"), values.Text($"{path}.bank_wire")),
            new(Device(values, $"{path}.breaker"), Device(values, $"{path}.bank_fuse"), Device(values, $"{path}.string_fuse")));
    }

    private static DeviceSpec? Device(JobValues values, string path) => values.IsWritten(path)
        ? new(Amperes(values, $"{path}.rating"), Volts(values, $"{path}.voltage"))
        {
            Interrupts = Amperes(values, $"{path}.interrupts"),
            FromBank = values.Length($"{path}.from_bank"),
            BreaksBoth = values.Text($"{path}.poles") is { } poles ? poles == "both" : null,
            IsPolarised = values.Quantity<bool>($"{path}.one_way"),
        }
        : null;

    private static StringSpec String(JobValues values, string path, ImmutableArray<ControllerSpec> controllers) => new(
        values.Text($"{path}.controller") ?? controllers[0].Name,
        [.. values.Words($"{path}.panels")!.Value.Select(name => new MountingName(name))]);

    private static WireSpec WiresOf(GivenValues given) => new(
        given.Values.Text($"{Wires}.family") is { } family ? FamilyOf(family) : null,
        Enum.Parse<Insulation>("C" + given.Text($"{Wires}.insulation").Replace(" C", string.Empty, StringComparison.Ordinal), ignoreCase: false),
        given.Quantity<bool>($"{Wires}.sheathed"),
        given.Quantity<int>($"{Wires}.together"),
        SideOf(given, "panel"),
        SideOf(given, "bank"));

    private static WireSide SideOf(GivenValues given, string side) => new(
        given.Quantity<Temperature>($"{Wires}.{side}_air"),
        given.Quantity<Temperature>($"{Wires}.{side}_copper"),
        Part(given.Values, $"{Wires}.{side}_drop")!.Value);

    private static WiringAround Around(GivenValues given) => new(
        given.Word<RatingSeries>("electric.fuses"),
        given.Values.Text("electric.connectors") is { } state ? GivenValues.WordOf<ConnectorState>(state) : null,
        given.Values.Length("electric.compass"),
        given.Quantity<bool>("electric.twisted"));

    private static Pole? PoleOf(JobValues values, string path) => values.Text(path) is { } word ? GivenValues.WordOf<Pole>(word) : null;

    private static ElectricPotential? Volts(JobValues values, string path) => values.Quantity<ElectricPotential>(path);

    private static ElectricCurrent? Amperes(JobValues values, string path) => values.Quantity<ElectricCurrent>(path);

    private static Ratio? Part(JobValues values, string path) => values.Quantity<double>(path) is { } part ? Ratio.FromDecimalFractions(part) : null;
}
