using System.Collections.Immutable;
using CanvasCut.Design;
using UnitsNet;

namespace CanvasCut.JobFiles;

/// <summary>One panel of a file, with the shared tables as they are for it.</summary>
internal sealed record PanelRead(JobValues Values, ImmutableArray<DefaultUsed> Defaults, SupplyChoice Supplies)
{
    /// <summary>Where it stands in the list; null for the only panel of a file.</summary>
    public PanelView? View { get; init; }

    /// <summary>The name of the panel on whose carrier it lies; null when it has a carrier of its own.</summary>
    public string? On => View?.TextOf("on");

    /// <summary>Its name; empty for the only panel of a file.</summary>
    public string Name => View?.TextOf("name") ?? string.Empty;

    /// <summary>The job of its carrier.</summary>
    public CarrierJob Build()
    {
        var job = JobBuilder.Build(Values, Supplies, [.. Defaults.Where(Concerns)]);
        return job with { Mounting = new(Name) };
    }

    /// <summary>What lies between carriers is no matter where there is one.</summary>
    private bool Concerns(DefaultUsed used) => MountFields.Concerns(used.Field, Values) && (View is not null || used.Field != "limits.between_carriers");

    /// <summary>The panel alone, which lies on another's carrier.</summary>
    public RowPanel BuildInRow()
    {
        var beside = Values.Text("panel.beside") is { } word ? GivenValues.WordOf<Side>(word) : Side.Starboard;
        return new(Name, PanelBuilder.Build(new(Values)), Values.Length("panel.gap") ?? Length.Zero, beside);
    }
}

/// <summary>All panels of a file.</summary>
/// <param name="Panels">Those that are no twins, in its order.</param>
/// <param name="Twins">The twins.</param>
/// <param name="Head">Values from which the head of the file can be told.</param>
internal sealed record PanelsRead(IReadOnlyList<PanelRead> Panels, ImmutableArray<MirroredTwin> Twins, JobValues? Head)
{
    /// <summary>The jobs, once nothing is wrong any more.</summary>
    public TopJob Build()
    {
        var jobs = Panels.Where(panel => panel.On is null)
            .Select(panel => panel.Build() with { Row = [.. Panels.Where(other => other.On == panel.Name && panel.Name.Length > 0).Select(other => other.BuildInRow())] });
        return new([.. jobs], Twins, Head?.Quantity<int>("copies") ?? 1);
    }
}
