using CanvasCut.Design;
using CanvasCut.Language;
using CanvasCut.Patterns;
using CanvasCut.Placing;

namespace CanvasCut.Job;

/// <summary>Writes what several mountings have in common for programs; each has a results.json of its own in its folder.</summary>
internal static class TopJson
{
    /// <summary>The file's text.</summary>
    /// <param name="run">The results.</param>
    /// <param name="files">The names of all files written with it, itself included.</param>
    public static string Of(TopRun run, IEnumerable<string> files) => JsonText.Of(new Dictionary<string, object?>
    {
        ["format"] = ResultsJson.Format,
        ["version"] = JobRun.Version,
        ["language"] = Languages.Code,
        ["job"] = run.Top.First.Name,
        ["files"] = files,
        ["failed"] = run.HasFailed,
        ["copies"] = run.Top.Copies,
        ["checks"] = run.Between.Select(ResultsJson.Check),
        ["mountings"] = run.Mountings.Select(mounting => new
        {
            name = mounting.Job.Mounting.Text,
            mirrors = run.Top.Twins.FirstOrDefault(twin => twin.Name == mounting.Job.Mounting)?.Of.Text,
            folder = TopFiles.FolderOf(mounting),
            failed = mounting.HasFailed,
            long_side = mounting.Placed.Mounted.Panel.LongSide == LongSide.Athwart ? "athwart" : "fore-aft",
            position = Place(Plan.PlaceOf(mounting.Placed.Mounted.CarrierBox.Center)),
            position_chosen_by_program = mounting.Placed.IsPlaceChosen,
            spare_mm = JsonText.Mm(mounting.Placed.Options[0].Spare.Millimeters),
        }),
        ["cut_plan"] = CutPlanJson.Of(run.Plan),
    });

    private static object Place(TopPlace place) => new { station_mm = JsonText.Mm(place.Station.Millimeters), offset_mm = JsonText.Mm(place.Offset.Millimeters) };
}
