using CanvasCut.Geometry;

namespace CanvasCut.Nesting;

/// <summary>Zones sorted into stretches of the strip, so that of hundreds only those near a place are looked at.</summary>
internal sealed class ZonesAlong
{
    private readonly IReadOnlyList<ForbiddenZone> _zones;
    private readonly List<int>[] _slots;
    private readonly int[] _seen;
    private readonly double _leftMm;
    private readonly double _slotMm;
    private int _visit;

    /// <summary>Sorts the zones.</summary>
    public ZonesAlong(IReadOnlyList<ForbiddenZone> zones)
    {
        (_zones, _seen) = (zones, new int[zones.Count]);
        _leftMm = zones.Count == 0 ? 0 : zones.Min(zone => zone.Bounds.Left);
        var rightMm = zones.Count == 0 ? 0 : zones.Max(zone => zone.Bounds.Right);
        _slots = [.. Enumerable.Range(0, Math.Max(1, zones.Count / 2)).Select(_ => new List<int>())];
        _slotMm = Math.Max((rightMm - _leftMm) / _slots.Length, double.Epsilon);
        for (var zone = 0; zone < zones.Count; zone++)
        {
            for (var slot = SlotOf(zones[zone].Bounds.Left); slot <= SlotOf(zones[zone].Bounds.Right); slot++)
            {
                _slots[slot].Add(zone);
            }
        }
    }

    /// <summary>The zones whose boxes meet a box, each once.</summary>
    public IEnumerable<ForbiddenZone> Meeting(Box box)
    {
        _visit++;
        for (var slot = SlotOf(box.Left); slot <= SlotOf(box.Right); slot++)
        {
            foreach (var zone in _slots[slot])
            {
                if (_seen[zone] != _visit && !box.Shared(_zones[zone].Bounds).IsEmpty)
                {
                    yield return _zones[zone];
                }

                _seen[zone] = _visit;
            }
        }
    }

    private int SlotOf(double x) => (int)Math.Clamp((x - _leftMm) / _slotMm, 0, _slots.Length - 1);
}
