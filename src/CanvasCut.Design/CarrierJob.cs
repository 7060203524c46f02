using System.Collections.Immutable;
using UnitsNet;

namespace CanvasCut.Design;

/// <summary>Everything that a job file says of one carrier and of the top it goes on, with the defaults filled in.</summary>
/// <param name="Name">What the user calls the job.</param>
/// <param name="Units">Which units are printed.</param>
/// <param name="Top">The top.</param>
/// <param name="Panel">The panel; of several the first.</param>
/// <param name="Carrier">The carrier wanted.</param>
/// <param name="Fastenings">What holds it on the top.</param>
/// <param name="Workshop">Cloth, sewing, paper and plotter.</param>
/// <param name="Limits">What the checks hold it against.</param>
/// <param name="Conditions">Wind, bonding, heat, and the state of the top.</param>
/// <param name="Work">How the work is planned.</param>
/// <param name="Care">What its care depends on.</param>
/// <param name="Defaults">The fields that were left out, in the order of docs/job-file.md.</param>
public sealed record CarrierJob(
    string Name,
    PrintUnits Units,
    TopCloth Top,
    SolarPanel Panel,
    CarrierSpec Carrier,
    Fastenings Fastenings,
    Workshop Workshop,
    LimitSpec Limits,
    Conditions Conditions,
    WorkSpec Work,
    CareSpec Care,
    ImmutableArray<DefaultUsed> Defaults)
{
    /// <summary>The radius that the panel must keep, with the factor asked for; from an assumed one when the maker's is not known.</summary>
    public Length LeastRadius => (Panel.Limits.SmallestRadius ?? PanelLimits.AssumedRadius) * Limits.BendFactor;

    /// <summary>Which of the top's mountings it is.</summary>
    public MountingName Mounting { get; init; } = MountingName.Only;

    /// <summary>How several panels lie on the carrier; null where it has one.</summary>
    public PanelRow? Row { get; init; }

    /// <summary>Which panel of its row <see cref="Panel"/> is, in the job of one of them (<see cref="OfPanel"/>).</summary>
    public MountingName PanelName { get; init; } = MountingName.Only;

    /// <summary>All panels of the carrier, from port to starboard or from forward to aft.</summary>
    public ImmutableArray<RowPanel> Panels => Row is { } row ? [new(row.First, Panel, Length.Zero), .. row.After] : [new(PanelName, Panel, Length.Zero)];

    /// <summary>The lowest wind at which the maker of one of the panels wants it off; null where none says.</summary>
    public Speed? PanelsMaxWind => Panels.Select(each => each.Panel.Limits.MaxWind).OfType<Speed>().Select(wind => (Speed?)wind).MinBy(wind => wind!.Value.MetersPerSecond);

    /// <summary>The same carrier as if one of its panels lay on it alone.</summary>
    /// <param name="index">Which panel of <see cref="Panels"/>.</param>
    public CarrierJob OfPanel(int index) => Row is null ? this : this with { Panel = Panels[index].Panel, PanelName = Panels[index].Name, Row = null };
}

/// <summary>What holds the carrier on the top.</summary>
/// <param name="Zipper">The zippers.</param>
/// <param name="Pocket">The corner pockets.</param>
/// <param name="WeatherStrip">The weather strip.</param>
/// <param name="Chafe">The chafe patches.</param>
/// <param name="Mount">What holds the edges.</param>
public sealed record Fastenings(ZipperSpec Zipper, PocketSpec Pocket, WeatherStripSpec WeatherStrip, ChafeSpec Chafe, MountSpec Mount)
{
    /// <summary>How far what holds an edge reaches under the carrier; nothing at a side that is not held.</summary>
    public Length UnderEdge(Side side) => Mount.At(side) switch
    {
        null => Length.Zero,
        MountKind.Zipper => (Zipper.Gauge.OverallWidth / 2) - Zipper.Reveal,
        _ => MountSpec.Lap,
    };

    /// <summary>From the carrier's edge out to the outer edge of all that holds it there; nothing at a side that is not held.</summary>
    public Length OuterEdge(Side side) => Mount.At(side) switch
    {
        null => Length.Zero,
        MountKind.Zipper => Zipper.OuterTapeEdge,
        MountKind.HookAndLoop => Mount.Figures.HookAndLoop.Width,
        MountKind.Sleeve => Mount.Figures.Sleeve.OuterEdge,
        MountKind.Lacing => (Mount.Figures.Eyelets.Width * 2) + Mount.Figures.LacingGap,
        { } kind => Mount.Figures.FastenersOf(kind)!.Width,
    };
}

/// <summary>What it is made of and with.</summary>
/// <param name="Cloth">The cloth.</param>
/// <param name="Sewing">Thread and stitches.</param>
/// <param name="Paper">The paper for the templates.</param>
/// <param name="Dxf">The DXF file for a shop's cutter.</param>
/// <param name="Plot">The plotter, if there is one.</param>
/// <param name="Supplies">The grades of what is bought.</param>
/// <param name="Buying">Spare and prices.</param>
public sealed record Workshop(
    ClothSpec Cloth, SewingSpec Sewing, PaperSpec Paper, DxfSpec Dxf, PlotSpec Plot, JobSupplies Supplies, BuyingSpec Buying);

/// <summary>A field that the job file left out.</summary>
/// <param name="Field">Its full name, as in zipper.setback.</param>
/// <param name="Value">What was taken instead, as it would be written in the file.</param>
/// <param name="Source">Where that value comes from.</param>
public sealed record DefaultUsed(string Field, string Value, string Source);
