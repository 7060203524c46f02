using System.Collections.Immutable;
using CanvasCut.Language;

namespace CanvasCut.Sheets;

/// <summary>What a caution is about.</summary>
public enum CautionAbout
{
    /// <summary>All of it.</summary>
    Everything,

    /// <summary>Panels and strings.</summary>
    Strings,

    /// <summary>Wires and connectors.</summary>
    Wires,

    /// <summary>Fuses, breakers, the bank.</summary>
    Devices,
}

/// <summary>The twelve cautions that every electric sheet carries, each next to what it concerns.</summary>
public static class ElectricCautions
{
    /// <summary>All of them.</summary>
    public static ImmutableArray<(CautionAbout About, string Text)> All =>
    [
        (CautionAbout.Strings, Say.Of("A panel is live whenever light falls on it, and cannot be switched off: cover its front with something opaque before you touch a wire.")),
        (CautionAbout.Wires, Say.Of("Never pull a connector under load: an arc of direct current does not go out by itself. The breaker goes off first.")),
        (CautionAbout.Devices, Say.Of("Panels off first and on last; the battery on first and off last.")),
        (CautionAbout.Devices, Say.Of("A shorted battery welds, burns and can explode: a fuse at the battery, insulated tools, no rings or watches.")),
        (CautionAbout.Strings, Say.Of("Cold raises the voltage: one panel more in series can destroy the controller.")),
        (CautionAbout.Devices, Say.Of("Only devices marked for direct current of enough volts, and the right way round.")),
        (CautionAbout.Devices, Say.Of("No sparks near petrol, gas or a battery that gasses; no device there that is not ignition-protected.")),
        (CautionAbout.Strings, Say.Of("No panel with burnt spots, cracks, a soft box or a hot connector stays in use; no hard shadow stays on a panel.")),
        (CautionAbout.Strings, Say.Of("Over 35 V is dangerous to wet hands.")),
        (CautionAbout.Wires, Say.Of("Take the panels off at the wind that the wind sheet gives, with the breaker off.")),
        (CautionAbout.Everything, Say.Of("These figures are estimates, NOT A LICENSED DESIGN: the papers of panel, controller and battery makers, ABYC E-11, ISO 13297, the local code and the insurer come first; have a licensed marine electrician check all of it before it is switched on.")),
        (CautionAbout.Everything, Say.Of("No design for lightning, shore power or stray currents is made here.")),
    ];

    /// <summary>Those about one thing.</summary>
    public static ImmutableArray<string> Of(CautionAbout about) => [.. All.Where(caution => caution.About == about).Select(caution => caution.Text)];
}
