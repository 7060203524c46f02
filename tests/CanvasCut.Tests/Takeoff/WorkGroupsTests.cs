using CanvasCut.Drawing;
using CanvasCut.Sheets;
using CanvasCut.Takeoff;
using CanvasCut.Tests.Job;
using CanvasCut.Tests.Patterns;

namespace CanvasCut.Tests.Takeoff;

/// <summary>Alike steps are one step with its parts to tick, and nothing is lost by it.</summary>
public sealed class WorkGroupsTests
{
    private const string Example = "three-bow-middle-tube";

    private static readonly WorkSchedule Order = ExampleTests.OutcomeOf(Example).Work;

    /// <summary>Every seam, piece and caution of the order that had a step for each piece still has its place.</summary>
    [Fact]
    public void Nothing_is_lost_by_putting_alike_steps_together()
    {
        var rows = Repository.Read("tests/CanvasCut.Tests/Takeoff/steps-one-by-one.tsv").Split('\n', StringSplitOptions.RemoveEmptyEntries)
            .Where(line => line[0] != '#')
            .Select(line => line.Split('\t'))
            .ToList();

        Assert.Equal(48, rows.Count);
        foreach (var (kind, pieces, makes, caution) in rows.Select(row => (row[0], row[1], row[2], row[3])))
        {
            var step = Assert.Single(Order.Steps, each => makes.Split(" | ").All(each.Step.Flow.Makes.Select(part => part.ToString()).Contains)).Step;
            Assert.Equal(kind, step.Task.Kind.ToString(), ignoreCase: true);
            Assert.Subset(step.Flow.Pieces.Select(key => key.Id).ToHashSet(StringComparer.Ordinal), pieces.Split(' ', StringSplitOptions.RemoveEmptyEntries).ToHashSet(StringComparer.Ordinal));
            Assert.Contains(caution, step.Advice.Caution, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void The_example_has_under_30_steps_and_each_of_several_things_has_its_own_tick()
    {
        Assert.InRange(Order.Steps.Length, 1, 29);
        Assert.Equal(4, Of("ready-pockets").Parts.Length);
        Assert.Equal(4, Of("sew-pockets-top").Parts.Length);
        Assert.Equal(2, Of("sew-zippers-carrier").Parts.Length);
        Assert.Empty(Of("ready-strips").Parts);
        Assert.Equal(ExampleTests.OutcomeOf(Example).Content.Patterns.Pieces.Select(piece => piece.Title.Name), Of("cut-pieces").Parts.Select(part => part.Name));
    }

    /// <summary>From the page with the first step to the page with the last, both counted.</summary>
    [Fact]
    public void The_examples_order_takes_under_5_pages()
    {
        var outcome = ExampleTests.OutcomeOf(Example);
        var pages = ReportSheets.Of(outcome.Content, outcome.Context, ShapeSheet.Of(outcome.Content.Patterns, outcome.Context)).ToList();
        int PageOf(string text) => pages.FindIndex(page => page.Figures.OfType<Lettering>().Any(each => each.Text == text));
        var (first, last) = (PageOf(Order.Steps[0].Step.Task.Name), PageOf(Order.Steps[^1].Step.Task.Name));

        Assert.True(first >= 0);
        Assert.InRange(last - first + 1, 1, 4);
    }

    /// <summary>
    /// By hand for the forward starboard pocket: its square corner lies 172 mm, the end of its forward leg 306 mm from the
    /// centreline. The forward bow's radius is 1985²/(8·105) + 105/2 = 4743 mm, so they lie 172²/9486 = 3.1 and
    /// 306²/9486 = 9.9 mm below the middle; the end of its starboard leg, 134 mm further aft, is 134·24/895 = 3.6 mm higher
    /// than the square corner. At the port side the outer corner is the lowest, for the top falls outward and to both ends.
    /// </summary>
    [Theory]
    [InlineData("corner pocket, forward starboard", "lowest at the end of its forward leg")]
    [InlineData("corner pocket, aft starboard", "lowest at the end of its aft leg")]
    [InlineData("corner pocket, forward port", "lowest at its square corner")]
    [InlineData("corner pocket, aft port", "lowest at its square corner")]
    public void The_corner_where_a_pockets_water_runs_out_is_named(string pocket, string note) =>
        Assert.Equal(note, Assert.Single(Of("sew-pockets-top").Parts, part => part.Name == pocket).Note);

    /// <summary>Without heights of the bows it is not known, and the step says so.</summary>
    [Fact]
    public void A_lowest_corner_that_is_not_known_is_not_named()
    {
        var unknown = WorkOrderTests.Patterned(SampleJobs.Plain with { Top = SampleJobs.Top(1600, 1800, [SampleJobs.BowAt(60), SampleJobs.BowAt(820), SampleJobs.BowAt(1540)]) });
        var step = WorkOrder.Of(unknown).Steps.Single(each => each.Step.Task.Id == "sew-pockets-top").Step;

        Assert.False(unknown.Surface.IsKnown);
        Assert.All(step.Parts, part => Assert.Empty(part.Note));
        Assert.Contains("pour a cup of water", step.Task.Do, StringComparison.Ordinal);
    }

    private static WorkStep Of(string id) => Order.Steps.Single(each => each.Step.Task.Id == id).Step;
}
