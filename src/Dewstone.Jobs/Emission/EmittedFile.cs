namespace Dewstone.Jobs.Emission;

/// <summary>A file of a job folder, built but not yet written.</summary>
/// <param name="RelativePath">Path inside the job folder, with forward slashes.</param>
/// <param name="Bytes">Content.</param>
public sealed record EmittedFile(string RelativePath, ReadOnlyMemory<byte> Bytes);
