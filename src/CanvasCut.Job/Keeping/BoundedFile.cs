using CanvasCut.Language;

namespace CanvasCut.Job;

/// <summary>Reads a file of which only so much may be read: what has no end, such as a device, is given up at the limit.</summary>
public static class BoundedFile
{
    private const int BlockBytes = 1 << 16;

    /// <summary>What has no size of its own, such as a pipe, gets so long to say something.</summary>
    private static readonly TimeSpan UsualPatience = TimeSpan.FromSeconds(10);

    /// <summary>All of it; null when it is larger.</summary>
    /// <param name="path">The file.</param>
    /// <param name="mostBytes">The limit.</param>
    /// <param name="patience">How long to wait for all of it; a usual time when left out.</param>
    /// <exception cref="IOException">It cannot be read, or nothing comes from it.</exception>
    /// <exception cref="UnauthorizedAccessException">The same.</exception>
    /// <exception cref="ArgumentException">It can be no path.</exception>
    public static byte[]? Read(string path, int mostBytes, TimeSpan? patience = null)
    {
        if (new FileInfo(path) is { Exists: true, Length: var length } && length > mostBytes)
        {
            return null;
        }

        var time = patience ?? UsualPatience;

        // Opening a pipe to which nobody writes never ends, so it is waited for elsewhere.
        var reading = Task.Run(() => ReadBlocks(path, mostBytes));
        return Task.WaitAny([reading], time) == 0
            ? reading.GetAwaiter().GetResult()
            : throw new IOException(Say.Of($"Nothing came from it for {time.TotalSeconds} s."));
    }

    private static byte[]? ReadBlocks(string path, int mostBytes)
    {
        using var stream = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite, bufferSize: 0);
        using var whole = new MemoryStream();
        var block = new byte[Math.Min(BlockBytes, mostBytes + 1)];
        for (int read; (read = stream.Read(block)) > 0;)
        {
            whole.Write(block, 0, read);
            if (whole.Length > mostBytes)
            {
                return null;
            }
        }

        return whole.ToArray();
    }
}
