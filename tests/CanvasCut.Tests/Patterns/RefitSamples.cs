using CanvasCut.Design;
using CanvasCut.Patterns;
using UnitsNet;
using static CanvasCut.Tests.Patterns.SampleJobs;

namespace CanvasCut.Tests.Patterns;

/// <summary>A sewn half and a job for a new panel on it.</summary>
internal sealed record RefitCase(SewnHalf Sewn, CarrierJob Job)
{
    /// <summary>Any sewn half and any panel of about its size; millimetres with a decimal, invented.</summary>
    public static Gen<RefitCase> Any { get; } =
        from panel in Gen.Select(Gen.Int[800, 1200], Gen.Int[300, 700])
        from more in Gen.Select(Gen.Int[-300, 60], Gen.Int[-300, 60])
        from borders in Gen.Select(AnySides(0, 600), AnySides(0, 600))
        from dead in Gen.Select(AnySides(20, 400), AnySides(20, 400))
        from sewn in Gen.Select(Gen.Int[50, 300], Gen.Int[0, 3], Gen.Int[60, 260], Gen.Bool)
        from wishes in Gen.Select(Gen.Int[200, 1500], Gen.Int[10, 130], Gen.Bool)
        select new RefitCase(
            SewnFor(Old(panel, borders.Item1, dead.Item1, sewn)),
            New((panel.Item1 + more.Item1, panel.Item2 + more.Item2), borders.Item2, dead.Item2, wishes));

    public static SewnHalf SewnFor(CarrierJob job) =>
        SewnHalf.Of(job, MountedShape.Of(job, job.Panel.LongSide ?? LongSide.Athwart).At(new(Mm(800), Mm(0))));

    /// <summary>The plain job's top with another panel on it.</summary>
    public static RefitCase OnPlain(SolarPanel panel) => new(SewnFor(Plain), Plain with { Panel = panel });

    public RefitWay Way(LongSide side = LongSide.Athwart) => new(Sewn, Job, side);

    private static CarrierJob Old((int Length, int Width) panel, Sides<Length> border, Sides<Length> dead, (int Overlap, int Strips, int Leg, bool HasLeg) sewn)
    {
        Side[][] edges = [[], [Side.Forward], [Side.Aft], [Side.Forward, Side.Aft]];
        return (WithPanel(panel, dead) with { Carrier = Carrier with { Border = border } }).With(
            Pocket with { Leg = sewn.HasLeg ? Mm(sewn.Leg) : null },
            strip: Strip with { Overlap = Mm(sewn.Overlap / 10.0), Edges = [.. edges[sewn.Strips]] });
    }

    private static CarrierJob New((int Length, int Width) panel, Sides<Length> border, Sides<Length> dead, (int Widest, int Thickness, bool IsImperial) wishes)
    {
        var job = WithPanel(panel, dead);
        return job with
        {
            Units = wishes.IsImperial ? PrintUnits.Imperial : PrintUnits.Both,
            Panel = job.Panel with { Body = job.Panel.Body with { Thickness = Mm(wishes.Thickness / 10.0) } },
            Carrier = Carrier with { Border = border, Room = Carrier.Room with { Widest = Mm(wishes.Widest / 10.0) } },
        };
    }

    private static CarrierJob WithPanel((int Length, int Width) panel, Sides<Length> dead)
    {
        var plain = Panel(panel.Length, Math.Max(panel.Width, 150));
        return Plain with { Panel = plain with { Fittings = plain.Fittings with { DeadBorder = dead } } };
    }

    private static Gen<Sides<Length>> AnySides(int low, int high) =>
        Gen.Int[low, high].Array[4].Select(tenths => new Sides<Length>(Mm(tenths[0] / 10.0), Mm(tenths[1] / 10.0), Mm(tenths[2] / 10.0), Mm(tenths[3] / 10.0)));
}
