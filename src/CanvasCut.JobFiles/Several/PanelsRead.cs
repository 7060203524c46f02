using System.Collections.Immutable;
using CanvasCut.Design;

namespace CanvasCut.JobFiles;

/// <summary>One panel of a file, with the shared tables as they are for it.</summary>
internal sealed record PanelRead(JobValues Values, ImmutableArray<DefaultUsed> Defaults, SupplyChoice Supplies)
{
    /// <summary>Where it stands in the list; null for the only panel of a file.</summary>
    public PanelView? View { get; init; }

    /// <summary>Its name; empty for the only panel of a file.</summary>
    public string Name => View?.TextOf("name") ?? string.Empty;

    /// <summary>Its name and those of the panels that share its carrier.</summary>
    public IEnumerable<MountingName> Names => On.Select(panel => new MountingName(panel.Name)).Prepend(new(Name));

    /// <summary>The panels that share its carrier, in the order of the file.</summary>
    public ImmutableArray<PanelRead> On { get; init; } = [];

    /// <summary>The job of its carrier.</summary>
    public CarrierJob Build()
    {
        var defaults = Defaults.Concat(On.SelectMany(panel => panel.Defaults)).Where(Concerns).Distinct().OrderBy(used => KnownFields.OrderOf(used.Field));
        return JobBuilder.Build(Values, Supplies, [.. defaults], Row) with { Mounting = new(Name) };
    }

    /// <summary>How the panels on its carrier lie; null where it is alone.</summary>
    private PanelRow? Row => Values.Row is { } row
        ? new(row.Axis, new(Name), [.. On.Select(panel => new RowPanel(new(panel.Name), PanelBuilder.Build(new(panel.Values)), panel.Values.Length("panel.gap")!.Value))])
        : null;

    /// <summary>What lies between carriers is no matter where there is one.</summary>
    private bool Concerns(DefaultUsed used) => MountFields.Concerns(used.Field, Values) && ElectricFields.Concerns(used.Field, Values) && CarrierFields.Concerns(used.Field, Values) && (View is not null || !used.Field.StartsWith("limits.between_", StringComparison.Ordinal));
}

/// <summary>All panels of a file.</summary>
/// <param name="Panels">Those that are no twins, in its order.</param>
/// <param name="Twins">The twins.</param>
/// <param name="Head">Values from which the head of the file can be told.</param>
internal sealed record PanelsRead(IReadOnlyList<PanelRead> Panels, ImmutableArray<MirroredTwin> Twins, JobValues? Head)
{
    /// <summary>What the panels of a mirrored carrier are called.</summary>
    private IEnumerable<MountingName> NamesOf(MirroredTwin twin) =>
        Panels.Where(panel => twin.Of == new MountingName(panel.Name)).SelectMany(panel => panel.Names).Select(name => Mirroring.NameOf(name, twin.Of, twin.Name));

    /// <summary>The jobs, once nothing is wrong any more.</summary>
    public TopJob Build() => new([.. Panels.Select(panel => panel.Build())], Twins, Head?.Quantity<int>("copies") ?? 1) { Electric = Head is null ? null : ElectricBuilder.Build(new(Head), [.. Panels.SelectMany(panel => panel.Names), .. Twins.SelectMany(NamesOf)]) };
}
