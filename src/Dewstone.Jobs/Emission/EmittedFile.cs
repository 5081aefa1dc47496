namespace Dewstone.Jobs.Emission;

/// <summary>One file of a job folder, ready to be written.</summary>
/// <param name="RelativePath">Path inside the job folder, with <c>/</c> between its parts.</param>
/// <param name="Bytes">Its whole content.</param>
public sealed record EmittedFile(string RelativePath, ReadOnlyMemory<byte> Bytes);
