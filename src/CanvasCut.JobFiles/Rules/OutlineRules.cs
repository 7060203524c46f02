using CanvasCut.Design;
using CanvasCut.Language;
using UnitsNet;
using static CanvasCut.JobFiles.RuleLog;

namespace CanvasCut.JobFiles;

/// <summary>The outline of the top: widths in order, corners that find room, edges that do not cross.</summary>
internal static class OutlineRules
{
    private const string List = "top.width_at";

    /// <summary>The outline when it is known and right.</summary>
    public static TopOutline? Check(JobValues values, RuleLog rules)
    {
        rules.When(
            values.IsWritten(List) && values.IsWritten("top.width"),
            ProblemCode.TopWidths,
            "top.width",
            Say.Of("stands beside [[top.width_at]]; keep the one width of a rectangle, or the widths at their stations."));
        var widths = values.Tables(List).ToList();
        widths.ForEach(path => CheckWidth(values, rules, path));
        CheckStations(values, rules, widths);
        CheckHollows(values, rules, widths);
        foreach (var corner in SideNames.Corners)
        {
            rules.When(
                values.IsWritten($"top.corners.cut.{corner}") && values.IsWritten($"top.corners.rounded.{corner}"),
                ProblemCode.TopCorner,
                $"top.corners.cut.{corner}",
                Say.Of("stands beside a radius for the same corner; a corner is cut or rounded, not both."));
        }

        return TopShapeReader.Of(values) is { } shape && TopShapeReader.IsInOrder(shape) ? Drawn(values, rules, shape) : null;
    }

    private static void CheckWidth(JobValues values, RuleLog rules, string path)
    {
        var (isWhole, port, starboard) = (values.IsWritten($"{path}.width"), values.IsWritten($"{path}.port"), values.IsWritten($"{path}.starboard"));
        rules.When(
            isWhole ? port || starboard : !(port && starboard),
            ProblemCode.TopWidths,
            isWhole ? $"{path}.width" : path,
            isWhole ? Say.Of("stands beside a half; give the whole width, or port and starboard from the centreline.") : Say.Of("has no width; give width, or both port and starboard from the centreline."));
    }

    private static void CheckStations(JobValues values, RuleLog rules, List<string> widths)
    {
        var (length, before) = (values.Length("top.length"), (Length?)null);
        foreach (var path in widths.Select(width => $"{width}.station"))
        {
            var station = values.Length(path);
            rules.When(station <= before, ProblemCode.WidthPlace, path, Say.Of("is not aft of the one before; list the widths from forward to aft."));
            rules.When(station > length, ProblemCode.WidthPlace, path, Say.Of($"lies aft of the top, which is {In(length)} long; measure stations from the forward edge."));
            before = station ?? before;
        }
    }

    private static void CheckHollows(JobValues values, RuleLog rules, List<string> widths)
    {
        foreach (var (width, next) in widths.Zip(widths.Skip(1)))
        {
            var (run, hollow) = (values.Length($"{next}.station") - values.Length($"{width}.station"), values.Length($"{width}.hollow_aft"));
            rules.When(
                run > Length.Zero && (hollow >= run / 2 || -hollow >= run / 2),
                ProblemCode.WidthPlace,
                $"{width}.hollow_aft",
                Say.Of($"is half the way to the next station or more, which is {In(run)}; measure it from a straight line between the two, in the middle."));
        }

        rules.When(
            widths.Count > 0 && values.IsWritten($"{widths[^1]}.hollow_aft"),
            ProblemCode.WidthPlace,
            $"{widths.LastOrDefault()}.hollow_aft",
            Say.Of("belongs to the last station, which has none aft of it; give it at the station forward of the hollow."));
    }

    private static TopOutline? Drawn(JobValues values, RuleLog rules, TopShape shape)
    {
        var drawing = new TopOutlineDrawing(shape);
        if (drawing.Fault is not { } fault)
        {
            return drawing.Outline;
        }

        var (code, path, message) = fault switch
        {
            OutlineFault.Crosses => (ProblemCode.OutlineCrosses, values.IsWritten(List) ? List : "top", Say.Of("makes an outline that crosses or touches itself; look for a slip in a width, a hollow, or how far an edge's end lies aft.")),
            OutlineFault.EndBeyond => (ProblemCode.OutlineCrosses, values.IsWritten("top.forward_edge") ? "top.forward_edge" : "top.aft_edge", Say.Of("puts an end of the forward edge aft of the aft edge; give how much further aft than the edge's middle its ends lie, negative for further forward.")),
            _ => Corner(values, SideNames.Corners[fault - OutlineFault.ForwardPort]),
        };
        rules.When(true, code, path, message);
        return null;
    }

    private static (string Code, string Path, string Message) Corner(JobValues values, string corner)
    {
        var path = values.Length($"top.corners.cut.{corner}") > Length.Zero ? $"top.corners.cut.{corner}" : $"top.corners.rounded.{corner}";
        return (ProblemCode.TopCorner, path, Say.Of("is more than the edges that meet there have room for, what the other corners take counted; measure it again."));
    }
}
