using System.Collections.Immutable;
using CanvasCut.Design;

namespace CanvasCut.JobFiles;

/// <summary>What is on the top already, as the file gives it.</summary>
internal static class FixtureReader
{
    /// <summary>One of it, its values found right.</summary>
    public static TopFixture Of(GivenValues given, string path)
    {
        var kind = given.Word<FixtureKind>($"{path}.kind");
        return new(
            given.Text($"{path}.name"),
            kind,
            PlacesOf(given.Values, path)!.Value,
            given.Values.Length($"{path}.width"),
            given.Values.Words($"{path}.forbids") is { } words ? [.. words.Select(GivenValues.WordOf<Forbidden>).Distinct()] : TopFixture.UsualOf(kind),
            given.Length($"{path}.clearance"));
    }

    /// <summary>Its places; null while stations and offsets are not both there, or not as many.</summary>
    public static ImmutableArray<TopPlace>? PlacesOf(JobValues values, string path) =>
        values.Lengths($"{path}.station") is { } stations && values.Lengths($"{path}.offset") is { } offsets && stations.Length == offsets.Length
            ? [.. stations.Zip(offsets, (station, offset) => new TopPlace(station, offset))]
            : null;
}
