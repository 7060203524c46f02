using CanvasCut.Design;
using CanvasCut.Language;
using static CanvasCut.JobFiles.FieldKind;
using static CanvasCut.JobFiles.FieldRange;

namespace CanvasCut.JobFiles;

/// <summary>Wind, bonding day, heat, and the state of the top.</summary>
internal static class ConditionFields
{
    private static readonly string Sheet = Say.Later("a test laboratory's sheet of EN 16732 and BS 3084 gives class C");

    public static Field[] All { get; } =
    [
        .. Wind(),
        .. Bonding(),
        new Field("heat.air", Temperature, Signed("-10 C", "50 C"), Presence.Optional).Or("30 C", Source.Chosen),
        new Field("heat.wind", Speed, Reach("0 m/s", "15 m/s"), Presence.Optional).Or("1 m/s", Source.Chosen),
        new("heat.limit", Temperature, Signed("50 C", "100 C"), Presence.Optional),
        new Field("water.least_slope", Angle, Reach("0 deg", "15 deg"), Presence.Optional).Or("5 deg", Say.Later("a seller of hollow sheet: it holds water below about 5 degrees; rule of thumb")),
        .. TopQuestion.All.Select(question => new Field($"top_condition.{question.Field}", Word, Any, Presence.Optional).Among("yes", "no")),
    ];

    private static Field[] Wind() =>
    [
        new Field("wind.off_at", Speed, Size("10 kn", "60 kn"), Presence.Optional).Or("35 kn", Say.Later("below the 45 mph (39 kn) that a flexible panel's manual excludes")),
        new Field("wind.coefficient", Factor, Size("0.3", "3"), Presence.Optional).Or("1.4", Say.Later("EN 1991-1-4, table 7.6: largest overall uplift of a canopy to 30 degrees, blocked beneath")),
        new Field("wind.edge_factor", Factor, Size("1", "4"), Presence.Optional).Or("2", Source.RuleOfThumb),
        new Field("wind.gust_factor", Factor, Size("1", "2"), Presence.Optional).Or("1.4", Say.Later("EN 1991-1-4, 4.5: square root of 1 + 7 x 0.145, 3 m over open sea")),
        new Field("wind.safety_factor", Factor, Size("1", "10"), Presence.Optional).Or("3", Source.RuleOfThumb),
        new Field("wind.thread_strength", Force, Size("1 lbf", "60 lbf"), Presence.Optional)
            .Or("5.8 lbf", Say.Later("A-A-52095: least strength of polyester thread Tex 70; Tex 90 is stronger")),
        new Field("wind.cloth_strength", Force, Size("20 lbf", "600 lbf"), Presence.Optional)
            .Or("100 lbf", Say.Later("furniture industry criteria for acrylic cloth, grab test, fill")),
        new Field("wind.zipper_class", Word, Any, Presence.Optional).Among("A", "B", "C", "D", "E").Or("C", Sheet),
        new("wind.zipper_strength", Force, Size("50 N", "2000 N"), Presence.Optional),
        new("wind.zipper_end_strength", Force, Size("20 N", "1000 N"), Presence.Optional),
    ];

    private static Field[] Bonding() =>
    [
        new Field("bonding.onto", Word, Any, Presence.Optional).Among("sewn-tape", "coated-patch", "raw-cloth")
            .Or("coated-patch", Say.Later("surface preparation bulletin for foam tapes: porous surfaces are sealed or covered first")),
        new("bonding.tape_width", Length, Size("6 mm", "150 mm"), Presence.Optional),
        new("bonding.tape_length", Length, Size("0.3 m", "20 m"), Presence.Optional),
        new("bonding.air", Temperature, Signed("-10 C", "45 C"), Presence.Optional),
        new("bonding.humidity", Humidity, Size("5 %", "100 %"), Presence.Optional),
        new("bonding.surface", Temperature, Signed("-10 C", "65 C"), Presence.Optional),
        new("bonding.clear_hours", Count, Reach("0", "240"), Presence.Optional),
        new Field("bonding.least_surface", Temperature, Signed("5 C", "25 C"), Presence.Optional).Or("15 C", Say.Later("a tape seller's page on application temperature; others say 4 to 10 C")),
        new Field("bonding.most_surface", Temperature, Signed("25 C", "60 C"), Presence.Optional).Or("38 C", Say.Later("a tape seller's page: best between 21 and 38 C")),
        new Field("bonding.hard_stop", Temperature, Signed("0 C", "20 C"), Presence.Optional).Or("10 C", Say.Later("from memory, several makers of foam tape")),
        new Field("bonding.dew_margin", TemperatureStep, Size("1 C", "10 C"), Presence.Optional).Or("3 C", Say.Later("painting manuals after ISO 8502-4")),
    ];
}
