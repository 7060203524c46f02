using System.Globalization;
using System.Text;
using CanvasCut.Checks;
using CanvasCut.Job;

namespace CanvasCut.Tests.Job;

/// <summary>What results.json tells, as tables that a person can read before approving them: what changes in a job shows in a few lines.</summary>
internal static class ExampleTable
{
    public static string Of(ResultsDocument results)
    {
        var text = new StringBuilder();
        foreach (var mounting in results.Mountings)
        {
            var place = $"{mounting.LongSide}, station {Number(mounting.Position.StationMm)}, offset {Number(mounting.Position.OffsetMm)}, {Number(mounting.SpareMm)} to spare";
            Table(text, $"Placed: {place}", []);
            Table(text, "Checks", mounting.Checks.Select(CheckRow));
            Table(text, "Pieces: how many, finished, cut, corners and length of the cut line, lines drawn", mounting.Pieces.Select(PieceRow));
            Table(text, "Zippers: buy, run, setback", mounting.Zippers.Select(zipper => Row($"{zipper.Edge} {zipper.Kind}", Number(zipper.BuyMm), Number(zipper.RunMm), Number(zipper.SetbackMm))));
            Table(text, "Mounts: run, count, pitch", mounting.Mounts.Select(mount => Row($"{mount.Edge} {mount.Kind}", Number(mount.RunMm), $"{mount.Count}", Number(mount.PitchMm))));
            Table(text, "Pockets: leg, covers", mounting.Pockets.Select(pocket => Row(pocket.Corner, Number(pocket.LegMm), Number(pocket.CoversMm))));
            Table(text, "Marks: station, offset", mounting.Marks.Select(mark => Row(mark.Id, Number(mark.StationMm), Number(mark.OffsetMm))));
        }

        var plan = results.CutPlan!;
        Table(text, $"Cut plan: {Number(plan.UsedMm)} of {Number(plan.RollWidthMm)} wide, order {Number(plan.OrderMm)}, {plan.Verdict}", plan.Placed.Select(PlacedRow));
        Table(text, "Order", results.Order!.Value.Select(line => Row(line.Grade, $"{line.Quantity.ToString(CultureInfo.InvariantCulture)} {line.Unit}", Number(line.LengthMm), $"for {line.Pieces.Length} pieces")));
        Table(text, $"Cost: {results.Cost?.Total.ToString(CultureInfo.InvariantCulture) ?? "no prices"} {results.Cost?.Currency}".TrimEnd(), []);
        Table(text, "Seams: copies, sewn, thread, plies usual and thickest", results.Seams.Select(seam => Row(
            seam.Name, $"{seam.Copies}", Number(seam.SewnMm), Number(seam.ThreadMm), $"{seam.Usual.Plies}", $"{seam.Thickest.Plies}")));
        Table(text, $"Work: {results.Work.Days} days, {Number(results.Work.BenchMin)} min; day, hands, wait", results.Work.Steps.Select(step => Row(
            step.Id, $"{step.Day}", Number(step.HandsMin), Number(step.WaitMin))));
        return text.ToString();
    }

    private static string[] CheckRow(CheckPart check) => Row(
        check.Code,
        check.Verdict == Verdict.NotChecked ? "not checked" : $"{check.Verdict}".ToLowerInvariant(),
        check.Value is { } value ? $"{Number(value)} {(check.Limit is { } limit ? $"{(check.LimitIs == LimitIs.AtLeast ? ">=" : "<=")} {Number(limit)} " : string.Empty)}{check.Unit}" : string.Empty,
        check.Subject);

    private static string[] PieceRow(PiecePart piece) => Row(
        piece.Id,
        $"{piece.Quantity}",
        Size(piece.FinishedMm),
        Size(piece.CutMm),
        $"{piece.CutMm.Length}",
        Number(Length(piece.CutMm)),
        $"{piece.Lines.Length}");

    private static string[] PlacedRow(PlacedPart placed) => Row(
        $"{placed.Number}", placed.Piece, $"{placed.Copy}", Number(placed.FromCutEndMm), Number(placed.FromSelvageMm), $"turned {placed.TurnedDegrees}");

    private static string Size(IReadOnlyList<PointPart> points) =>
        $"{Number(points.Max(point => point.X) - points.Min(point => point.X))} x {Number(points.Max(point => point.Y) - points.Min(point => point.Y))}";

    private static double Length(IReadOnlyList<PointPart> points) =>
        points.Select((point, i) => Math.Sqrt(Math.Pow(point.X - points[i == 0 ? points.Count - 1 : i - 1].X, 2) + Math.Pow(point.Y - points[i == 0 ? points.Count - 1 : i - 1].Y, 2))).Sum();

    private static string Number(double? number) => number?.ToString("0.###", CultureInfo.InvariantCulture) ?? "-";

    private static string[] Row(params string[] cells) => cells;

    private static void Table(StringBuilder text, string head, IEnumerable<string[]> rows)
    {
        var all = rows.ToList();
        text.Append(text.Length > 0 ? "\n" : string.Empty).Append(head).Append('\n');
        foreach (var row in all)
        {
            text.Append("  ").AppendJoin("  ", row.Select((cell, column) => cell.PadRight(all.Max(other => other[column].Length)))).Append('\n');
            while (text[^2] == ' ')
            {
                text.Remove(text.Length - 2, 1);
            }
        }
    }
}
