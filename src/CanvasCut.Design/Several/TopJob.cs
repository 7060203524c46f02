using System.Collections.Immutable;

namespace CanvasCut.Design;

/// <summary>A top and everything that is to be mounted on it.</summary>
/// <param name="Mountings">Each carrier with its panel and all that holds it, in the order of the file; at least one.</param>
/// <param name="Twins">Mirror images of some of them.</param>
/// <param name="Copies">How many sets of all of it are made, as for sister boats; at least one.</param>
/// <remarks>
/// Each mounting is a whole <see cref="CarrierJob"/>: top, workshop and limits are the same in all, what a panel does not say of its own
/// is that of the shared tables. Twins are no jobs yet, for which way they lie follows from what they mirror.
/// </remarks>
public sealed record TopJob(ImmutableArray<CarrierJob> Mountings, ImmutableArray<MirroredTwin> Twins, int Copies)
{
    /// <summary>How the panels are wired; null when the job does not tell.</summary>
    public ElectricSpec? Electric { get; init; }

    /// <summary>The first mounting, whose shared parts are those of all.</summary>
    public CarrierJob First => Mountings[0];

    /// <summary>Whether more than one carrier is mounted.</summary>
    public bool HasSeveral => Mountings.Length + Twins.Length > 1;

    /// <summary>A top that carries one mounting.</summary>
    public static TopJob Of(CarrierJob only) => new([only], [], 1);

    /// <summary>The same with every mounting changed in one way, such as the printer's readings.</summary>
    public TopJob With(Func<CarrierJob, CarrierJob> change) => this with { Mountings = [.. Mountings.Select(change)] };
}

/// <summary>A mounting that is the mirror image of another.</summary>
/// <param name="Name">Its own name.</param>
/// <param name="Of">What it mirrors about the centreline.</param>
public sealed record MirroredTwin(MountingName Name, MountingName Of);
