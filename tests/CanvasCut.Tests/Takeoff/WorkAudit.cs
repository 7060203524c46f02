using CanvasCut.Geometry;
using CanvasCut.Patterns;
using CanvasCut.Takeoff;
using UnitsNet;

namespace CanvasCut.Tests.Takeoff;

/// <summary>Walks through an order of work as the sewist would and notes whatever cannot be done; it knows nothing of how the order was found.</summary>
internal sealed class WorkAudit(PatternSet patterns, WorkSchedule schedule)
{
    private static readonly Duration Slack = Duration.FromSeconds(1);

    /// <summary>Everything that is wrong, a line each.</summary>
    public IEnumerable<string> Faults() => [.. Pieces(), .. Flow(), .. Reach(), .. Hands(), .. Rules(), .. patterns.IsRefit ? [] : Layers(), .. Words()];

    /// <summary>Every piece is cut in exactly one step, in which all its copies are, and then sewn at least once.</summary>
    private IEnumerable<string> Pieces()
    {
        foreach (var key in patterns.Pieces.Select(piece => piece.Key))
        {
            var cut = Numbers(step => step.Task.Kind == WorkKind.Cut && step.Flow.Pieces.Contains(key)).ToList();
            var sewn = Numbers(step => step.Task.Kind == WorkKind.Machine && step.Flow.Pieces.Contains(key)).ToList();
            if (cut.Count != 1)
            {
                yield return $"{key} is cut {cut.Count} times";
            }

            if (sewn.Count == 0 || sewn.Min() < cut.FirstOrDefault(int.MaxValue))
            {
                yield return $"{key} is not sewn after it is cut";
            }
        }
    }

    /// <summary>Nothing is used that is not made and, where it must be left alone, ready.</summary>
    private IEnumerable<string> Flow()
    {
        var ready = new Dictionary<WorkPart, Duration>();
        foreach (var each in schedule.Steps)
        {
            foreach (var part in each.Step.Flow.Uses.Where(part => !ready.ContainsKey(part) || each.Start < ready[part] - Slack))
            {
                yield return $"{each.Step.Task.Id} uses \"{part}\", which is not {(ready.ContainsKey(part) ? "cured" : "made")}";
            }

            foreach (var part in each.Step.Flow.Makes)
            {
                ready[part] = each.End + each.Step.Time.Wait;
            }
        }
    }

    /// <summary>Nothing is done where the way is barred.</summary>
    private IEnumerable<string> Reach()
    {
        var open = new HashSet<WorkReach>(WorkAccess.OpenAtFirst);
        open.UnionWith(UnderParts());
        foreach (var each in schedule.Steps)
        {
            var access = each.Step.Flow.Access;
            foreach (var barred in access.Needs.Where(need => !open.Contains(need)))
            {
                yield return $"{each.Step.Task.Id} cannot reach {barred}";
            }

            open.ExceptWith(access.Closes);
            open.UnionWith(access.Opens);
        }
    }

    /// <summary>One pair of hands, and no more of a day than is worked.</summary>
    private IEnumerable<string> Hands()
    {
        foreach (var (earlier, later) in schedule.Steps.Zip(schedule.Steps.Skip(1)))
        {
            if (later.Start < earlier.End - Slack)
            {
                yield return $"{later.Step.Task.Id} begins before {earlier.Step.Task.Id} ends";
            }
        }

        foreach (var day in schedule.Steps.Where(each => each.Step.Time.Hands <= schedule.HoursPerDay).GroupBy(each => each.Day))
        {
            if (day.Max(each => each.End) > Duration.FromDays(day.Key - 1) + schedule.HoursPerDay + Slack)
            {
                yield return $"day {day.Key} is longer than a day";
            }
        }
    }

    /// <summary>The rules of the trade, told by what the steps are and not by what they say they need.</summary>
    private IEnumerable<string> Rules()
    {
        // A top whose half is sewn is never taken off, so nothing may be sewn on it at all.
        var (bond, never) = (Of("bond"), int.MaxValue);
        var (off, back, mark) = patterns.IsRefit ? (never, never, never) : (Of("take-top-off").Number, Of("put-top-back").Number, Of("mark-pockets").Number);
        var carrier = patterns.CarrierPieces.Select(piece => piece.Key).ToHashSet();
        foreach (var each in schedule.Steps.Where(each => each.Step.Task.Kind == WorkKind.Machine))
        {
            var (id, stage) = (each.Step.Task.Id, each.Step.Task.Stage);
            if (each.Number > bond.Number && (each.Step.Flow.Pieces.Any(carrier.Contains) || stage == WorkStage.Carrier))
            {
                yield return $"{id} sews on the carrier after the bond";
            }

            if (stage == WorkStage.Top && (each.Number < off || each.Number > back))
            {
                yield return $"{id} sews on the top while it is on its frame";
            }

            if (stage == WorkStage.Top && each.Number < mark)
            {
                yield return $"{id} comes before the top is marked";
            }
        }

        foreach (var flap in patterns.Mounted.Fastened.Flaps.Where(flap => flap.Fasteners is not null))
        {
            var set = Maker(WorkParts.SetInCarrier(flap)).Number;
            if (set > bond.Number)
            {
                yield return $"{flap.Name}: hammers on the carrier after the bond";
            }

            if (!patterns.IsRefit && (set > mark || Maker(WorkParts.SetOnTop(flap)).Number < mark || Maker(WorkParts.SetOnTop(flap)).Number > back))
            {
                yield return $"{flap.Name}: is not set where the carrier's own marked it";
            }
        }

        foreach (var flap in patterns.Mounted.Fastened.Flaps.Where(flap => flap.Rod is not null))
        {
            var rod = Maker(WorkParts.RodOf(flap)).Number;
            if (rod < Maker(WorkParts.OnCarrier(flap)).Number || (!patterns.IsRefit && rod > Of("tape-to-top").Number))
            {
                yield return $"the rod of the {flap.Name} is not cut between its sleeve and the taping";
            }
        }

        // A panel that was laid is weighted the same day: an hour of laying, 20 min of rest, 10 min of weighting.
        if (schedule.HoursPerDay >= Duration.FromMinutes(90) && Of("cure").Day != bond.Day)
        {
            yield return $"the panel laid on day {bond.Day} is weighted on day {Of("cure").Day}";
        }

        var lifted = Of("prove-bond").Start - Of("cure").End;
        if (lifted < patterns.Job.Work.Cure - Slack || Of("fit").Start < Of("cure").End + patterns.Job.Work.Cure - Slack)
        {
            yield return $"the bond is pulled on after {lifted.Hours} h";
        }
    }

