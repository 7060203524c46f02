using System.Collections.Immutable;

namespace CanvasCut.Checks;

/// <summary>The stable names of the checks; docs/checks.md tells of each.</summary>
public static class CheckCodes
{
    /// <summary>The mounted outline and the top's edges.</summary>
    public const string Margin = "fit.margin";

    /// <summary>The mounted outline and a keep-out.</summary>
    public const string KeepOut = "fit.keep-out";

    /// <summary>A part and what is on the top already.</summary>
    public const string Fixture = "fit.fixed";

    /// <summary>What is mounted and the boom that swings over it.</summary>
    public const string Boom = "fit.boom";

    /// <summary>The cells and the shade of the boom.</summary>
    public const string BoomShade = "fit.boom-shade";

    /// <summary>Two carriers with all that holds them.</summary>
    public const string Between = "fit.between";

    /// <summary>The gap between two panels on one carrier.</summary>
    public const string RowGap = "row.gap";

    /// <summary>The pockets of two carriers and the machine's foot.</summary>
    public const string BetweenPockets = "between.pockets";

    /// <summary>A strip laid back and another carrier's panel.</summary>
    public const string BetweenStrips = "between.strips";

    /// <summary>Where a zipper starts and another carrier.</summary>
    public const string BetweenPulls = "between.pulls";

    /// <summary>An edge that is closed by hand and another carrier.</summary>
    public const string BetweenHands = "between.hands";

    /// <summary>Where a cable leaves and another carrier.</summary>
    public const string BetweenCables = "between.cables";

    /// <summary>The panel and the bent sides of the frame.</summary>
    public const string BentSide = "fit.bent-side";

    /// <summary>A tube and a zipper.</summary>
    public const string TubeZipper = "tube.zipper";

    /// <summary>A tube and what holds an edge in the place of a zipper.</summary>
    public const string TubeMount = "tube.mount";

    /// <summary>Fasteners and the pitch that is usual.</summary>
    public const string MountPitch = "mount.pitch";

    /// <summary>Neighbouring fasteners and the tool that sets them.</summary>
    public const string MountRoom = "mount.room";

    /// <summary>A fastener or a tape and the edge of its flap.</summary>
    public const string MountEdge = "mount.edge";

    /// <summary>A fastener and the pockets.</summary>
    public const string MountReach = "mount.reach";

    /// <summary>A sleeve's rod and the bend it lies in.</summary>
    public const string MountRod = "mount.rod";

    /// <summary>How many movements it takes to get the carrier off.</summary>
    public const string MountRemoval = "mount.removal";

    /// <summary>What a fastener or hook-and-loop bears in the wind.</summary>
    public const string WindFastener = "wind.fastener";

    /// <summary>A tube and an edge of the carrier.</summary>
    public const string TubeEdge = "tube.edge";

    /// <summary>A tube and a pocket.</summary>
    public const string TubePocket = "tube.pocket";

    /// <summary>A tube and a strip's seam.</summary>
    public const string TubeStrip = "tube.strip";

    /// <summary>The chafe patch along a tube that is no bow.</summary>
    public const string TubePatch = "tube.patch";

    /// <summary>A tube and the junction box.</summary>
    public const string TubeBox = "tube.box";

    /// <summary>A tube and the cells.</summary>
    public const string TubeCells = "tube.cells";

    /// <summary>The arc across and the panel's smallest radius.</summary>
    public const string BendAthwart = "bend.athwart";

    /// <summary>The bend over and between the tubes and the panel's smallest radius.</summary>
    public const string BendAlong = "bend.along";

    /// <summary>A flat panel on a top curved both ways.</summary>
    public const string BendDouble = "bend.double";

    /// <summary>A felled seam and the cells.</summary>
    public const string SupportSeam = "support.seam";

    /// <summary>A zipper's teeth and the cells.</summary>
    public const string SupportZipper = "support.zipper";

    /// <summary>Rows of stitches and the cells.</summary>
    public const string Stitch = "support.stitch";

    /// <summary>The ends of a zipper and the cells.</summary>
    public const string Fastener = "support.fastener";

    /// <summary>Cloth between two bows with nothing under it.</summary>
    public const string Span = "support.span";

    /// <summary>The carrier's way from zipper to zipper.</summary>
    public const string ClosingPath = "closing.path";

    /// <summary>The same after shrinking.</summary>
    public const string ClosingShrunk = "closing.shrunk";

    /// <summary>The same after stretching.</summary>
    public const string ClosingStretched = "closing.stretched";

    /// <summary>The two halves of a zipper.</summary>
    public const string ClosingMatch = "closing.match";

