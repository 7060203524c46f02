namespace CanvasCut.Job;

/// <summary>A file of the results, made but not yet written.</summary>
/// <param name="Name">Its place in the results folder, with forward slashes.</param>
/// <param name="Bytes">What is in it.</param>
/// <param name="Tells">What it is for, in a few words.</param>
public sealed record ResultFile(string Name, ReadOnlyMemory<byte> Bytes, string Tells);
