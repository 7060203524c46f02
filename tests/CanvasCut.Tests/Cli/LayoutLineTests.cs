using CanvasCut.Cli;
using CanvasCut.Tests.Patterns;

namespace CanvasCut.Tests.Cli;

/// <summary>The line that tells how a layout gets on.</summary>
public sealed class LayoutLineTests
{
    [Fact]
    public void It_tells_the_best_length_the_bound_and_the_time() =>
        Assert.Equal(
            "Laying the pieces out: 1404 mm found, not below 1310 mm, 3 s",
            LayoutLine.TextOf(new(SampleJobs.Mm(1404.2), SampleJobs.Mm(1309.8)), TimeSpan.FromSeconds(3.2)));

    [Fact]
    public void Nothing_is_written_where_nobody_watches()
    {
        using var errors = new StringWriter();
        using (var line = new LayoutLine(new(TextWriter.Null, errors, IsTerminal: false), TimeSpan.Zero))
        {
            line.Tell(new(SampleJobs.Mm(2), SampleJobs.Mm(1)));
            Thread.Sleep(50);
        }

        Assert.Empty(errors.ToString());
    }

    [Fact]
    public void Nothing_is_written_before_a_second_is_over()
    {
        using var errors = new StringWriter();
        using (var line = new LayoutLine(new(TextWriter.Null, errors, IsTerminal: false, IsLive: true), TimeSpan.FromHours(1)))
        {
            line.Tell(new(SampleJobs.Mm(2), SampleJobs.Mm(1)));
        }

        Assert.Empty(errors.ToString());
    }

    [Fact]
    public void It_is_wiped_out_at_the_end()
    {
        using var errors = new StringWriter();
        using (var line = new LayoutLine(new(TextWriter.Null, TextWriter.Synchronized(errors), IsTerminal: false, IsLive: true), TimeSpan.Zero))
        {
            Assert.True(SpinWait.SpinUntil(() => errors.ToString().Length > 0, TimeSpan.FromMinutes(1)));
        }

        Assert.EndsWith("\r\u001b[K", errors.ToString(), StringComparison.Ordinal);
        Assert.StartsWith("\rLaying the pieces out", errors.ToString(), StringComparison.Ordinal);
    }
}
