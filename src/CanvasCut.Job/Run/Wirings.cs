using System.Collections.Immutable;
using CanvasCut.Design;
using CanvasCut.Electrics;
using CanvasCut.Patterns;
using UnitsNet;

namespace CanvasCut.Job;

/// <summary>Makes the wiring of a top from its job and from where its panels lie.</summary>
internal static class Wirings
{
    /// <summary>The wiring; null when the job does not tell.</summary>
    /// <param name="top">The job.</param>
    /// <param name="mountings">The pieces of every mounting.</param>
    public static WiringPlan? Of(TopJob top, ImmutableArray<PatternSet> mountings) => top.Electric is { } spec
        ? WiringPlan.Of(spec, [.. mountings.SelectMany(mounting => mounting.EachPanel).Select(PanelOf)], top.First.Conditions.Heat)
        : null;

    private static WiredPanel PanelOf(PatternSet pieces) =>
        new(pieces.Job.PanelName.IsOnly ? pieces.Job.Mounting : pieces.Job.PanelName, pieces.Job.Panel.Label, CableWay.Of(pieces.Job.Top, pieces.Mounted)) { Lies = LieOf(pieces) };

    /// <summary>By the top's own surface under the panel's middle.</summary>
    private static PanelLie? LieOf(PatternSet pieces)
    {
        if (!pieces.Surface.IsKnown)
        {
            return null;
        }

        var normal = pieces.Surface.Surface.NormalAt(Plan.PlaceOf(pieces.Mounted.PanelBox.Center));
        return new(
            Angle.FromRadians(Math.Atan2(double.Hypot(normal.X, normal.Y), normal.Z)),
            Angle.FromRadians(Math.Atan2(normal.X, normal.Y)));
    }
}
