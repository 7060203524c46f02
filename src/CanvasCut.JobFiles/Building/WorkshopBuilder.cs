using CanvasCut.Design;

namespace CanvasCut.JobFiles;

/// <summary>Makes cloth, sewing, paper and plotter.</summary>
internal static class WorkshopBuilder
{
    public static Workshop Build(GivenValues given, SupplyChoice supplies) => new(
        Cloth(given),
        Sewing(given),
        Paper(given),
        Dxf(given),
        Plot(given),
        supplies.Build(),
        new((decimal)given.Quantity<double>("cloth.spare"), supplies.Prices, given.Values.Lengths("cloth.widths")!.Value));

    private static ClothSpec Cloth(GivenValues given) => new(
        given.Text("cloth.name"),
        new(given.Length("cloth.roll_width"), given.Length("cloth.selvage"), given.Length("cloth.order_step")),
        new(given.Word<WarpDirection>("cloth.warp"), given.Word<RollTurns>("cloth.turns"), given.Length("cloth.gap"), given.Quantity<bool>("cloth.one_way")),
        new(given.Quantity<double>("cloth.shrink.warp"), given.Quantity<double>("cloth.shrink.fill")),
        given.Word<FelledSeam>("cloth.join"));

    private static SewingSpec Sewing(GivenValues given) => new(
        given.Length("sewing.stitch_length"),
        given.Text("sewing.thread"),
        given.Quantity<int>("sewing.rows"));

    private static DxfSpec Dxf(GivenValues given) => new(
        given.Text("dxf.units") == "in" ? DxfUnit.Inch : DxfUnit.Millimetre,
        given.Quantity<bool>("dxf.arcs"),
        given.Quantity<bool>("dxf.one_file_per_piece"));

    private static PaperSpec Paper(GivenValues given)
    {
        var size = given.Values.Paper("paper.size")!;
        var readings = given.Values.Length("paper.read_x") is { } x && given.Values.Length("paper.read_y") is { } y ? new PrintReadings(x, y) : null;
        return size with { Margin = given.Length("paper.margin"), Overlap = given.Length("paper.overlap"), Readings = readings };
    }

    private static PlotSpec Plot(GivenValues given) => new(given.Values.Length("plot.roll_width"), given.Quantity<bool>("plot.single_stroke"));
}
