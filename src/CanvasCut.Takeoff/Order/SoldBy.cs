using CanvasCut.Design;
using CanvasCut.Language;
using UnitsNet;

namespace CanvasCut.Takeoff;

/// <summary>Rounds what is bought by length the way its grade is sold, and says how.</summary>
internal static class SoldBy
{
    /// <summary>A zipper or a tape.</summary>
    public static (Bought Bought, string Rounding) Of(Length length, SoldLength sold, PrintUnits units) =>
        sold.Roll is { } roll ? (Bought.InRolls(length, roll, Say.Later("roll")), Say.Of($"up to whole rolls of {Bought.InSteps(roll, roll, units)}"))
        : sold.Step is { } step ? (Bought.InSteps(length, step, units), Say.Of($"up to a multiple of {LengthText.Of(step, units)}"))
        : Whole(length, units);

    /// <summary>A thread.</summary>
    public static (Bought Bought, string Rounding) Of(Length length, ThreadGrade thread, PrintUnits units) => thread.Spool is { } spool
        ? (Bought.InRolls(length, spool, Say.Later("spool")), Say.Of($"up to whole spools of {Bought.InSteps(spool, spool, units)}"))
        : Whole(length, units);

    /// <summary>What is counted.</summary>
    public static (Bought Bought, string Rounding) Of(int count, PackGrade grade) =>
        (Bought.InPacks(count, grade.Pack), grade.Pack == 1 ? Say.Of("counted") : Say.Of($"up to whole packs of {grade.Pack}"));

    private static (Bought Bought, string Rounding) Whole(Length length, PrintUnits units) =>
        (Bought.Whole(length, units), units == PrintUnits.Imperial ? Say.Of("up to whole yards (metres)") : Say.Of("up to whole metres (yards)"));
}