    /// <summary>A pocket and the cells.</summary>
    public const string PocketShade = "pocket.shade";

    /// <summary>Whether a pocket covers enough to hold.</summary>
    public const string PocketHold = "pocket.hold";

    /// <summary>A pocket's innermost row and what lies in it.</summary>
    public const string PocketBeside = "pocket.beside";

    /// <summary>The bend that slips the last corner into its pocket and the panel's smallest radius.</summary>
    public const string PocketFitting = "pocket.fitting";

    /// <summary>A pocket and the zipper's end.</summary>
    public const string PocketZipper = "pocket.zipper";

    /// <summary>Two pockets on one edge.</summary>
    public const string PocketRoom = "pocket.room";

    /// <summary>A pocket and the hem of its mouth.</summary>
    public const string PocketMouth = "pocket.mouth";

    /// <summary>A strip and the cells.</summary>
    public const string StripShade = "strip.shade";

    /// <summary>A strip that is sewn to the carrier, and the room it has there.</summary>
    public const string StripSeam = "strip.seam";

    /// <summary>What holds a weather strip's free edge, and what it must keep clear of.</summary>
    public const string StripHold = "strip.hold";

    /// <summary>Whether water runs in under a weather strip's free edge.</summary>
    public const string StripWater = "strip.water";

    /// <summary>Whether water runs in at a weather strip's open ends.</summary>
    public const string StripEnds = "strip.ends";

    /// <summary>The junction box and what lies over the panel.</summary>
    public const string BoxCover = "box.cover";

    /// <summary>A junction box at the panel's back and the carrier under it.</summary>
    public const string BoxBack = "box.back";

    /// <summary>The cable's hole and what lies round it.</summary>
    public const string CableClear = "cable.clear";

    /// <summary>The cable's hole and the panel bonded over it.</summary>
    public const string CableReach = "cable.reach";

    /// <summary>What is sewn and a later, larger panel.</summary>
    public const string KeepRoom = "room.later-panel";

    /// <summary>Where a zipper starts and the pocket beside it.</summary>
    public const string ZipperStart = "zipper.start";

    /// <summary>The zipper wanted and the lengths on sale.</summary>
    public const string ZipperStock = "zipper.stock";

    /// <summary>A piece and the roll's width.</summary>
    public const string ClothWidth = "cloth.width";

    /// <summary>A seam's thickest crossing and what a machine sews through.</summary>
    public const string SeamLayers = "seam.layers";

    /// <summary>A piece and the plotter's roll.</summary>
    public const string PlotRoll = "plot.roll";

    /// <summary>The wind and the zippers' chains.</summary>
    public const string WindZipper = "wind.zipper";

    /// <summary>The wind and the zippers' ends.</summary>
    public const string WindZipperEnd = "wind.zipper-end";

    /// <summary>The wind and the lugs of a rod's sleeves.</summary>
    public const string WindSleeve = "wind.sleeve";

    /// <summary>The wind and the pockets.</summary>
    public const string WindPocket = "wind.pocket";

    /// <summary>The wind and a row of stitches.</summary>
    public const string WindSeam = "wind.seam";

    /// <summary>The wind and the adhesive.</summary>
    public const string WindBond = "wind.bond";

    /// <summary>The wind at which the panel comes off.</summary>
    public const string WindOff = "wind.off";

    /// <summary>What the panel is bonded to.</summary>
    public const string BondingOnto = "bonding.onto";

    /// <summary>The panel's dead border.</summary>
    public const string BondBorder = "bond.dead-border";

    /// <summary>The rows that hold what the panel is bonded to, and the cells.</summary>
    public const string BondRows = "bond.rows";

    /// <summary>The step at the edges of strips under cells.</summary>
    public const string BondStep = "bond.step";

    /// <summary>The gaps between the strips.</summary>
    public const string BondGap = "bond.gap";

    /// <summary>The tape that was given and the panel's edge.</summary>
    public const string BondLength = "bond.length";

    /// <summary>The surface on the day of bonding.</summary>
    public const string BondingSurface = "bonding.surface";

    /// <summary>The dew point on the day of bonding.</summary>
    public const string BondingDew = "bonding.dew";

    /// <summary>The hours after bonding.</summary>
    public const string BondingClear = "bonding.clear";

    /// <summary>The cells' heat with a free back.</summary>
    public const string HeatFree = "heat.free-back";

    /// <summary>The cells' heat with a blocked back.</summary>
    public const string HeatBlocked = "heat.blocked-back";

    /// <summary>How the panel's corners slope.</summary>
    public const string SlopeCorner = "slope.corner";

