using UnitsNet;

namespace CanvasCut.Design;

/// <summary>How much room a corner pocket leaves beside what lies in it.</summary>
/// <remarks>A carrier does not stop at the fold of a pocket's leg but at the innermost of the rows that hold it to the top.</remarks>
public static class PocketRoom
{
    /// <summary>
    /// Between the innermost row and the carrier as it is sewn, or what holds its edge: as much as from a row to a fold.
    /// Common practice, no source.
    /// </summary>
    public static readonly Length Least = StitchRows.FromFold;

    /// <summary>From the fold of a leg in to the innermost row.</summary>
    public static Length InnermostRow(SewingSpec sewing)
    {
        ArgumentNullException.ThrowIfNull(sewing);
        return StitchRows.DistanceFromFold(sewing.Rows - 1);
    }

    /// <summary>The ease that leaves the least room at every side of a job, whichever way its panel lies.</summary>
    /// <param name="job">The job; its own ease is not asked for.</param>
    /// <remarks>
    /// What holds an edge reaches further out than a carrier that is sewn larger for shrinkage, so only an edge that the
    /// pocket meets bare asks for more.
    /// </remarks>
    public static Length EaseFor(CarrierJob job)
    {
        ArgumentNullException.ThrowIfNull(job);
        return Least + InnermostRow(job.Workshop.Sewing) + Ways(job.Panel).Max(way => Grown(job, way));
    }

    private static LongSide[] Ways(SolarPanel panel) => panel.LongSide is { } way ? [way] : Enum.GetValues<LongSide>();

    private static Length Grown(CarrierJob job, LongSide way)
    {
        var (border, cloth, row) = (job.Carrier.Border, job.Workshop.Cloth, RowLayout.Of(job, way));
        var across = ClothSpec.GrownBy(row.Athwart + border.Port + border.Starboard, cloth.ShrinkAthwart);
        var along = ClothSpec.GrownBy(row.ForeAft + border.Forward + border.Aft, cloth.ShrinkForeAft);
        bool IsBare(Side side) => !job.Fastenings.Pocket.OverZipper || job.Fastenings.Mount.At(side) is null;
        var (atSides, atEnds) = (IsBare(Side.Port) || IsBare(Side.Starboard), IsBare(Side.Forward) || IsBare(Side.Aft));
        return UnitMath.Max(atSides ? across : Length.Zero, atEnds ? along : Length.Zero);
    }
}
