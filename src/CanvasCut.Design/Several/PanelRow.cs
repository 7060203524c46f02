using System.Collections.Immutable;
using UnitsNet;

namespace CanvasCut.Design;

/// <summary>Along which way several panels lie beside each other on one carrier.</summary>
public enum RowAxis
{
    /// <summary>Across the boat, from port to starboard.</summary>
    Athwart,

    /// <summary>Along the boat, from forward to aft.</summary>
    ForeAft,
}

/// <summary>A panel that lies with others on one carrier.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Panel">The panel.</param>
/// <param name="Gap">Between it and the one before it; nothing for the first.</param>
public sealed record RowPanel(MountingName Name, SolarPanel Panel, Length Gap);

/// <summary>How several panels lie on one carrier: in a row, middle by middle, with gaps between.</summary>
/// <param name="Axis">Which way the row runs.</param>
/// <param name="First">The name of the first of them, which is <see cref="CarrierJob.Panel"/>: the port one, or the forward one.</param>
/// <param name="After">The others in their order; at least one.</param>
/// <remarks>
/// The carrier's border lies round the whole row. A panel that does not say which way its long side lies, lies as the first one does.
/// The gap is cloth alone, which bends like a hinge: each panel bends over its own length.
/// </remarks>
public sealed record PanelRow(RowAxis Axis, MountingName First, ImmutableArray<RowPanel> After)
{
    /// <summary>The row of the mirror image: one across the boat runs the other way.</summary>
    /// <param name="first">The panel that begins this row, as mirrored.</param>
    /// <param name="mirrored">Makes the mirror image of a panel, and names it.</param>
    internal ImmutableArray<RowPanel> Mirrored(SolarPanel first, Func<RowPanel, RowPanel> mirrored)
    {
        ImmutableArray<RowPanel> all = [new(First, first, Length.Zero), .. After];
        if (Axis == RowAxis.ForeAft)
        {
            return [.. all.Select(mirrored)];
        }

        // The gap that lay before a panel lies after it in the mirror.
        return [.. all.Reverse().Select((panel, i) => mirrored(panel with { Gap = i == 0 ? Length.Zero : all[^i].Gap }))];
    }
}

/// <summary>Where a panel of a row lies in it.</summary>
/// <param name="Name">Its name; that of a top's only mounting where a carrier has one panel.</param>
/// <param name="Panel">The panel the way it lies.</param>
/// <param name="FromPort">From the row's port edge to the panel's.</param>
/// <param name="FromForward">From the row's forward edge to the panel's.</param>
public sealed record RowSeat(MountingName Name, MountedPanel Panel, Length FromPort, Length FromForward);

/// <summary>The panels of a carrier beside each other; one panel is a row of one.</summary>
/// <param name="Athwart">The row's size across the boat.</param>
/// <param name="ForeAft">Its size along the boat.</param>
/// <param name="Seats">The panels in their order.</param>
public sealed record RowLayout(Length Athwart, Length ForeAft, ImmutableArray<RowSeat> Seats)
{
    /// <summary>Lays the panels of a job.</summary>
    /// <param name="job">The job.</param>
    /// <param name="way">Which way the long side lies of the panels that do not say it.</param>
    public static RowLayout Of(CarrierJob job, LongSide way)
    {
        ArgumentNullException.ThrowIfNull(job);
        var isAthwart = job.Row?.Axis != RowAxis.ForeAft;
        var lying = job.Panels.Select((each, i) => (each.Name, each.Gap, Panel: MountedPanel.Of(each.Panel, i == 0 ? way : each.Panel.LongSide ?? way))).ToList();
        var along = Length.Zero;
        var across = lying.Select(each => isAthwart ? each.Panel.ForeAft : each.Panel.Athwart).Aggregate(UnitMath.Max);
        List<RowSeat> seats = [];
        foreach (var (name, gap, panel) in lying)
        {
            var from = along + gap;
            var beside = (across - (isAthwart ? panel.ForeAft : panel.Athwart)) / 2;
            seats.Add(isAthwart ? new(name, panel, from, beside) : new(name, panel, beside, from));
            along = from + (isAthwart ? panel.Athwart : panel.ForeAft);
        }

        return isAthwart ? new(along, across, [.. seats]) : new(across, along, [.. seats]);
    }
}
