using System.Collections.Immutable;
using CanvasCut.Design;
using UnitsNet;

namespace CanvasCut.Electrics;

/// <summary>How the panels of a top are wired, with all that follows for voltages, currents, wires and devices.</summary>
/// <param name="Spec">What the job says.</param>
/// <param name="Panels">The panels, in the order of the job.</param>
/// <param name="Controllers">The controllers with their strings, in the order of the job.</param>
/// <param name="Heat">How cold and how hot it is.</param>
public sealed record WiringPlan(ElectricSpec Spec, ImmutableArray<WiredPanel> Panels, ImmutableArray<WiredController> Controllers, WiringHeat Heat)
{
    /// <summary>The full sun for which cells are hot.</summary>
    private static readonly Irradiance FullSun = Irradiance.FromWattsPerSquareMeter(1000);

    /// <summary>All strings.</summary>
    public IEnumerable<WiredString> Strings => Controllers.SelectMany(controller => controller.Strings);

    /// <summary>The plan of a job.</summary>
    /// <param name="spec">What the job says.</param>
    /// <param name="panels">Its panels.</param>
    /// <param name="heat">A hot day.</param>
    public static WiringPlan Of(ElectricSpec spec, ImmutableArray<WiredPanel> panels, HeatSpec heat)
    {
        WiringHeat reckoned = new(spec.ColdestAir, CellTemperature.BlockedBack(FullSun, heat.Air, heat.Wind));
        var byName = panels.ToDictionary(panel => panel.Name);
        ImmutableArray<(string Controller, WiredString String)> strings =
            [.. spec.Strings.Select((each, i) => (each.Controller, new WiredString(i + 1, [.. each.Panels.Select(name => byName[name])], reckoned)))];
        return new(
            spec,
            panels,
            [.. spec.Controllers.Select(controller => new WiredController(
                controller,
                [.. strings.Where(each => string.Equals(each.Controller, controller.Name, StringComparison.Ordinal)).Select(each => each.String)],
                spec))],
            reckoned);
    }
}
