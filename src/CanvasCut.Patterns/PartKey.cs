using CanvasCut.Design;

namespace CanvasCut.Patterns;

/// <summary>What lies on the top and can be looked at, measured and drawn.</summary>
public enum PartKind
{
    /// <summary>An edge of the top.</summary>
    TopEdge,

    /// <summary>A bow's tube.</summary>
    Bow,

    /// <summary>Another tube.</summary>
    Tube,

    /// <summary>A keep-out.</summary>
    KeepOut,

    /// <summary>Something that is on the top already.</summary>
    Fixture,

    /// <summary>The boom over the top.</summary>
    Boom,

    /// <summary>A piece of cloth.</summary>
    Piece,

    /// <summary>An edge of the carrier.</summary>
    CarrierEdge,

    /// <summary>What holds an edge of the carrier.</summary>
    Fastening,

    /// <summary>The panel.</summary>
    Panel,

    /// <summary>The panel's cells.</summary>
    Cells,

    /// <summary>The panel's junction box.</summary>
    JunctionBox,

    /// <summary>The hole for the cable.</summary>
    CableExit,
}

/// <summary>Which thing on the top it is.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Mounting">Whose it is; nothing for what is the top's, or where a top has one mounting only.</param>
/// <param name="Side">Which edge; null for what is no edge's.</param>
/// <param name="Number">Which bow, tube, keep-out or fixture, counted from 1; null for others.</param>
/// <param name="Piece">The whole piece; null for what is none.</param>
public sealed record PartKey(PartKind Kind, MountingName Mounting = default, Side? Side = null, int? Number = null, PieceKey? Piece = null)
{
    /// <summary>Which panel of several on one carrier it is, or is part of; nothing where the carrier has one.</summary>
    public MountingName Panel { get; init; }

    /// <summary>A piece as one; its widths have no key of their own.</summary>
    public static PartKey Of(PieceKey piece)
    {
        ArgumentNullException.ThrowIfNull(piece);
        return new(PartKind.Piece, piece.Mounting, piece.Side, Piece: piece.Whole);
    }

    /// <summary>The tube of a bow counted from 1.</summary>
    public static PartKey Bow(int number) => new(PartKind.Bow, Number: number);

    /// <summary>A tube that is no bow, counted from 1.</summary>
    public static PartKey Tube(int number) => new(PartKind.Tube, Number: number);

    /// <summary>A keep-out counted from 1.</summary>
    public static PartKey KeepOut(int number) => new(PartKind.KeepOut, Number: number);

    /// <summary>The boom with its swing.</summary>
    public static PartKey Boom { get; } = new(PartKind.Boom);

    /// <summary>Something on the top already, counted from 1.</summary>
    public static PartKey Fixture(int number) => new(PartKind.Fixture, Number: number);

    /// <summary>An edge of the top.</summary>
    public static PartKey TopEdge(Side side) => new(PartKind.TopEdge, Side: side);

    /// <summary>
    /// For data beside a drawn line and in results: lower-case letters, digits and hyphens, the same in every language. It is made
    /// here and nowhere else, and nothing finds a part by it.
    /// </summary>
    public string Id => Piece is { } piece ? piece.Id : string.Join('-', Parts());

    /// <inheritdoc/>
    public override string ToString() => Id;

    private IEnumerable<string> Parts()
    {
        // Names of panels and of mountings are unique together.
        var owner = Panel.IsOnly ? Mounting : Panel;
        if (!owner.IsOnly)
        {
            yield return owner.Text;
        }

        yield return Word;
        if (Side is { } side)
        {
            yield return Words.Id(side);
        }

        if (Number is { } number)
        {
            yield return number.ToString(System.Globalization.CultureInfo.InvariantCulture);
        }
    }

    private string Word => Kind switch
    {
        PartKind.TopEdge => "top-edge",
        PartKind.Bow => "bow",
        PartKind.Tube => "tube",
        PartKind.Fixture => "fixed",
        PartKind.Boom => "boom",
        PartKind.KeepOut => "keep-out",
        PartKind.CarrierEdge => "carrier-edge",
        PartKind.Fastening => "fastening",
        PartKind.Panel => "panel",
        PartKind.Cells => "cells",
        PartKind.JunctionBox => "junction-box",
        _ => "cable-exit",
    };
}

/// <summary>The keys of what a mounting puts on the top.</summary>
/// <param name="job">The job whose mounting it is.</param>
public sealed class PartKeys(CarrierJob job)
{
    private readonly MountingName _mounting = job.Mounting.IsOnly ? default : job.Mounting;
    private readonly MountingName _panel = job.PanelName.IsOnly ? default : job.PanelName;

    /// <summary>The carrier.</summary>
    public PartKey Carrier => PartKey.Of(new(PieceKind.Carrier, _mounting));

    /// <summary>The panel.</summary>
    public PartKey Panel => new(PartKind.Panel, _mounting) { Panel = _panel };

    /// <summary>Its cells.</summary>
    public PartKey Cells => new(PartKind.Cells, _mounting) { Panel = _panel };

    /// <summary>Its junction box.</summary>
    public PartKey JunctionBox => new(PartKind.JunctionBox, _mounting) { Panel = _panel };

    /// <summary>The hole for its cable.</summary>
    public PartKey CableExit => new(PartKind.CableExit, _mounting) { Panel = _panel };

    /// <summary>An edge of the carrier.</summary>
    public PartKey CarrierEdge(Side side) => new(PartKind.CarrierEdge, _mounting, side);

    /// <summary>What holds an edge.</summary>
    public PartKey Fastening(Side side) => new(PartKind.Fastening, _mounting, side);

    /// <summary>The pocket of a corner.</summary>
    public PartKey Pocket(Corner corner) => PartKey.Of(new(PieceKind.Pocket, _mounting, Corner: corner));

    /// <summary>The weather strip of an edge.</summary>
    public PartKey Strip(Side side) => PartKey.Of(new(PieceKind.WeatherStrip, _mounting, side));
}
