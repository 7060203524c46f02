using CanvasCut.Design;
using UnitsNet;

namespace CanvasCut.Checks;

/// <summary>What a zipper of a class withstands at least; null where neither the job file nor a public source says.</summary>
internal static class ZipperHold
{
    /// <summary>The width of chain that the test grips; from memory.</summary>
    public static readonly Length Jaw = Length.FromMillimeters(25);

    /// <summary>Class C across the closed chain and across the open end: a test laboratory's sheet of EN 16732 and BS 3084.</summary>
    private static readonly (Force Chain, Force End) ClassC = (Force.FromNewtons(250), Force.FromNewtons(90));

    /// <summary>Across the closed chain, over <see cref="Jaw"/>.</summary>
    public static Force? Chain(ZipperStrength zipper) => zipper.Chain ?? OfClass(zipper.Class)?.Chain;

    /// <summary>Across the open end.</summary>
    public static Force? End(ZipperStrength zipper) => zipper.End ?? OfClass(zipper.Class)?.End;

    /// <summary>Classes D and E are stronger than C, but their figures were not to be found; they are taken to be no weaker.</summary>
    private static (Force Chain, Force End)? OfClass(ZipperClass zipperClass) => zipperClass >= ZipperClass.C ? ClassC : null;
}
