using System.Collections.Immutable;
using UnitsNet;

namespace CanvasCut.Design;

/// <summary>The grades that a job is made of.</summary>
/// <param name="Cloth">The cloth.</param>
/// <param name="Sewing">Thread and needle.</param>
/// <param name="Zipper">The zippers.</param>
/// <param name="Tapes">The tapes.</param>
/// <param name="Notions">The small things.</param>
public sealed record JobSupplies(ClothGrade Cloth, SewingGrades Sewing, ZipperGrade Zipper, TapeGrades Tapes, NotionGrades Notions)
{
    /// <summary>Every grade, for a table of them.</summary>
    public IEnumerable<Grade> Grades =>
    [
        Cloth.Grade, Sewing.Thread.Grade, Sewing.Needle.Grade, Zipper.Grade,
        Tapes.Basting.Grade, Tapes.Binding.Grade, Tapes.Foam.Grade, Tapes.Webbing.Grade,
        Notions.Slider.Grade, Notions.Stop.Grade, Notions.Grommet.Grade, Notions.Wipe.Grade,
    ];
}

/// <summary>What it is sewn with.</summary>
/// <param name="Thread">The thread.</param>
/// <param name="Needle">The needle that suits it.</param>
public sealed record SewingGrades(ThreadGrade Thread, PackGrade Needle);

/// <summary>The tapes of a job.</summary>
/// <param name="Basting">Holds layers before they are sewn.</param>
/// <param name="Binding">Goes round raw edges.</param>
/// <param name="Foam">Bonds the panel.</param>
/// <param name="Webbing">The smooth ground for the foam tape.</param>
public sealed record TapeGrades(TapeGrade Basting, TapeGrade Binding, TapeGrade Foam, TapeGrade Webbing);

/// <summary>The small things of a job.</summary>
/// <param name="Slider">For continuous zippers.</param>
/// <param name="Stop">For continuous zippers.</param>
/// <param name="Grommet">For the cable's hole.</param>
/// <param name="Wipe">For cleaning what is bonded.</param>
public sealed record NotionGrades(PackGrade Slider, PackGrade Stop, PackGrade Grommet, PackGrade Wipe);

/// <summary>How things are bought.</summary>
/// <param name="Spare">Cloth added before rounding to the shop's step: 0.05 is five per cent.</param>
/// <param name="Prices">What things cost; null when no price file is named.</param>
/// <param name="RollWidths">The widths in which the cloth is on sale, growing; the job's own need not be among them.</param>
public sealed record BuyingSpec(decimal Spare, PriceList? Prices, ImmutableArray<Length> RollWidths);
