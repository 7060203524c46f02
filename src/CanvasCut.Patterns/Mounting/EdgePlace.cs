using CanvasCut.Design;
using CanvasCut.Geometry;
using CanvasCut.Language;
using UnitsNet;

namespace CanvasCut.Patterns;

/// <summary>What holds one edge of the carrier, where it lies on the top: a zipper, or a flap with something on it.</summary>
public abstract record EdgePlace(Side Side)
{
    /// <summary>What kind it is.</summary>
    public abstract MountKind Kind { get; }

    /// <summary>All of it, the part under the carrier too.</summary>
    public abstract Box Band { get; init; }

    /// <summary>Where the half on the carrier and the half on the top meet, in millimetres of the plan.</summary>
    public abstract double LineY { get; }

    /// <summary>From end to end.</summary>
    public abstract Length Run { get; }

    /// <summary>From each finished corner of the carrier to its end.</summary>
    public abstract Length Setback { get; }

    /// <summary>Whether both halves must come out equally long; what is adjusted as it is closed need not.</summary>
    public bool MustMatch => Kind is not (MountKind.HookAndLoop or MountKind.Lacing);

    /// <summary>As in "forward zipper".</summary>
    public string Name => Say.Of($"{Words.Of(Side)} {Words.Of(Kind)}");

    /// <summary>Away from the carrier: 1 forward, -1 aft.</summary>
    public int Outward => Side == Side.Forward ? 1 : -1;

    /// <summary>The same elsewhere.</summary>
    public abstract EdgePlace MovedBy(Step step);
}
