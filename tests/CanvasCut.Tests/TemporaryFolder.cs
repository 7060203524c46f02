namespace CanvasCut.Tests;

/// <summary>A new folder that is gone after the test.</summary>
internal sealed class TemporaryFolder : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("canvascut-test-");

    /// <summary>The folder's own path.</summary>
    public string Root => _folder.FullName;

    /// <summary>The full path of a file in it.</summary>
    public string PathOf(string name) => Path.Combine(Root, name);

    /// <inheritdoc/>
    public void Dispose() => _folder.Delete(recursive: true);
}
