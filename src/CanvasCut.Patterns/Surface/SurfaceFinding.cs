using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using CanvasCut.Design;

namespace CanvasCut.Patterns;

/// <summary>The surface of a top, or why it is not known.</summary>
/// <param name="Surface">The surface; null when something is missing.</param>
/// <param name="Missing">The fields of the job file that are missing, as in "top.bow[2].height"; empty with a surface.</param>
public sealed record SurfaceFinding(TopSurface? Surface, ImmutableArray<string> Missing)
{
    /// <summary>Whether there is a surface.</summary>
    [MemberNotNullWhen(true, nameof(Surface))]
    public bool IsKnown => Surface is not null;

    /// <summary>What a surface needs and a top does not say. A single bow needs no height.</summary>
    internal static ImmutableArray<string> MissingOf(TopCloth top) => top.Bows.Length == 0
        ? ["top.bow"]
        :
        [
            .. top.Bows.Index().SelectMany(bow => new[]
            {
                bow.Item.Halves is null ? $"top.bow[{bow.Index + 1}].chord" : string.Empty,
                bow.Item.Halves is null ? $"top.bow[{bow.Index + 1}].crown" : string.Empty,
                bow.Item.Height is null && top.Bows.Length > 1 ? $"top.bow[{bow.Index + 1}].height" : string.Empty,
            }).Where(field => field.Length > 0),
        ];
}
