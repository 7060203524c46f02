using CanvasCut.Design;
using CanvasCut.Takeoff;
using CanvasCut.Tests.Patterns;

namespace CanvasCut.Tests.Takeoff;

public sealed class CarePlanTests
{
    /// <summary>By hand: fitted at the end of August, six months on is the last day of February, a leap year's too.</summary>
    [Theory]
    [InlineData("2026-08-31", 6, "2027-02-28")]
    [InlineData("2027-08-31", 6, "2028-02-29")]
    [InlineData("2027-04-01", 12, "2028-04-01")]
    public void Dates_count_from_the_day_of_fitting(string fitted, int months, string due)
    {
        var plan = CarePlan.Of(Job(new(DateOnly.Parse(fitted, System.Globalization.CultureInfo.InvariantCulture), null, HasHookAndLoop: false)));

        Assert.Equal(due, Assert.Single(plan.Visits, visit => visit.Months == months).When);
    }

    [Fact]
    public void Without_a_day_the_months_are_told() =>
        Assert.Equal("6 months after fitting", CarePlan.Of(SampleJobs.Plain).Visits[0].When);

    /// <summary>
    /// Life in strong sun: light polyester 2 to 2 1/2 years, V138 3 to 5, PTFE as long as the cloth (canvas workers' pages,
    /// single sources); the short end is taken.
    /// </summary>
    [Theory]
    [InlineData("v69", 24)]
    [InlineData("v92", 24)]
    [InlineData("v138", 36)]
    [InlineData("ptfe", null)]
    public void The_thread_decides_when_it_is_sewn_again(string grade, int? months)
    {
        var job = JobFiles.Sample.Job($"{JobFiles.Sample.Least}\n[sewing]\nthread_grade = \"{grade}\"");

        Assert.Equal(months, CarePlan.Of(job).Tasks.FirstOrDefault(task => task.Id == "restitch")?.Due.FirstMonths);
    }

    [Fact]
    public void The_users_own_life_of_the_thread_goes_first() =>
        Assert.Equal(new CareDue(18, 18), Task(Job(new(null, 18, HasHookAndLoop: false)), "restitch").Due);

    /// <summary>Nothing is left of hook-and-loop's strength after two to four years of sun (Practical Sailor): replaced after two.</summary>
    [Fact]
    public void Hook_and_loop_is_tried_each_half_year_and_replaced_in_time()
    {
        var job = Job(new(null, null, HasHookAndLoop: true));

        Assert.Equal(24, Task(job, "hook-and-loop-new").Due.FirstMonths);
        Assert.Equal([12, 18, 24], CarePlan.Of(job).Visits.Where(visit => visit.Tasks.Any(task => task.Id == "hook-and-loop-try")).Select(visit => visit.Months).Take(3));
        Assert.DoesNotContain(CarePlan.Of(SampleJobs.Plain).Tasks, task => task.Id.StartsWith("hook", StringComparison.Ordinal));
        Assert.Equal(CarePlan.Of(SampleJobs.Plain).SixMonthCheck.Length + 1, CarePlan.Of(job).SixMonthCheck.Length);
    }

    [Theory]
    [InlineData("marine acrylic, sand", true)]
    [InlineData("PVC mesh", false)]
    [InlineData("Vinyl-coated polyester", false)]
    public void Only_cloth_that_is_not_coated_is_proofed(string cloth, bool isProofed)
    {
        var job = SampleJobs.Plain.On(SampleJobs.Cloth with { Name = cloth });

        Assert.Equal(isProofed, CarePlan.Of(job).Tasks.Any(task => task.Id == "proofing"));
    }

    private static CarrierJob Job(CareSpec care) => SampleJobs.Plain with { Care = care };

    private static CareTask Task(CarrierJob job, string id) => Assert.Single(CarePlan.Of(job).Tasks, task => task.Id == id);
}
