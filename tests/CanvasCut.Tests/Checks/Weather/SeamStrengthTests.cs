using CanvasCut.Checks;
using UnitsNet;

namespace CanvasCut.Tests.Checks.Weather;

/// <summary>Against the tables in thread makers' bulletins (a handbook of stitch types, pp. 32-33, cld.bz/fwuRkat).</summary>
public sealed class SeamStrengthTests
{
    [Theory]
    [InlineData(10, 4.0, 60)]
    [InlineData(6, 2.6, 23.4)]
    [InlineData(8, 2.6, 31.2)]
    [InlineData(10, 2.6, 39)]
    [InlineData(12, 2.6, 46.8)]
    public void A_lockstitch_seam_is_as_strong_as_published(double stitchesPerInch, double threadPounds, double poundsPerInch)
    {
        var seam = SeamStrength.OfRow(Length.FromInches(1 / stitchesPerInch), Force.FromPoundsForce(threadPounds));

        Assert.Equal(poundsPerInch, seam.PoundsForcePerInch, 1e-6);
    }

    /// <summary>1 lbf/in is 1.751268 N/cm, so 60 lbf/in are 105.076 N/cm.</summary>
    [Fact]
    public void The_same_in_newtons_a_centimetre() =>
        Assert.Equal(105.076, SeamStrength.OfRow(Length.FromInches(0.1), Force.FromPoundsForce(4)).NewtonsPerCentimeter, 1e-3);

    [Theory]
    [InlineData(50, 50)]
    [InlineData(70, 60)]
    public void A_seam_is_no_stronger_than_its_cloth(double grab, double poundsPerInch) =>
        Assert.Equal(
            poundsPerInch,
            SeamStrength.InCloth(Length.FromInches(0.1), Force.FromPoundsForce(4), Force.FromPoundsForce(grab)).PoundsForcePerInch,
            1e-6);
}
