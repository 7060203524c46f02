using UnitsNet;

namespace CanvasCut.Design;

/// <summary>A grade of something to buy: a kind that any shop can name, no brand.</summary>
/// <param name="Id">How job, materials and price files name it.</param>
/// <param name="Name">What to ask the shop for.</param>
/// <param name="Source">Where its figures come from.</param>
/// <param name="Confidence">How sure they are: published, single source, common practice, from memory, yours; put into words when it is printed.</param>
public sealed record Grade(string Id, string Name, string Source, string Confidence);

/// <summary>A cloth.</summary>
/// <param name="Grade">What it is.</param>
/// <param name="Thickness">Of one ply under the presser foot.</param>
/// <param name="RollWidth">The width it usually comes in.</param>
/// <param name="IsSmooth">Whether foam tape holds on it; woven cloth is porous and needs a smooth tape sewn on first.</param>
/// <param name="Stretch">By what part it grows longer under 1 kN on a metre of its width, 0.01 for one per cent; null when not known.</param>
public sealed record ClothGrade(Grade Grade, Length Thickness, Length RollWidth, bool IsSmooth, double? Stretch = null)
{
    /// <summary>Tension for strain, as a membrane has it; null when not known.</summary>
    public ForcePerLength? Stiffness => Stretch is { } stretch ? ForcePerLength.FromKilonewtonsPerMeter(1 / stretch) : null;
}

/// <summary>A thread.</summary>
/// <param name="Grade">What it is.</param>
/// <param name="Needle">The grade of needle that suits it.</param>
/// <param name="Spool">What is on one spool; null when it is not known, then thread is counted by length.</param>
/// <param name="LifeMonths">How long it lasts in strong sun, the short end; null when it outlives the cloth.</param>
public sealed record ThreadGrade(Grade Grade, string Needle, Length? Spool, int? LifeMonths);

/// <summary>A zipper.</summary>
/// <param name="Grade">What it is.</param>
/// <param name="Gauge">Its widths.</param>
/// <param name="TapeThickness">Of one tape.</param>
/// <param name="Sold">How a continuous one is sold.</param>
public sealed record ZipperGrade(Grade Grade, ZipperGauge Gauge, Length TapeThickness, SoldLength Sold);

/// <summary>What a tape is for.</summary>
public enum TapeUse
{
    /// <summary>Holds layers before they are sewn.</summary>
    Basting,

    /// <summary>Goes round a raw edge.</summary>
    Binding,

    /// <summary>Bonds the panel.</summary>
    Foam,

    /// <summary>Is sewn on for strength, or as a smooth ground to bond to.</summary>
    Webbing,

    /// <summary>Hook on one part and loop on the other.</summary>
    HookAndLoop,

    /// <summary>A line that laces two rows of eyelets.</summary>
    Lacing,
}

/// <summary>A tape.</summary>
/// <param name="Grade">What it is.</param>
/// <param name="Use">What it is for.</param>
/// <param name="Width">From edge to edge; of binding, before it is folded.</param>
/// <param name="Thickness">Of one ply.</param>
/// <param name="Sold">How it is sold.</param>
public sealed record TapeGrade(Grade Grade, TapeUse Use, Length Width, Length Thickness, SoldLength Sold);

/// <summary>How something that is bought by length is sold; with neither, in whole metres or yards.</summary>
/// <param name="Step">The shop cuts in multiples of this; null when not given.</param>
/// <param name="Roll">It is sold in whole rolls of this; null when it is cut.</param>
public sealed record SoldLength(Length? Step, Length? Roll);

/// <summary>Something that is bought by number.</summary>
/// <param name="Grade">What it is.</param>
/// <param name="Pack">How many are in a pack; 1 when sold singly.</param>
public sealed record PackGrade(Grade Grade, int Pack);