    /// <summary>Where water goes.</summary>
    public const string SlopeDrain = "slope.drain";

    /// <summary>Whether the top is worth sewing.</summary>
    public const string TopCondition = "top.condition";

    /// <summary>A panel's label and what panels are like.</summary>
    public const string ElectricLabel = "electric.label";

    /// <summary>A string in the cold and what the controller stands.</summary>
    public const string ElectricCold = "electric.cold";

    /// <summary>A string in the cold and what its panels stand.</summary>
    public const string ElectricSystemVoltage = "electric.system-voltage";

    /// <summary>A string in the cold and wet hands.</summary>
    public const string ElectricTouch = "electric.touch";

    /// <summary>A string in the heat and what the controller needs to charge.</summary>
    public const string ElectricHot = "electric.hot";

    /// <summary>The current of all strings and what the controller takes.</summary>
    public const string ElectricCurrent = "electric.current";

    /// <summary>What a fault pushes back into a string, and its fuse.</summary>
    public const string ElectricReverse = "electric.reverse";

    /// <summary>Unlike panels in series or in parallel.</summary>
    public const string ElectricUnlike = "electric.unlike";

    /// <summary>Bypass diodes of panels in series.</summary>
    public const string ElectricDiodes = "electric.diodes";

    /// <summary>A wire and the fuse or breaker that guards it.</summary>
    public const string ElectricAmpacity = "electric.ampacity";

    /// <summary>The voltage that a run of wires loses.</summary>
    public const string ElectricDrop = "electric.drop";

    /// <summary>The breaker on the panels' side and the current it must carry.</summary>
    public const string ElectricBreaker = "electric.breaker";

    /// <summary>That breaker and the voltage it must break.</summary>
    public const string ElectricBreakerVoltage = "electric.breaker-voltage";

    /// <summary>The fuse at the bank and the current it must carry.</summary>
    public const string ElectricBankFuse = "electric.bank-fuse";

    /// <summary>That fuse and the bank's voltage.</summary>
    public const string ElectricBankFuseVoltage = "electric.bank-fuse-voltage";

    /// <summary>That fuse and what the bank gives into a short circuit.</summary>
    public const string ElectricInterrupt = "electric.interrupt";

    /// <summary>How far that fuse is from the bank.</summary>
    public const string ElectricFusePlace = "electric.fuse-place";

    /// <summary>Poles that are joined inside, earthed and broken.</summary>
    public const string ElectricPolarity = "electric.polarity";

    /// <summary>The halves of connectors.</summary>
    public const string ElectricConnectors = "electric.connectors";

    /// <summary>What the wires do to a compass.</summary>
    public const string ElectricCompass = "electric.compass";

    /// <summary>All of them, in the order of the report.</summary>
    public static ImmutableArray<string> All { get; } =
    [
        Margin, KeepOut, Fixture, Boom, BoomShade, Between, BetweenPockets, BetweenStrips, BetweenPulls, BetweenHands, BetweenCables, BentSide, RowGap, TubeZipper, TubeMount, TubeEdge, TubePocket, TubeStrip, TubeBox, TubeCells, TubePatch, BendAthwart,
        BendAlong, BendDouble, SupportSeam, SupportZipper, Stitch, Fastener, Span, ClosingPath, ClosingShrunk, ClosingStretched,
        ClosingMatch,
        PocketShade, PocketHold, PocketMouth, PocketBeside, PocketFitting, PocketZipper, PocketRoom, StripShade, StripSeam, StripHold, StripWater, StripEnds, BoxCover, BoxBack, CableClear, CableReach, KeepRoom,
        MountPitch, MountRoom, MountEdge, MountReach, MountRod, MountRemoval, ZipperStart, ZipperStock, ClothWidth,
        SeamLayers, PlotRoll,
        WindZipper, WindZipperEnd, WindFastener, WindSleeve, WindPocket, WindSeam, WindBond, WindOff,
        BondBorder, BondRows, BondStep, BondGap, BondLength, BondingOnto, BondingSurface, BondingDew, BondingClear, HeatFree, HeatBlocked, SlopeCorner, SlopeDrain,
        TopCondition,
        ElectricLabel, ElectricCold, ElectricSystemVoltage, ElectricTouch, ElectricHot, ElectricCurrent, ElectricReverse, ElectricUnlike, ElectricDiodes,
        ElectricAmpacity, ElectricDrop, ElectricBreaker, ElectricBreakerVoltage, ElectricBankFuse, ElectricBankFuseVoltage,
        ElectricInterrupt, ElectricFusePlace, ElectricPolarity, ElectricConnectors, ElectricCompass,
    ];
}
