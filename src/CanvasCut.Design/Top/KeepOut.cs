using UnitsNet;

namespace CanvasCut.Design;

/// <summary>A part of the top that must stay clear: a window, a strap, the swing of a boom.</summary>
public sealed class KeepOut
{
    /// <summary>Describes a keep-out.</summary>
    /// <param name="name">What the user calls it; not blank.</param>
    /// <param name="station">From and to, along the centreline from the top's forward edge; the second not before the first.</param>
    /// <param name="offset">From and to, from the centreline, port negative; the second not before the first.</param>
    /// <param name="clearance">How far everything must stay away; not negative.</param>
    public KeepOut(string name, (Length From, Length To) station, (Length From, Length To) offset, Length clearance)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        Require.NotNegative(station.To - station.From);
        Require.NotNegative(offset.To - offset.From);
        (Name, Station, Offset, Clearance) = (name, station, offset, Require.NotNegative(clearance));
    }

    /// <summary>What the user calls it.</summary>
    public string Name { get; }

    /// <summary>Where it begins and ends along the centreline.</summary>
    public (Length From, Length To) Station { get; }

    /// <summary>Where it begins and ends across; port negative.</summary>
    public (Length From, Length To) Offset { get; }

    /// <summary>How far everything must stay away.</summary>
    public Length Clearance { get; }
}