    /// <summary>Of two things that lie on each other on the top the lower is sewn first; whether they do is found by trying points.</summary>
    private IEnumerable<string> Layers()
    {
        var parts = TopShapes().ToList();
        foreach (var (upper, lower) in parts.SelectMany(upper => parts.Where(lower => lower.Layer < upper.Layer).Select(lower => (upper, lower))))
        {
            if (Sewn(upper.Thing).Number < Sewn(lower.Thing).Number && SharePoints(upper.Outline, lower.Outline))
            {
                yield return $"{lower.Thing} lies under {upper.Thing}, which is sewn before it";
            }
        }
    }

    private IEnumerable<string> Words() => schedule.Steps
        .Where(each => each.Step is { Advice.Tool: "" } or { Advice.Check: "" } or { Picture.Lines.IsEmpty: true } || each.Step.Time.Hands <= Duration.Zero)
        .Select(each => $"{each.Step.Task.Id} lacks a tool, a check, a picture or a time");

    private IEnumerable<int> Numbers(Func<WorkStep, bool> isMeant) => schedule.Steps.Where(each => isMeant(each.Step)).Select(each => each.Number);

    private ScheduledStep Of(string id) => schedule.Steps.First(each => each.Step.Task.Id == id);

    private ScheduledStep Maker(WorkPart part) => schedule.Steps.Single(each => each.Step.Flow.Makes.Contains(part));

    /// <summary>Where something is sewn to the top; a zipper or a tape is no piece, and is known by what the step makes.</summary>
    private ScheduledStep Sewn(WorkThing part) => Maker(new(WorkState.OnTop, part, () => "on the top"));

    private IEnumerable<WorkReach> UnderParts() =>
        schedule.Steps.Where(each => each.Step.Task.Stage == WorkStage.Top).SelectMany(each => each.Step.Flow.Access.Closes)
            .Where(access => access.IsUnderPart);

    private IEnumerable<(WorkThing Thing, int Layer, Outline Outline)> TopShapes()
    {
        var (fastened, carrier) = (patterns.Mounted.Fastened, patterns.Mounted.WithSides);
        var beyond = patterns.Job.Fastenings.Chafe.WidthBeyondTube.Millimeters;
        foreach (var (bow, index) in patterns.Job.Top.Bows.Select((bow, index) => (bow, index)))
        {
            var key = new PieceKey(PieceKind.ChafePatch, Bow: index + 1);
            if (patterns.TopPieces.Any(piece => piece.Key.Whole == key))
            {
                yield return (new(key), 0, Outline.Of(Box.Around(new(carrier.Center.X, -bow.Station.Millimeters), carrier.WidthMm, bow.Diameter.Millimeters + (2 * beyond))));
            }
        }

        foreach (var zipper in fastened.Zippers)
        {
            yield return (new(null, zipper.Side), 1, Outline.Of(zipper.Band));
        }

        foreach (var flap in fastened.Flaps)
        {
            yield return (flap.Kind == CanvasCut.Design.MountKind.HookAndLoop ? new(null, flap.Side) : new(new(PieceKind.MountStrip, Side: flap.Side)), 1, Outline.Of(flap.OnTop));
        }

        foreach (var pocket in fastened.Pockets)
        {
            yield return (new(new(PieceKind.Pocket, Corner: pocket.Corner)), 2, pocket.Outline);
        }

        foreach (var strip in fastened.StripsOnTop)
        {
            yield return (new(new(PieceKind.WeatherStrip, Side: strip.Side)), 3, Outline.Of(strip.Finished));
        }
    }

    private static bool SharePoints(Outline first, Outline second)
    {
        const int Tries = 24;
        var box = first.Bounds.Shared(second.Bounds);
        return !box.IsEmpty && Enumerable.Range(0, Tries * Tries).Any(i =>
        {
            var point = new Point(box.Left + (box.WidthMm * ((i % Tries) + 0.5) / Tries), box.Bottom + (box.HeightMm * ((i / Tries) + 0.5) / Tries));
            return IsInside(first, point) && IsInside(second, point);
        });
    }

    /// <summary>Inside a convex outline that runs counter-clockwise, and not within 0.5 mm of its edge.</summary>
    private static bool IsInside(Outline outline, Point point) => Enumerable.Range(0, outline.Corners.Length).All(i =>
    {
        var (from, to) = (outline[i], outline[i + 1]);
        var cross = ((to.X - from.X) * (point.Y - from.Y)) - ((to.Y - from.Y) * (point.X - from.X));
        return cross > 0.5 * from.DistanceMm(to);
    });
}
