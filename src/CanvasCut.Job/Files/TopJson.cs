using CanvasCut.Design;
using CanvasCut.Language;
using CanvasCut.Patterns;

namespace CanvasCut.Job;

/// <summary>Writes what several mountings have in common for programs; each has a results.json of its own in its folder.</summary>
internal static class TopJson
{
    /// <summary>The file's text.</summary>
    /// <param name="run">The results.</param>
    /// <param name="files">The names of all files written with it, itself included.</param>
    public static string Of(TopRun run, IEnumerable<string> files) => JsonText.Of(
        new(
            ResultsJson.Format,
            JobRun.Version,
            Languages.Code,
            run.Top.First.Name,
            [.. files],
            run.HasFailed,
            run.Top.Copies,
            [.. run.Between.Concat(run.Electric).Select(ResultsJson.Check)],
            [.. run.Mountings.Select(mounting => Part(run, mounting))],
            CutPlanJson.Of(run.Plan),
            OrderJson.Lines(run.Purchase.Order),
            OrderJson.Cost(run.Purchase.Cost),
            OrderJson.Seams(run.Purchase.Seams),
            OrderJson.Materials(run.Made),
            WorkJson.Part(run.Top.First.Work.Order, run.Work)),
        ResultsContext.Default.TopDocument);

    private static MountingPart Part(TopRun run, JobRun mounting) => new(
        mounting.Job.Mounting.Text,
        run.Top.Twins.FirstOrDefault(twin => twin.Name == mounting.Job.Mounting)?.Of.Text,
        TopFiles.FolderOf(mounting),
        mounting.HasFailed,
        ResultsJson.LongSideWord(mounting.Placed.Mounted.Panel.LongSide),
        Place(Plan.PlaceOf(mounting.Placed.Mounted.CarrierBox.Center)),
        mounting.Placed.IsPlaceChosen,
        JsonText.Mm(mounting.Placed.Options[0].Spare.Millimeters));

    private static PlacePart Place(TopPlace place) => new(JsonText.Mm(place.Station.Millimeters), JsonText.Mm(place.Offset.Millimeters));
}
