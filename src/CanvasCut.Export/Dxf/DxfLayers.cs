using CanvasCut.Drawing;

namespace CanvasCut.Export.Dxf;

/// <summary>The layer and line type of each role.</summary>
internal static class DxfLayers
{
    /// <summary>The line type without dashes.</summary>
    public const string Continuous = "CONTINUOUS";

    /// <summary>Every role, in the order of the layers.</summary>
    public static IReadOnlyList<LineRole> Roles { get; } =
        [LineRole.Cut, LineRole.Stitch, LineRole.Fold, LineRole.Mark, LineRole.Grain, LineRole.Note];

    /// <summary>The roles that are drawn in dashes.</summary>
    public static IEnumerable<LineRole> DashedRoles => Roles.Where(role => !LineStyle.Of(role).DashesMm.IsEmpty);

    /// <summary>The name of a role's layer.</summary>
    public static string Of(LineRole role) => role switch
    {
        LineRole.Cut => "CUT",
        LineRole.Stitch => "STITCH",
        LineRole.Fold => "FOLD",
        LineRole.Mark => "MARK",
        LineRole.Grain => "GRAIN",
        _ => "NOTE",
    };

    /// <summary>The name of a role's line type.</summary>
    public static string LineTypeOf(LineRole role) => LineStyle.Of(role).DashesMm.IsEmpty ? Continuous : $"{Of(role)}_DASHES";
}
