using System.Collections.Immutable;
using CanvasCut.Checks;
using CanvasCut.Tests.Job;
using CanvasCut.Tests.JobFiles;

namespace CanvasCut.Tests.Checks;

/// <summary>Every check says by keys what it is about, so that a verdict can light its lines; the few that cannot are named here with the reason.</summary>
public sealed class CheckAboutTests
{
    /// <summary>What is about no thing that lies on the top.</summary>
    private static readonly Dictionary<string, string> MayBeEmpty = new()
    {
        [CheckCodes.BondingSurface] = "the surface on the day of bonding, which is weather",
        [CheckCodes.BondingDew] = "the air on the day of bonding",
        [CheckCodes.BondingClear] = "the hours after bonding",
    };

    /// <summary>Tops, panels and mounts that bring up checks which no example has.</summary>
    public static TheoryData<string> Jobs { get; } =
    [
        .. ExampleTests.Examples.Select(row => $"patterns/{row.Data}/job.toml"),
        "least", "snaps", "sleeve", "sides", "tape", "later panel", "plotter",
    ];

    [Theory]
    [MemberData(nameof(Jobs))]
    public void Every_check_says_what_it_is_about(string job) => Assert.Equal(
        [],
        Checks(job).Where(check => check.About.Parts.IsEmpty && !IsOfWiring(check) && !MayBeEmpty.ContainsKey(check.Code)).Select(check => $"{check.Code}: {check.Subject}"));

    /// <summary>What is about one thing is told from its kin by what it is about; only where a check looks at several places of one thing two may share it.</summary>
    [Theory]
    [InlineData("patterns/three-bow-middle-tube/job.toml")]
    [InlineData("patterns/rod-and-held-sides/job.toml")]
    public void Kin_are_told_apart(string job)
    {
        string[] placesOfOneThing = [CheckCodes.SlopeCorner, CheckCodes.Stitch, CheckCodes.SeamLayers, CheckCodes.BendAlong, CheckCodes.BendAthwart, CheckCodes.CableClear, .. MayBeEmpty.Keys];

        var kin = Checks(job).Where(check => !placesOfOneThing.Contains(check.Code)).GroupBy(check => (check.Code, check.About)).Where(group => group.Count() > 1);

        Assert.Equal([], kin.Select(group => $"{group.Key.Code}: {string.Join(", ", group.Select(check => check.Subject))}"));
    }

    /// <summary>A reason is for a check that there is, and that is still without a subject somewhere.</summary>
    [Fact]
    public void Nothing_is_excused_without_need()
    {
        var checks = Checks("patterns/three-bow-middle-tube/job.toml");

        Assert.All(MayBeEmpty.Keys, code => Assert.Contains(checks, check => check.Code == code && check.About.Parts.IsEmpty));
    }

    /// <summary>Of a wiring the panels are meant as a whole, its wires, fuses and devices lie beside the top.</summary>
    private static bool IsOfWiring(CheckResult check) => check.Code.StartsWith("electric.", StringComparison.Ordinal);

    private static ImmutableArray<CheckResult> Checks(string job)
    {
        var example = job.EndsWith(".toml", StringComparison.Ordinal) ? ExampleTests.OutcomeOf(job.Split('/')[1]) : null;
        return (example ?? RefitOutcomeTests.Outcome(job switch
        {
            "snaps" => $"{Sample.Least}\n[mount]\nforward = \"snaps\"\naft = \"hook-and-loop\"\n",
            "sleeve" => $"{Sample.Least}\n[mount]\nforward = \"sleeve\"\naft = \"lacing\"\n",
            "sides" => $"{Sample.Least}\n[mount]\nport = \"zipper\"\nstarboard = \"twist\"\n",
            "tape" => $"{Sample.Least}\n[bonding]\ntape_length = \"1 m\"\n",
            "later panel" => Repository.Read("patterns/refit-larger-panel/old-job.toml"),
            "plotter" => $"{Sample.Least}\n[plot]\nroll_width = \"400 mm\"\n",
            _ => Sample.Least,
        })).Checks;
    }
}
