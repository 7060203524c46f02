using CanvasCut.Design;
using CanvasCut.Language;
using UnitsNet;

namespace CanvasCut.Patterns;

/// <summary>What a ply is of.</summary>
public enum LayerKind
{
    /// <summary>Cloth of the job; the top is taken to be of the same.</summary>
    Cloth,

    /// <summary>A zipper's tape.</summary>
    ZipperTape,

    /// <summary>Binding.</summary>
    Binding,

    /// <summary>Webbing.</summary>
    Webbing,

    /// <summary>Hook tape or loop tape.</summary>
    HookAndLoop,

    /// <summary>The coated patch under the panel.</summary>
    Patch,
}

/// <summary>What a needle goes through at one place.</summary>
/// <param name="Cloth">Plies of cloth.</param>
/// <param name="ZipperTape">Plies of zipper tape.</param>
/// <param name="Binding">Plies of binding.</param>
/// <param name="Webbing">Plies of webbing.</param>
/// <param name="HookAndLoop">Plies of hook tape and loop tape.</param>
/// <param name="Patch">Plies of the coated patch, as thick as the cloth.</param>
public sealed record LayerCount(int Cloth, int ZipperTape = 0, int Binding = 0, int Webbing = 0, int HookAndLoop = 0, int Patch = 0)
{
    /// <summary>All plies.</summary>
    public int Plies => Cloth + ZipperTape + Binding + Webbing + HookAndLoop + Patch;

    /// <summary>How thick they are together; basting tape and thread are not counted.</summary>
    public Length Thickness(JobSupplies supplies) =>
        (supplies.Cloth.Thickness * (Cloth + Patch))
        + (supplies.Zipper.TapeThickness * ZipperTape)
        + (supplies.Tapes.Binding.Thickness * Binding)
        + (supplies.Tapes.Webbing.Thickness * Webbing)
        + (supplies.Tapes.Mount.HookAndLoop.Thickness * HookAndLoop);

    /// <summary>As in "3 cloth, 1 zipper tape".</summary>
    public override string ToString() => string.Join(
        ", ",
        new[] { (Cloth, Say.Of("cloth")), (ZipperTape, Say.Of("zipper tape")), (Binding, Say.Of("binding")), (Webbing, Say.Of("webbing")), (HookAndLoop, Say.Of("hook-and-loop tape")), (Patch, Say.Of("coated patch")) }
            .Where(part => part.Item1 > 0)
            .Select(part => FormattableString.Invariant($"{part.Item1} {part.Item2}")));
}
