using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Patterns;

namespace CanvasCut.Checks;

/// <summary>What a check is about that looks at one thing of the mounting and no other: it need not say so itself.</summary>
internal static class UsualSubjects
{
    /// <summary>The check with what it is about; one that says so itself keeps it.</summary>
    public static CheckResult Of(CheckResult check, CarrierJob job) =>
        check.About.Parts.IsEmpty && PartsOf(check.Code, job) is { IsEmpty: false } parts ? check.On(parts) : check;

    private static ImmutableArray<PartKey> PartsOf(string code, CarrierJob job)
    {
        var keys = new PartKeys(job);
        return code switch
        {
            CheckCodes.BendAthwart or CheckCodes.BendAlong or CheckCodes.BendDouble or CheckCodes.Span => [keys.Panel],
            CheckCodes.SlopeCorner or CheckCodes.BondGap or CheckCodes.BondLength or CheckCodes.WindBond => [keys.Panel],
            CheckCodes.BondBorder or CheckCodes.BondRows or CheckCodes.BondStep => [keys.Panel, keys.Cells],
            CheckCodes.HeatFree or CheckCodes.HeatBlocked => [keys.Cells],
            CheckCodes.BondingOnto or CheckCodes.KeepRoom => [keys.Panel, keys.Carrier],
            // Where there is a box they say so; without one they are about a panel whose box is not told.
            CheckCodes.TubeBox or CheckCodes.BoxCover => [keys.Panel],
            CheckCodes.CableClear => [keys.CableExit],
            CheckCodes.CableReach => [keys.CableExit, keys.Panel],
            CheckCodes.ClothWidth or CheckCodes.SlopeDrain or CheckCodes.WindOff => [keys.Carrier],
            CheckCodes.ClosingPath or CheckCodes.ClosingShrunk or CheckCodes.ClosingStretched => [keys.Carrier, keys.Fastening(Side.Forward), keys.Fastening(Side.Aft)],
            CheckCodes.WindPocket => [.. Corner.All.Select(keys.Pocket)],
            CheckCodes.MountRemoval or CheckCodes.WindZipper or CheckCodes.WindZipperEnd or CheckCodes.WindSeam => [.. Held(job).Select(keys.Fastening)],
            CheckCodes.TopCondition => [.. Enum.GetValues<Side>().Select(PartKey.TopEdge)],
            _ => [],
        };
    }

    /// <summary>The edges that something holds.</summary>
    private static IEnumerable<Side> Held(CarrierJob job) => Enum.GetValues<Side>().Where(side => job.Fastenings.Mount.At(side) is not null);
}
