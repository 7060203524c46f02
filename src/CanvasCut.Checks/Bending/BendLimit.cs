using CanvasCut.Design;
using CanvasCut.Language;
using UnitsNet;

namespace CanvasCut.Checks;

/// <summary>The smallest radius a panel is held to, and whether it is known.</summary>
/// <param name="Needed">The radius that must be kept.</param>
/// <param name="IsKnown">Whether the maker's limit was given; else one is assumed.</param>
internal sealed record BendLimit(Length Needed, bool IsKnown)
{
    /// <summary>A side that must not be curved is taken as straight from this radius on: 2 mm of rise in 400 mm; rule of thumb.</summary>
    public static readonly Length StraightRadius = Length.FromMeters(10);

    /// <summary>Where the limit comes from.</summary>
    public static string Source => Say.Of("maker's smallest radius times limits.bend_factor (rule of thumb, editable)");

    /// <summary>The limit of a side that may be curved.</summary>
    public static BendLimit Of(CarrierJob job) => new(job.LeastRadius, job.Panel.Limits.SmallestRadius is not null);

    /// <summary>A radius from the plane, where a straight line has an infinite one; null for that.</summary>
    public static Length? RadiusOf(double radiusMm) => double.IsInfinity(radiusMm) ? null : Length.FromMillimeters(radiusMm);

    /// <summary>Holds a radius against the limit.</summary>
    /// <param name="what">Code and subject.</param>
    /// <param name="radius">The radius found; null when straight.</param>
    /// <param name="tooSharp">What to do when it is too small.</param>
    /// <param name="note">What else to tell; may be empty.</param>
    public CheckResult Judge((string Code, string Subject) what, Length? radius, string tooSharp, string note = "")
    {
        if (radius is not { } found || found > Straight)
        {
            return new(what.Code, what.Subject, Verdict.Pass, Measured.Nothing, Source, note.Length > 0 ? note : Say.Of("It is straight there."));
        }

        var measured = Measured.AtLeast(found, Needed);
        return !measured.Holds ? new(what.Code, what.Subject, Verdict.Fail, measured, Source, Joined(tooSharp, note))
            : IsKnown ? new(what.Code, what.Subject, Verdict.Pass, measured, Source, note)
            : new(what.Code, what.Subject, Verdict.Caution, measured, Source, Joined(AskTheMaker, note));
    }

    /// <summary>A kilometre: no tape tells it from straight.</summary>
    private static readonly Length Straight = Length.FromKilometers(1);

    private static string AskTheMaker => Say.Of("Neither panel.min_bend_radius nor panel.max_bend is given; 2 m was assumed. Ask the panel's maker before cutting.");

    private static string Joined(string first, string second) => second.Length > 0 ? $"{first} {second}" : first;
}
