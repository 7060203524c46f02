using CanvasCut.Language;
using UnitsNet;
using static CanvasCut.JobFiles.RuleLog;

namespace CanvasCut.JobFiles;

/// <summary>Stations of bows: from forward to aft, all measured from the top's forward edge.</summary>
internal static class StationOrder
{
    /// <summary>Reports stations that do not run aft, and what they would be if they were measured from the aft edge.</summary>
    /// <param name="values">The file's values.</param>
    /// <param name="names">The list of the bows, and the field of the top's length.</param>
    /// <param name="lengthOf">One length for a path, of several readings their mean.</param>
    /// <param name="report">Gets the field and what is wrong.</param>
    public static void Check(JobValues values, (string Bows, string TopLength) names, Func<string, Length?> lengthOf, Action<string, string> report)
    {
        List<string> paths = [.. values.Tables(names.Bows).Select(bow => $"{bow}.station")];
        var (stations, top) = (paths.ConvertAll(path => lengthOf(path)), lengthOf(names.TopLength));
        if (IsRunningForward(stations) && stations[0] <= top)
        {
            report(paths[1], Say.Of($"is not aft of the bow before; list the bows from forward to aft. Or are all measured from the aft edge? Then the stations are {string.Join("; ", stations.Select(station => In(top - station)))}."));
            return;
        }

        Length? before = null;
        foreach (var (index, station) in stations.Index())
        {
            if (station <= before)
            {
                report(paths[index], Say.Of("is not aft of the bow before; list the bows from forward to aft.") + Mirrored(stations, index, top));
            }

            before = station ?? before;
        }
    }

    private static bool IsRunningForward(List<Length?> stations) =>
        stations.Count > 1 && stations.Zip(stations.Skip(1)).All(pair => pair.Second < pair.First);

    /// <summary>What one station would be from the other edge, where it would then be in order.</summary>
    private static string Mirrored(List<Length?> stations, int index, Length? top)
    {
        var (mirrored, next) = (top - stations[index], index + 1 < stations.Count ? stations[index + 1] : null);
        return mirrored > stations[index - 1] && !(next <= mirrored) ? Say.Of($" Or is it measured from the aft edge? Then it is {In(mirrored)}.") : string.Empty;
    }
}
