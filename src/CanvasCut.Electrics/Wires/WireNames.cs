using CanvasCut.Design;
using CanvasCut.Language;

namespace CanvasCut.Electrics;

/// <summary>How a size of wire is asked for.</summary>
public static class WireNames
{
    /// <summary>As in "6 mm2, tinned" or "AWG 10".</summary>
    public static string Of(WireSize wire)
    {
        ArgumentNullException.ThrowIfNull(wire);
        return wire.Family switch
        {
            WireFamily.Awg => $"AWG {wire.Name}",
            WireFamily.Sae => $"SAE {wire.Name}",
            WireFamily.MetricTinned => Say.Of($"{wire.Name} mm2, tinned"),
            _ => Say.Of($"{wire.Name} mm2, plain copper"),
        };
    }
}
