using CanvasCut.JobFiles;
using CanvasCut.Patterns;

namespace CanvasCut.Tests.JobFiles;

/// <summary>Bows of any measures are either refused with a problem, or have a shape in space.</summary>
public sealed class AnyBowsTests
{
    private static readonly Gen<string> Arc = Gen.Select(Gen.Int[0, 5], Gen.Int[300, 1900], Gen.Int[300, 1900], Gen.Int[0, 900], Gen.Int[0, 900]).Select((form, a, b, c, d) => form switch
    {
        0 => $"girth = \"{a} mm\"\ncrown = \"{c} mm\"\n",
        1 => $"girth_port = \"{a} mm\"\ngirth_starboard = \"{b} mm\"\ncrown = \"{c} mm\"\n",
        2 => $"girth_port = \"{a} mm\"\ngirth_starboard = \"{b} mm\"\ncrown_port = \"{c} mm\"\ncrown_starboard = \"{d} mm\"\n",
        3 => $"chord = \"{a} mm\"\ncrown_port = \"{c} mm\"\ncrown_starboard = \"{d} mm\"\n",
        4 => $"chord = \"{a} mm\"\ngirth_port = \"{b} mm\"\ngirth_starboard = \"{d + 150} mm\"\n",
        _ => $"girth = \"{a} mm\"\ncrown_port = \"{c} mm\"\ncrown_starboard = \"{d} mm\"\n",
    });

    private static readonly Gen<string> Bows = Gen.Select(Arc, Gen.Int[0, 700], Gen.Int[0, 200], Gen.Int[12, 60])
        .Select((arc, height, sag, diameter) => $"{arc}height = \"{height} mm\"\nsag_aft = \"{sag} mm\"\ndiameter = \"{diameter} mm\"\n")
        .Array[2, 3]
        .Select(bows => string.Concat(bows.Select((bow, i) => $"[[top.bow]]\nstation = \"{i * 600} mm\"\n{(i == bows.Length - 1 ? bow.Replace("sag_aft", "#sag_aft", StringComparison.Ordinal) : bow)}")));

    /// <summary>Bows of any width are drawn here, so whether they suit the top is not asked.</summary>
    private static readonly string AnyWidth = $"accept_unusual = [{string.Join(", ", Enumerable.Range(1, 3).SelectMany(bow => new[] { "girth", "girth_port", "chord" }.Select(field => $"\"top.bow[{bow}].{field}\"")))}]\n";

    [Fact]
    public void Bows_that_are_taken_have_a_surface()
    {
        var taken = 0;
        Bows.Sample(
            bows =>
            {
                var job = JobFile.Read(AnyWidth + Sample.Least + bows, "job.toml");
                if (!job.IsValid)
                {
                    Assert.NotEmpty(job.Problems);
                    return;
                }

                var surface = TopSurface.Of(job.Value.First.Top).Surface!;
                Assert.True(double.IsFinite(surface.PointAt(new(UnitsNet.Length.FromMillimeters(300), UnitsNet.Length.FromMillimeters(200))).Z));
                Interlocked.Increment(ref taken);
            },
            iter: 3000);

        Assert.True(taken > 30, $"Only {taken} of 3000 were taken.");
    }
}
