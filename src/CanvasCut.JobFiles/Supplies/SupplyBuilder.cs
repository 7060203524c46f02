using CanvasCut.Design;
using CanvasCut.Language;
using UnitsNet;

namespace CanvasCut.JobFiles;

/// <summary>Makes the grades of entries that have all been found right.</summary>
internal static class SupplyBuilder
{
    /// <summary>Makes a job's grades.</summary>
    /// <param name="chosen">The entry that a field of the job names.</param>
    /// <param name="byId">Any entry.</param>
    public static JobSupplies Build(Func<string, MaterialEntry> chosen, Func<string, MaterialEntry> byId)
    {
        var thread = chosen("sewing.thread_grade");
        return new(
            Cloth(chosen("cloth.grade")),
            new(new(GradeOf(thread), thread.Text("needle"), thread.Maybe<Length>("spool"), thread.Maybe<int>("life_months")), Pack(byId(thread.Text("needle")))),
            Zipper(chosen("zipper.grade")),
            new(Tape(chosen("tapes.basting")), Tape(chosen("tapes.binding")), Tape(chosen("tapes.foam")), Tape(chosen("tapes.webbing")), new(Tape(chosen("tapes.hook_and_loop")), Tape(chosen("tapes.lacing")))),
            new(Pack(byId("slider")), Pack(byId("stop")), Pack(byId("grommet")), Pack(byId("wipe")), Pack(byId("coated-patch")), new(Pack(byId("snap")), Pack(byId("twist-fastener")), Pack(byId("eyelet")), new(Pack(byId("fibreglass-rod")), Pack(byId("rod-cap")), Pack(byId("rod-stop"))))));
    }

    /// <summary>What is told of a grade is put into words here, for the program's own grades are in the tables of words too.</summary>
    private static Grade GradeOf(MaterialEntry entry) => new(entry.Id, Say.Of(entry.Text("name")), Say.Of(entry.Text("source")), entry.Text("confidence"));

    private static ClothGrade Cloth(MaterialEntry entry) =>
        new(GradeOf(entry), entry.Value<Length>("thickness"), entry.Value<Length>("roll_width"), entry.Value<bool>("smooth"), entry.Maybe<double>("stretch"));

    private static ZipperGrade Zipper(MaterialEntry entry) => new(
        GradeOf(entry),
        new(entry.Value<Length>("chain"), entry.Value<Length>("overall_width")),
        entry.Value<Length>("tape_thickness"),
        Sold(entry));

    private static TapeGrade Tape(MaterialEntry entry) => new(
        GradeOf(entry),
        GivenValues.WordOf<TapeUse>(entry.Text("use").Replace("-", string.Empty, StringComparison.Ordinal)),
        entry.Value<Length>("width"),
        entry.Value<Length>("thickness"),
        Sold(entry));

    private static PackGrade Pack(MaterialEntry entry) => new(GradeOf(entry), entry.Value<int>("pack"));

    private static SoldLength Sold(MaterialEntry entry) => new(entry.Maybe<Length>("step"), entry.Maybe<Length>("roll"));
}
