using CanvasCut.Design;
using UnitsNet;

namespace CanvasCut.JobFiles;

/// <summary>Makes what holds the edges.</summary>
internal static class MountBuilder
{
    public static MountSpec Build(GivenValues given) => new(
        given.Word<MountKind>("mount.forward"),
        given.Word<MountKind>("mount.aft"),
        given.Length("mount.setback"),
        new(
            Fasteners(given, "mount.snaps"),
            Fasteners(given, "mount.twist"),
            Fasteners(given, "mount.lacing"),
            given.Length("mount.lacing.gap"),
            new(given.Length("mount.hook_and_loop.width"), given.Quantity<Force>("mount.hook_and_loop.peel")),
            Sleeve(given)),
        AtSide(given, "mount.port"),
        AtSide(given, "mount.starboard"));

    private static MountKind? AtSide(GivenValues given, string field) => given.Values.Text(field) == "none" ? null : given.Word<MountKind>(field);

    private static SleeveSpec Sleeve(GivenValues given) => new(
        given.Length("mount.sleeve.rod"),
        given.Length("mount.sleeve.ease"),
        given.Length("mount.sleeve.segment"),
        given.Length("mount.sleeve.gap"),
        given.Values.Length("mount.sleeve.bend_radius"));

    private static FastenerSpec Fasteners(GivenValues given, string table) => new(
        given.Length($"{table}.width"),
        new(given.Length($"{table}.pitch"), given.Length($"{table}.end_distance")),
        given.Length($"{table}.diameter"),
        given.Values.Quantity<Force>($"{table}.strength"));
}
