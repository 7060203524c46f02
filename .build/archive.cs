// Packs a folder: dotnet run .build/archive.cs -- FOLDER ARCHIVE
// A name that ends in .zip gives a zip file, any other a tar file in gzip. The same files give the same bytes: entries in the order of their
// names, one date for all, no owner.
using System.Formats.Tar;
using System.IO.Compression;

var (folder, archive) = (Path.GetFullPath(args[0]), Path.GetFullPath(args[1]));
var date = new DateTimeOffset(1980, 1, 1, 0, 0, 0, TimeSpan.Zero);
var names = Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories)
    .Select(file => Path.GetRelativePath(folder, file).Replace('\\', '/'))
    .Order(StringComparer.Ordinal)
    .ToList();
using var output = File.Create(archive);
if (archive.EndsWith(".zip", StringComparison.Ordinal))
{
    using var zip = new ZipArchive(output, ZipArchiveMode.Create);
    foreach (var name in names)
    {
        var entry = zip.CreateEntry("canvascut/" + name, CompressionLevel.SmallestSize);
        entry.LastWriteTime = date;
        entry.ExternalAttributes = Convert.ToInt32(IsProgram(name) ? "100755" : "100644", 8) << 16;
        using var target = entry.Open();
        using var source = File.OpenRead(Path.Combine(folder, name));
        source.CopyTo(target);
    }
}
else
{
    using var gzip = new GZipStream(output, CompressionLevel.SmallestSize);
    using var tar = new TarWriter(gzip, TarEntryFormat.Ustar);
    foreach (var name in names)
    {
        using var source = File.OpenRead(Path.Combine(folder, name));
        tar.WriteEntry(new UstarTarEntry(TarEntryType.RegularFile, "canvascut/" + name)
        {
            ModificationTime = date,
            Mode = IsProgram(name) ? (UnixFileMode)Convert.ToInt32("755", 8) : (UnixFileMode)Convert.ToInt32("644", 8),
            DataStream = source,
        });
    }
}

static bool IsProgram(string name) => name is "canvascut" or "canvascut.exe" || name.Contains(".so", StringComparison.Ordinal) || name.EndsWith(".dylib", StringComparison.Ordinal);
