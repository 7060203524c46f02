using UnitsNet;

namespace CanvasCut.Design;

/// <summary>Mirror images about the boat's centreline: what was to port lies to starboard.</summary>
public static class Mirroring
{
    /// <summary>The values of the sides, port and starboard exchanged.</summary>
    public static Sides<T> Mirrored<T>(this Sides<T> sides)
    {
        ArgumentNullException.ThrowIfNull(sides);
        return sides with { Port = sides.Starboard, Starboard = sides.Port };
    }

    /// <summary>A place on the other side of the centreline.</summary>
    public static TopPlace Mirrored(this TopPlace place)
    {
        ArgumentNullException.ThrowIfNull(place);
        return place with { Offset = -place.Offset };
    }

    /// <summary>What lies on a panel, mirrored with it.</summary>
    /// <param name="fittings">As mounted.</param>
    /// <param name="athwart">The panel's size across the boat.</param>
    public static PanelFittings Mirrored(this PanelFittings fittings, Length athwart)
    {
        ArgumentNullException.ThrowIfNull(fittings);
        return fittings with
        {
            DeadBorder = fittings.DeadBorder.Mirrored(),
            JunctionBox = fittings.JunctionBox is { } box ? box with { FromPort = athwart - box.FromPort - box.Athwart } : null,
            CableExit = fittings.CableExit is { } exit ? exit with { FromPort = athwart - exit.FromPort } : null,
        };
    }

    /// <summary>What holds the edges, port and starboard exchanged.</summary>
    public static MountSpec Mirrored(this MountSpec mount)
    {
        ArgumentNullException.ThrowIfNull(mount);
        return mount with { Port = mount.Starboard, Starboard = mount.Port };
    }

    /// <summary>Zippers that start at the other side, so that both carriers are opened from outboard, or both from inboard.</summary>
    public static ZipperSpec Mirrored(this ZipperSpec zipper)
    {
        ArgumentNullException.ThrowIfNull(zipper);
        return zipper with { Start = Mirrored(zipper.Start) };
    }

    /// <summary>The weather strips, port and starboard exchanged.</summary>
    public static WeatherStripSpec Mirrored(this WeatherStripSpec strip)
    {
        ArgumentNullException.ThrowIfNull(strip);
        return strip with { Edges = [.. strip.Edges.Select(Mirrored)], SewnTo = strip.SewnTo.Mirrored() };
    }

    /// <summary>The mirror image of a mounting whose panel lies a known way; the panels of a row exchange their places.</summary>
    /// <param name="job">What is mirrored.</param>
    /// <param name="way">How its panel lies; of a row the first, and those that do not say it themselves.</param>
    /// <param name="name">What the image is called.</param>
    public static CarrierJob Mirrored(this CarrierJob job, LongSide way, MountingName name)
    {
        ArgumentNullException.ThrowIfNull(job);
        var carrier = job.Carrier;
        var panels = job.Row?.Mirrored(job.Panel, each => each with { Name = NameOf(each.Name, job.Mounting, name), Panel = Mirrored(each.Panel, each.Name == job.Row.First ? way : each.Panel.LongSide ?? way) });
        return job with
        {
            Mounting = name,
            Panel = panels is { } row ? row[0].Panel : Mirrored(job.Panel, way),
            Row = panels is { } all ? new(job.Row!.Axis, all[0].Name, [.. all.Skip(1)]) : null,
            Carrier = carrier with
            {
                Border = carrier.Border.Mirrored(),
                Edges = carrier.Edges.Mirrored(),
                Position = carrier.Position?.Mirrored(),
                Room = carrier.Room with { Kept = carrier.Room.Kept.Mirrored() },
            },
            Fastenings = job.Fastenings with { Mount = job.Fastenings.Mount.Mirrored(), Zipper = job.Fastenings.Zipper.Mirrored(), WeatherStrip = job.Fastenings.WeatherStrip.Mirrored() },
        };
    }

    /// <summary>What the mirror image of a panel is called: one that gave its carrier the name, as the mirrored carrier; another by both names.</summary>
    /// <param name="panel">The panel's own name.</param>
    /// <param name="mounting">What its carrier is called.</param>
    /// <param name="twin">What the mirrored carrier is called.</param>
    public static MountingName NameOf(MountingName panel, MountingName mounting, MountingName twin) => panel == mounting ? twin : new($"{twin}-{panel}");

    private static Side Mirrored(Side side) => side switch
    {
        Side.Port => Side.Starboard,
        Side.Starboard => Side.Port,
        _ => side,
    };

    private static SolarPanel Mirrored(SolarPanel panel, LongSide way)
    {
        var lies = MountedPanel.Of(panel, way);
        return panel with { LongSide = way, Fittings = lies.Fittings.Mirrored(lies.Athwart) };
    }
}
