using UnitsNet;

namespace CanvasCut.Checks;

/// <summary>How strong a sewn seam is.</summary>
public static class SeamStrength
{
    /// <summary>A loop of thread bears about one and a half times what a single thread does; thread makers' bulletins, type 301.</summary>
    private const double LoopRatio = 1.5;

    /// <summary>
    /// One row of lockstitch (type 301) in two plies of woven cloth, as long as the cloth is stronger: stitches an inch ×
    /// strength of the thread × 1.5.
    /// </summary>
    /// <param name="stitch">From hole to hole; above zero.</param>
    /// <param name="thread">What breaks the thread; of needle and bobbin the weaker.</param>
    public static ForcePerLength OfRow(Length stitch, Force thread) => ForcePerLength.FromNewtonsPerMeter(LoopRatio * thread.Newtons / stitch.Meters);

    /// <summary>The same, but no stronger than the cloth it is sewn in.</summary>
    /// <param name="stitch">From hole to hole; above zero.</param>
    /// <param name="thread">What breaks the thread.</param>
    /// <param name="clothGrab">What breaks the cloth when an inch of its width is gripped.</param>
    public static ForcePerLength InCloth(Length stitch, Force thread, Force clothGrab) => ForcePerLength.FromNewtonsPerMeter(
        Math.Min(OfRow(stitch, thread).NewtonsPerMeter, clothGrab.Newtons / Length.FromInches(1).Meters));
}
