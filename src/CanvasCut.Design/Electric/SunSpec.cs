using System.Collections.Immutable;
using UnitsNet;

namespace CanvasCut.Design;

/// <summary>What is meant by hours of sun.</summary>
public enum SunHoursKind
{
    /// <summary>Peak sun hours: kWh/m² a day on level ground.</summary>
    Peak,

    /// <summary>Hours of bright sunshine, as climate tables have them.</summary>
    Bright,
}

/// <summary>A month as the user knows it.</summary>
/// <param name="Number">1 to 12.</param>
/// <param name="Hours">Hours of sun a day, of the kind that is said.</param>
/// <param name="Air">The air by day; null for that of a hot day.</param>
public sealed record SunMonth(int Number, Duration Hours, Temperature? Air);

/// <summary>Parts that are lost on the way; wires and controller are reckoned apart.</summary>
/// <param name="Soiling">Salt and dirt.</param>
/// <param name="Mismatch">Unlike panels and cells.</param>
/// <param name="Connections">Connectors and terminals.</param>
/// <param name="LightInduced">What new cells lose in their first light.</param>
/// <param name="Nameplate">By what panels fall short of their label.</param>
/// <param name="Shade">Of boom, mast and rigging.</param>
public sealed record SunLosses(Ratio Soiling, Ratio Mismatch, Ratio Connections, Ratio LightInduced, Ratio Nameplate, Ratio Shade);

/// <summary>Where the boat lies in the sun.</summary>
/// <param name="Latitude">North positive.</param>
/// <param name="HoursAre">Which kind of hours the months have; null when there are none.</param>
/// <param name="Months">The months that are known; none for the clear sky only.</param>
/// <param name="Heading">Where the bow points, from north over east; null for a boat that swings.</param>
/// <param name="Albedo">What the water throws back.</param>
/// <param name="Losses">What is lost.</param>
public sealed record SunSpec(Angle Latitude, SunHoursKind? HoursAre, ImmutableArray<SunMonth> Months, Angle? Heading, Ratio Albedo, SunLosses Losses);

/// <summary>What uses energy every day.</summary>
/// <param name="Name">What the user calls it.</param>
/// <param name="Energy">A day.</param>
public sealed record DailyLoad(string Name, Energy Energy);
